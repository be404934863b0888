import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import type { Edit } from '../circuit/edit.ts';
import { switchSettings } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import { Guitar, meter } from './guitar.fixture.ts';
import { observe, seenText } from './index.ts';

/** Meters beep below 20 to 150 ohm, each at its own (field figure). */
const HIGHEST = 150;
const LOWEST = 20;

const beepOhms = (
  guitar: Guitar,
  red: string,
  black: string,
  setting = guitar.at(),
  edits: readonly Edit[] = [],
) => {
  const [one] = guitar.predict({ kind: 'beep', red, black, setting }, edits);
  if (one?.type !== 'threshold') throw new Error('expected a threshold');
  return one.ohms;
};

describe('a beep', () => {
  it.each(startingWirings.map(({ id }) => id))(
    'never comes from a healthy coil, in any position at full volume: %s',
    (id) => {
      const guitar = new Guitar(id);
      for (const setting of switchSettings(guitar.circuit))
        expect(beepOhms(guitar, 'jack.tip', 'jack.sleeve', setting)).toBeGreaterThan(HIGHEST);
      for (const part of guitar.circuit.parts)
        if (part.kind === 'coil')
          expect(beepOhms(guitar, `${part.id}.start`, `${part.id}.finish`)).toBeGreaterThan(
            HIGHEST,
          );
    },
  );

  it('comes from every meter where only wire lies between the probes', () => {
    const guitar = new Guitar('two-humbuckers-four-knobs');
    for (const lead of guitar.circuit.leads)
      expect(beepOhms(guitar, lead.from, lead.to)).toBe(meter.leads);
    expect(meter.leads).toBeLessThan(LOWEST);
  });

  it('of a cold joint hangs on the meter: its ohms and the leads are what is compared', () => {
    const guitar = new Guitar('one-humbucker-one-knob');
    const cold = [{ op: 'resist', site: 'jackHot@to', ohms: ohms(60) }] as const;
    expect(beepOhms(guitar, 'volume.2', 'jack.tip', guitar.at(), cold)).toBeCloseTo(60.3, 9);
  });

  it('never comes over an open wire', () => {
    const guitar = new Guitar('one-humbucker-one-knob');
    const open = [{ op: 'open', site: 'jackHot' }] as const;
    expect(beepOhms(guitar, 'volume.2', 'jack.tip', guitar.at(), open)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });

  it('is seen as what it is', () => {
    expect(observe({ kind: 'beep', beeps: false })).toEqual([{ type: 'threshold', beeps: false }]);
    expect([true, false].map((beeps) => seenText({ kind: 'beep', beeps }))).toEqual([
      'beeps',
      'silent',
    ]);
  });
});
