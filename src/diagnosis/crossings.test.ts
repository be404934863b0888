import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { lugOfJoint } from '../circuit/names.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { assess } from './assess.ts';
import { believing } from './belief.ts';
import { crossingsOf } from './crossings.ts';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import { huntHypotheses, PRIOR } from './hypothesis.ts';
import { ended } from './rests.ts';

describe.each(startingWirings.map(({ id, build }) => [id, build] as const))('%s', (_, build) => {
  const layout = layoutOf(build());
  const count = huntHypotheses(layout).length;
  const crossings = crossingsOf(layout, count);

  it('has leads in each other’s place: each sits where the other belongs, on another part', () => {
    for (const { edits } of crossings) {
      const [one, other] = edits;
      if (one?.op !== 'land' || other?.op !== 'land') throw new Error('a crossing moves two leads');
      expect(edits).toHaveLength(2);
      expect(one.lug).toBe(lugOfJoint(layout, other.joint));
      expect(other.lug).toBe(lugOfJoint(layout, one.joint));
      expect(one.lug.split('.')[0]).not.toBe(other.lug.split('.')[0]);
    }
  });

  it('shares its prior out evenly, in places that no single fault and no pair of them has', () => {
    const sum = crossings.reduce((all, { logPrior }) => all + Math.exp(logPrior), 0);
    if (crossings.length > 0) expect(sum).toBeCloseTo(PRIOR.crossed, 9);
    const places = crossings.map(({ index }) => index);
    expect(new Set(places).size).toBe(places.length);
    // The pair of the last two singles has the largest place of all pairs.
    const largest = count * count + count - 1;
    for (const place of places) expect(place).toBeGreaterThan(largest);
  });
});

describe('the shares of all ways to be', () => {
  it('sum to 1', () => {
    expect(Object.values(PRIOR).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});

describe('two leads in each other’s place', () => {
  const bench = new Bench('one-single-two-knobs');
  const layout = layoutOf(bench.circuit);
  const singles = huntHypotheses(layout);
  const crossings = crossingsOf(layout, singles.length);
  const crossed = crossings.find(({ edits }) =>
    ['caseLink@to', 'bridgeHot@to'].every((joint) =>
      edits.some((edit) => edit.op === 'land' && edit.joint === joint),
    ),
  );
  if (!crossed) throw new Error('the hot lead and the link between the cases are no crossing');
  const readings = [
    bench.true(crossed.edits, bench.at()),
    bench.true(crossed.edits, bench.at(), 'tone.1', 'jack.tip'),
    bench.true(crossed.edits, bench.at(undefined, { volume: 0 })),
    bench.true(crossed.edits, bench.at(), 'volume.3', 'jack.sleeve'),
    bench.true(crossed.edits, bench.at(), 'tone.case', 'volume.3'),
    bench.true(crossed.edits, bench.at(), 'tone.case', 'volume.case'),
  ];
  const firstOf = (rare: () => typeof crossings) =>
    groupsOf(ended(believing(bench.predictor, singles, readings, rare)).weighed)[0];

  it('come first where neither a fault nor a pair of faults tells the readings as well', () => {
    const first = firstOf(() => crossings);
    expect(first?.members[0]?.hypothesis.index).toBe(crossed.index);
    expect(['remake:caseLink', 'remake:bridgeHot']).toContain(first?.repair);
    expect(first?.probability).toBeGreaterThan(0.5);
  });

  it('would be told as other faults if they were not foreseen', () => {
    const first = firstOf(() => []);
    expect(['remake:caseLink', 'remake:bridgeHot']).not.toContain(first?.repair);
  });

  it('are not looked for while nothing is about to be named', () => {
    const plain = [bench.true(bench.hypothesis('open:jackHot@to').edits, bench.at())];
    const [first] = groupsOf(
      ended(
        believing(bench.predictor, singles, plain, () => {
          throw new Error('looked for');
        }),
      ).weighed,
    );
    expect(first?.probability).toBeLessThan(0.9);
  });
});

// The figures of a guitar that a circuit simulator played; with the leads in place the switch would explain each of them.
describe('two leads in each other’s place that read as a switch whose contact does not close', () => {
  const bench = new Bench('two-pickups-shared-controls');
  const layout = layoutOf(bench.circuit);
  const singles = huntHypotheses(layout);
  const crossings = crossingsOf(layout, singles.length);
  const at = bench.at.bind(bench);
  const thin = (position: string, knobs = {}) =>
    bench.reading(
      { kind: 'listen', setting: { ...at(position, knobs), plug: 'in' } },
      { kind: 'listen', heard: 'thin' },
    );
  const readings = [
    thin('bridge'),
    thin('neck', { volume: 0 }),
    thin('neck', { tone: 0 }),
    bench.ohms(7550, at('both', { tone: 0 })),
    bench.ohms(7370, at('neck'), 'bridgeHot@to', 'jack.sleeve'),
    bench.ohms(14_920, at('neck'), 'selector.B', 'jack.tip'),
  ];
  const groupsWith = (rare: () => typeof crossings) =>
    groupsOf(ended(believing(bench.predictor, singles, readings, rare)).weighed);

  it('are weighed before the switch is named, and tell the readings better', () => {
    const [first, second] = groupsWith(() => crossings);
    expect(first?.members[0]?.hypothesis.edits).toEqual([
      { op: 'land', joint: 'neckHot@to', lug: 'jack.tip' },
      { op: 'land', joint: 'jackHot@to', lug: 'selector.A' },
    ]);
    expect(['remake:neckHot', 'remake:jackHot']).toContain(first?.repair);
    expect(second?.repair).toBe('switch:selector');
  });

  it('would be told as the switch if they were not foreseen', () => {
    const [first] = groupsWith(() => []);
    expect(first?.repair).toBe('switch:selector');
    expect(first?.probability).toBeGreaterThan(0.95);
  });

  it('leave a reading to be taken that parts them from the switch', () => {
    const { verdict, next } = assess(bench.evidence(readings));
    expect(verdict).toBeNull();
    expect(next[0]?.worthBits).toBeGreaterThan(0.1);
  });
});
