import { describe, expect, it } from 'vitest';
import { askKey } from './ask-key.ts';
import { assess } from './assess.ts';
import { Bench } from './evidence.fixture.ts';
import { afterRepairs, splitByRepairs } from './rounds.ts';

const bench = new Bench('two-pickups-shared-controls');
const open = [{ op: 'open', site: 'bridgeCoil:winding' }] as const;
const [bridge, neck, strings] = [
  bench.true(open, bench.at('bridge')),
  bench.true(open, bench.at('neck')),
  bench.true(open, bench.at('neck'), 'strings.metal', 'jack.sleeve'),
];
const repair = 'coil:bridgeCoil';
const before = [bridge!, neck!, strings!];

describe('after a repair', () => {
  it('only what it may have changed is stale', () => {
    const { counted, stale } = splitByRepairs(bench.predictor, bench.singles, before, [repair]);
    expect(stale).toEqual([bridge]);
    expect(counted).toEqual([neck, strings]);
  });

  it('without one nothing is stale', () => {
    expect(splitByRepairs(bench.predictor, bench.singles, before, []).stale).toEqual([]);
  });

  it('readings taken after it count', () => {
    const again = bench.true([], bench.at('bridge'), 'jack.tip', 'jack.sleeve', 1);
    const { counted } = splitByRepairs(
      bench.predictor,
      bench.singles,
      [...before, again],
      [repair],
    );
    expect(counted).toContain(again);
  });

  it('the repaired fault is less likely than before, healthy more', () => {
    const after = afterRepairs(bench.singles, [repair]);
    const drop = (id: string) => {
      const at = bench.singles.findIndex(({ faults }) => faults[0]?.id === id);
      return after[at]!.logPrior - bench.singles[at]!.logPrior;
    };
    expect(after[0]!.logPrior).toBeGreaterThan(bench.singles[0]!.logPrior);
    expect(drop('coil-open:bridgeCoil')).toBeLessThan(drop('coil-open:neckCoil'));
    expect(afterRepairs(bench.singles, [])).toBe(bench.singles);
  });

  it('the failed reading is asked again, first and alone, without a verdict', () => {
    const found = assess(bench.evidence(before, { repairs: [repair] }));
    expect(found.verdict).toBeNull();
    expect(found.recheck.map(({ ask }) => askKey(ask))).toEqual([askKey(bridge!.ask)]);
    expect(found.next).toEqual(found.recheck);
    expect(found.readings.map(({ stale }) => stale)).toEqual([true, false, false]);
  });

  it('and once it fits, the guitar leads as healthy', () => {
    const again = bench.true([], bench.at('bridge'), 'jack.tip', 'jack.sleeve', 1);
    const found = assess(bench.evidence([...before, again], { repairs: [repair] }));
    expect(found.recheck).toEqual([]);
    expect(found.suspects[0]?.repair).toBe('healthy');
  });

  it('and where it still does not fit, the pickup is suspected again', () => {
    const again = bench.true(open, bench.at('bridge'), 'jack.tip', 'jack.sleeve', 1);
    const found = assess(bench.evidence([...before, again], { repairs: [repair] }));
    expect(found.recheck).toEqual([]);
    expect(found.suspects[0]?.repair).not.toBe('healthy');
  });

  it('a refused recheck is not asked again', () => {
    const found = assess(bench.evidence(before, { repairs: [repair], refused: [bridge!.ask] }));
    expect(found.recheck).toEqual([]);
  });
});
