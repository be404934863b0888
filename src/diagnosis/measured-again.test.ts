import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { assess } from './assess.ts';
import { believe } from './belief.ts';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import { HABIT, SLIP } from './levels.ts';
import { againOf, type Before, readBefore } from './measured-again.ts';
import { rankReadings } from './next-reading.ts';
import { openAsks } from './open-asks.ts';
import { distinct } from './repeats.ts';
import { ended } from './rests.ts';

const level = (value: number): Prediction => ({
  type: 'level',
  mean: Math.log(value),
  slopes: new Float64Array(0),
  noise: 0.02,
  ohms: ohms(value),
});
const over: Prediction = { type: 'over' };
const seen = (value: number, times = 1): Before[number] => ({
  seen: { type: 'level', value: Math.log(value) },
  times,
});
const chances = (prediction: Prediction, ...before: Before) => {
  const again = againOf(prediction, 0.02 ** 2, before);
  if (again.type !== 'choice') throw new Error('expected words');
  expect(Object.values(again.chances).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  return again.chances;
};

describe('a figure read again', () => {
  it('comes again where it was foretold, but for a new slip', () => {
    expect(chances(level(7400), seen(7420))['seen0']).toBeCloseTo(1 - SLIP, 3);
  });

  it('comes again by habit alone where it was a slip', () => {
    expect(chances(level(7400), seen(400))['seen0']).toBeCloseTo(HABIT, 6);
    expect(chances(level(7400), seen(400))['another']).toBeCloseTo(1 - HABIT, 6);
    expect(chances(over, seen(400))['another']).toBeCloseTo(1 - HABIT, 6);
    expect(chances(level(7400), { seen: { type: 'over' }, times: 1 })['another']).toBeCloseTo(
      1 - HABIT,
      6,
    );
  });

  it('comes again where it stays over-range, as foretold', () => {
    expect(chances(over, { seen: { type: 'over' }, times: 1 })['seen0']).toBeCloseTo(1 - SLIP, 6);
  });

  it('is, of two that differ, the one that was foretold', () => {
    const { seen0: first, seen1: second } = chances(level(7400), seen(400), seen(7410));
    expect(second).toBeGreaterThan(0.9);
    expect(first).toBeLessThan(0.05);
  });

  it('is a slip the less, the more often it came, by Bayes’ rule', () => {
    // Five deviations off: a sound figure and a slip are about as likely.
    const doubtful = (times: number) => chances(level(7400), seen(7400 * Math.exp(-0.075), times));
    const slip = (times: number) => (doubtful(times)['another'] as number) / (1 - HABIT);
    const odds = (share: number) => share / (1 - share);
    // A new slip is taken off, so that the first share is as it was.
    const shareOf = (times: number) => (slip(times) * (1 - HABIT) - SLIP) / (1 - HABIT - SLIP);
    expect(odds(shareOf(2)) / odds(shareOf(1))).toBeCloseTo(HABIT, 6);
  });
});

describe('figures read before', () => {
  const bench = new Bench('one-humbucker-one-knob');
  it('are found by ask, each once, with how often it came', () => {
    const one = bench.ohms(8400, bench.at());
    const again = bench.ohms(8410, bench.at());
    const other = bench.ohms('open', bench.at());
    const beside = bench.ohms(200, bench.at(), 'volume.1', 'volume.2');
    const copy = structuredClone(one.ask);
    const found = readBefore([copy, beside.ask], distinct([one, again, other]));
    expect([...found.keys()].map(askKey)).toEqual([askKey(one.ask)]);
    expect(found.get(copy)?.map(({ times }) => times)).toEqual([2, 1]);
  });
});

describe('a figure that alone says that something is wrong', () => {
  const bench = new Bench('three-two-conductor-pickups');
  const plate = (value: number) =>
    bench.ohms(value, bench.at(), 'middlePlate.metal', 'jack.sleeve');
  const ranked = (...readings: readonly Reading[]) => {
    const counted = distinct(readings);
    const { weighed } = believe(bench.predictor, bench.singles, counted);
    const asks = openAsks([(readings[0] as Reading).ask], readings, []);
    return ended(rankReadings(bench.predictor, groupsOf(weighed), asks, counted));
  };

  it('is worth reading again, twice at most', () => {
    expect(ranked(plate(9.3))).toHaveLength(1);
    expect(ranked(plate(9.3), plate(9.3), plate(9.3))).toHaveLength(0);
  });

  it('is not where it fits: nobody measures twice for nothing', () => {
    expect(ranked(plate(0.4))).toHaveLength(0);
  });

  it('is the fault the more, once it came again, and hardly after another one came', () => {
    const cold = (...readings: readonly Reading[]) =>
      assess(bench.evidence(readings))
        .suspects.filter(({ repair }) => repair === 'remake:middlePlateLink')
        .reduce((sum, { probability }) => sum + probability, 0);
    const once = cold(plate(9.3));
    expect(cold(plate(9.3), plate(9.3))).toBeGreaterThan(once);
    expect(cold(plate(9.3), plate(0.4))).toBeLessThan(once / 4);
  });

  it('is asked for with what to look at', () => {
    const { next } = assess(bench.evidence([plate(9.3)]));
    for (const { ask, why } of next)
      expect(/^Once more/.test(why)).toBe(askKey(ask) === askKey(plate(9.3).ask));
  });
});
