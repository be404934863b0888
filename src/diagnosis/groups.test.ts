import { describe, expect, it } from 'vitest';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import { pair } from './hypothesis.ts';

const bench = new Bench('one-humbucker-one-knob');
const [coil, wire] = [
  bench.hypothesis('coil-open:bridgeSlug'),
  bench.hypothesis('open:jackHot@to'),
];
const both = pair(coil, wire, bench.singles.length);
const shares = (list: readonly (readonly [typeof coil, number])[]) =>
  groupsOf(list.map(([hypothesis, probability]) => ({ hypothesis, probability }))).map(
    ({ repair, probability }) => [repair, Number(probability.toFixed(9))],
  );

describe('repairs to make first', () => {
  it('of two faults at once it is the one that stands in more of the belief', () => {
    expect(
      shares([
        [coil, 0.5],
        [both, 0.4],
        [wire, 0.1],
      ]),
    ).toEqual([
      ['coil:bridgeSlug', 0.9],
      ['remake:jackHot', 0.1],
    ]);
    expect(
      shares([
        [wire, 0.5],
        [both, 0.4],
        [coil, 0.1],
      ]),
    ).toEqual([
      ['remake:jackHot', 0.9],
      ['coil:bridgeSlug', 0.1],
    ]);
  });

  it('gather what the same act mends, in whatever size or place', () => {
    const other = bench.hypothesis('high:jackHot@to');
    expect(
      shares([
        [wire, 0.3],
        [other, 0.3],
        [coil, 0.4],
      ]),
    ).toEqual([
      ['remake:jackHot', 0.6],
      ['coil:bridgeSlug', 0.4],
    ]);
  });

  it('know healthy as a group of its own', () => {
    expect(shares([[bench.singles[0]!, 1]])).toEqual([['healthy', 1]]);
  });
});
