import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { withBleed } from '../circuit/catalog/modifications/fitted-bleed.ts';
import { checkSetting } from '../circuit/check.ts';
import { potsOf } from '../circuit/setting.ts';
import { farads, ohms } from '../circuit/units.ts';
import { halfPlaces, knobPlaces } from './knobs.ts';

const wiring = (id: string) => startingWirings.find((one) => one.id === id)!.build();
const told = (id: string) =>
  knobPlaces(wiring(id)).map(({ pot, title }) => `${pot.title}: ${title}`);

describe('a knob is tried where it acts', () => {
  it.each(startingWirings.map(({ title, build }) => [title, build()] as const))(
    'asks once for each knob, that knob at 0 and all others full up: %s',
    (_title, circuit) => {
      const places = knobPlaces(circuit);
      expect(places.map(({ pot }) => pot.id)).toEqual(potsOf(circuit).map(({ id }) => id));
      for (const { pot, ask } of places) {
        checkSetting(circuit, ask.setting);
        const { [pot.id]: own, ...others } = ask.setting.knobs;
        expect(own).toBe(0);
        expect(new Set(Object.values(others))).toEqual(
          new Set(Object.keys(others).length > 0 ? [10] : []),
        );
      }
    },
  );

  it('tries the knobs of one pickup with that pickup alone', () => {
    expect(told('two-humbuckers-four-knobs')).toEqual([
      'neck volume: neck',
      'neck tone: neck',
      'bridge volume: bridge',
      'bridge tone: bridge',
    ]);
  });

  it('tries a tone knob with its own pickup, though a shared capacitor joins the two', () => {
    expect(told('three-singles-five-position').slice(1)).toEqual([
      'neck tone: neck',
      'middle tone: middle',
    ]);
  });

  it('finds no place for a knob that hangs on nothing', () => {
    const circuit = wiring('one-humbucker-one-knob');
    const loose = circuit.leads.filter(
      ({ from, to }) => !/^volume\.[123]$/.test(from) && !/^volume\.[123]$/.test(to),
    );
    expect(knobPlaces({ ...circuit, leads: loose })).toEqual([]);
  });
});

describe('a volume at half', () => {
  it('is only asked about where a treble bleed should keep the treble', () => {
    const plain = wiring('two-humbuckers-four-knobs');
    expect(halfPlaces(plain)).toEqual([]);
    const bled = withBleed(
      plain,
      { id: 'neckVolume', title: 'neck volume' },
      { make: 'series', farads: farads(1e-9), ohms: ohms(100e3) },
    );
    const [place, ...others] = halfPlaces(bled);
    expect(others).toEqual([]);
    expect(place?.pot.id).toBe('neckVolume');
    expect(place?.ask.setting.knobs['neckVolume']).toBe(5);
    expect(place?.ask.setting.positions).toEqual({ selector: 'neck' });
  });
});
