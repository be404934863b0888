import { describe, expect, it } from 'vitest';
import type { Reading } from '../readings/reading.ts';
import { believe } from './belief.ts';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import { distinct, sharesOf } from './repeats.ts';

const bench = new Bench('two-pickups-shared-controls');
const heard = (position: string) => ({ ...bench.at(position), plug: 'in' as const });
const hum = (here: string, there: string, decibels: number): Reading =>
  bench.reading(
    { kind: 'hum', setting: heard(here), against: heard(there) },
    { kind: 'hum', decibels },
  );
const repairs = (readings: readonly Reading[]) => {
  const { weighed, somethingElse } = believe(bench.predictor, bench.singles, distinct(readings));
  return new Map([
    ...groupsOf(weighed).map(({ repair, probability }) => [repair, probability] as const),
    ['something else', somethingElse] as const,
  ]);
};
const apart = (one: Map<string, number>, other: Map<string, number>) =>
  [...new Set([...one.keys(), ...other.keys()])].reduce(
    (sum, key) => sum + Math.abs((one.get(key) ?? 0) - (other.get(key) ?? 0)) / 2,
    0,
  );

describe('hum measured again', () => {
  const once = repairs([hum('neck', 'bridge', -12)]);

  it('counts once with the first time, though a decibel or two lie between', () => {
    const thrice = repairs([
      hum('neck', 'bridge', -12),
      hum('neck', 'bridge', -9),
      hum('neck', 'bridge', -15),
    ]);
    expect(apart(once, repairs([]))).toBeGreaterThan(0.1);
    expect(apart(once, thrice)).toBeLessThan(0.3 * apart(once, repairs([])));
  });

  it('is the same measurement the other way round', () => {
    const both = repairs([hum('neck', 'bridge', -12), hum('bridge', 'neck', 12)]);
    // Which pairs of faults are weighed is judged reading by reading, so some may differ.
    expect(apart(once, both)).toBeLessThan(0.005);
  });

  it('shares nothing with hum of another position, or with what a meter shows', () => {
    const readings = [
      hum('neck', 'bridge', -12),
      hum('middle', 'bridge', -20),
      hum('neck', 'bridge', -6),
      bench.ohms('open', bench.at('neck')),
    ];
    expect(sharesOf(readings)).toEqual([0.5, 1, 0.5, 1]);
  });
});
