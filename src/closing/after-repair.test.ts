import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { ohms } from '../circuit/units.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { splitByRepairs } from '../diagnosis/rounds.ts';
import type { Reading } from '../readings/reading.ts';
import { answerOf, readingsOf } from './answers.fixture.ts';
import { closingOf } from './check.ts';
import { closingBench, planOf } from './plan.ts';
import { isMoving } from './table.ts';

const circuit = oneHumbuckerOneKnob();
const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };
const bench = closingBench(circuit, meter);
const plan = planOf(bench, 'open');
const passed = readingsOf(
  plan.items.flatMap(({ ask, times }) =>
    Array.from({ length: times }, () => ({ ask, seen: answerOf(bench, ask) })),
  ),
);
const close = (readings: readonly Reading[], repairs: readonly string[]) =>
  closingOf({ circuit, meter, stage: 'open', readings, refused: [], repairs });
const places = [
  ...new Set(bench.singles.flatMap(({ faults }) => faults.map(({ remedy }) => remedy.key))),
];
const again = (place: string) => close(passed, [place]).items.filter(({ mark }) => mark !== 'fits');

describe('what is asked again after a repair', () => {
  it('is less than half of the readings that pass the repaired place', () => {
    const sum = (counts: readonly number[]) => counts.reduce((so, count) => so + count, 0);
    const touched = places.map((place) => {
      const { stale } = splitByRepairs(bench.predictor, bench.singles, passed, [place]);
      return new Set(stale.map(({ ask }) => askKey(ask))).size;
    });
    const asked = places.map((place) => again(place).length);
    asked.forEach((count, at) => {
      expect(count, places[at]).toBeLessThanOrEqual(touched[at]!);
    });
    expect(sum(asked)).toBeLessThan(0.5 * sum(touched));
  });

  it('shows every claimed fault of the place, should the repair not have held', () => {
    const claims = plan.showable.ladders.flatMap(({ ladder, hidden }) =>
      ladder.slice(hidden).filter((fault) => !isMoving(fault)),
    );
    const sample = claims.filter((_, at) => at % 3 === 0);
    expect(sample.length).toBeGreaterThan(20);
    const unseen = sample.filter((fault) => {
      const place = fault.faults[0]!.remedy.key;
      const fresh = again(place).flatMap(({ ask }) =>
        Array.from({ length: 4 }, () => ({ ask, seen: answerOf(bench, ask, fault) })),
      );
      const read = readingsOf(fresh).map((one) => ({ ...one, id: `again ${one.id}`, round: 1 }));
      return close([...passed, ...read], [place]).state === 'passed';
    });
    expect(unseen.map(({ faults }) => faults[0]?.sentence)).toEqual([]);
  });

  it('is every line that did not fit before', () => {
    const at = passed.findIndex(({ ask }) => ask.kind === 'ohms');
    const odd = passed.map(
      (one, index): Reading =>
        index === at ? { ...one, seen: { kind: 'ohms', ohms: 'open' } } : one,
    );
    const touching = places.find((place) =>
      splitByRepairs(bench.predictor, bench.singles, odd, [place]).stale.includes(odd[at]!),
    )!;
    const marks = close(odd, [touching]).items.filter(
      ({ ask }) => askKey(ask) === askKey(passed[at]!.ask),
    );
    expect(marks.map(({ mark }) => mark)).toEqual(['open']);
  });
});
