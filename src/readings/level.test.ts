import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { potsOf, switchSettings, withKnob } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { solveDc } from '../solver/index.ts';
import { shareOf } from './bend.ts';
import { Guitar, meter } from './guitar.fixture.ts';
import { levelBetween, logShown } from './level.ts';
import type { Unknown } from './unknowns.ts';
import type { View } from './view.ts';

const STEP = 1e-4;

/** ln of what the meter shows when one unknown is `by` off, from a network solved anew. */
function shown(view: View, unknown: Unknown, by: number, a: number, b: number): number {
  const { wired } = view;
  const changed = wired.ohms.slice();
  for (const site of unknown.sites) {
    const r = changed[site]!;
    if (!(r > 0 && Number.isFinite(r))) continue;
    const moving =
      unknown.only === undefined
        ? Math.max(0, r - (unknown.allBut ?? 0))
        : Math.min(r, unknown.only);
    changed[site] = r + moving * (Math.exp(by) - 1);
  }
  const leads = meter.leads * (unknown.name === 'probe leads' ? Math.exp(by) : 1);
  const gain = unknown.name === "the meter's scale" ? by : 0;
  const dc = solveDc({ nodes: wired.nodeCount, a: wired.a, b: wired.b, ohms: changed });
  return Math.log(dc.resistance(a, b) + leads) + gain;
}

/** Slopes on the ends of a track are chords. */
const tangent = ({ only, deviation }: Unknown, slope: number): number =>
  only === undefined ? slope : shareOf(slope, deviation);

describe('slopes on the unknowns', () => {
  it.each(startingWirings.map(({ id }) => id))(
    'are the derivatives of ln(ohms shown), taken numerically: %s',
    (id) => {
      const guitar = new Guitar(id);
      const { layout, instrument } = guitar;
      for (const at of switchSettings(guitar.circuit))
        for (const setting of [
          at,
          ...potsOf(guitar.circuit).map((pot) => withKnob(at, pot.id, 4)),
        ]) {
          const view = guitar.view(setting);
          const level = levelBetween(view, 'jack.tip', 'jack.sleeve', instrument);
          if (level.type !== 'level') throw new Error('expected a level');
          const [a, b] = ['jack.tip', 'jack.sleeve'].map((lug) => layout.nodeIndex.get(lug)!);
          instrument.unknowns.list.forEach((unknown, k) => {
            const slope =
              (shown(view, unknown, STEP, a!, b!) - shown(view, unknown, -STEP, a!, b!)) /
              (2 * STEP);
            expect(
              tangent(unknown, level.slopes[k]!),
              `${unknown.name} in ${JSON.stringify(setting)}`,
            ).toBeCloseTo(slope, 6);
          });
          expect(level.slopes.at(-1)).toBe(0);
        }
    },
  );

  it('of ohms that add up sum to 1 (homogeneity: all resistances twice, reading twice)', () => {
    const guitar = new Guitar('two-humbuckers-four-knobs');
    const { unknowns } = guitar.instrument;
    const level = levelBetween(
      guitar.view(guitar.at('both')),
      'jack.tip',
      'jack.sleeve',
      guitar.instrument,
    );
    if (level.type !== 'level') throw new Error('expected a level');
    // The scale and the temperature are no resistances of their own.
    const sum = unknowns.list.reduce(
      (total, one, k) =>
        one.name === 'temperature' || k === unknowns.gain
          ? total
          : total + tangent(one, level.slopes[k]!),
      0,
    );
    expect(sum).toBeCloseTo(1, 9);
  });

  it('of the size of a fault is its own share of the reading', () => {
    const guitar = new Guitar('one-humbucker-one-knob');
    const view = guitar.view(guitar.at(), [{ op: 'resist', site: 'hot@to', ohms: ohms(2000) }]);
    const site = guitar.layout.siteIndex.get('hot@to')!;
    const level = levelBetween(view, 'hot@to', 'volume.3', {
      ...guitar.instrument,
      loose: { site, deviation: 0.45, bridge: false },
    });
    if (level.type !== 'level') throw new Error('expected a level');
    // A joint of 2 k beside pickup and pot in series: dlnR/dlnr = 1 - R/r (textbook, two resistances in parallel).
    const beside = 8600 + 500e3;
    const reading = (2000 * beside) / (2000 + beside);
    expect(level.ohms).toBeCloseTo(reading + meter.leads, 6);
    expect(level.slopes.at(-1)).toBeCloseTo(
      ((reading / 2000) ** 2 * 2000) / (reading + meter.leads),
      9,
    );
  });
});

describe('noise', () => {
  it('is 0.4 % of a coil and what its range may be off, and most of a reading of tenths of an ohm', () => {
    const guitar = new Guitar('one-humbucker-one-knob');
    const coil = levelBetween(
      guitar.view(guitar.at()),
      'jack.tip',
      'jack.sleeve',
      guitar.instrument,
    );
    const wire = levelBetween(guitar.view(guitar.at()), 'volume.2', 'jack.tip', guitar.instrument);
    if (coil.type !== 'level' || wire.type !== 'level') throw new Error('expected levels');
    expect(coil.noise).toBeCloseTo(Math.hypot(0.004, meter.accuracy / 2), 4);
    expect(wire.noise).toBeCloseTo(0.15 / 0.3, 2);
    expect(wire.ohms).toBe(meter.leads);
    expect([...wire.slopes].filter((slope) => slope !== 0)).toEqual([1, 1]);
  });
});

describe('leads that were taken off to zero', () => {
  it('show a zero as the last digit, as an entry of zero is read', () => {
    const guitar = new Guitar('one-humbucker-one-knob');
    const [setting] = switchSettings(guitar.circuit);
    const instrument = { ...guitar.instrument, meter: { ...meter, leads: ohms(0) } };
    const level = levelBetween(guitar.view(setting!), 'jack.tip', 'jack.tip', instrument);
    expect(level).toMatchObject({ type: 'level', mean: logShown(ohms(0)) });
    expect(level.type === 'level' && level.slopes.every(Number.isFinite)).toBe(true);
  });
});
