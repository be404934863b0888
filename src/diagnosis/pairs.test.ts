import { describe, expect, it } from 'vitest';
import { believe } from './belief.ts';
import { Bench } from './evidence.fixture.ts';
import { groupsOf } from './groups.ts';
import type { Hypothesis } from './hypothesis.ts';

describe('two faults that show together what neither shows alone', () => {
  const bench = new Bench('two-humbuckers-four-knobs');
  const { predictor, singles } = bench;
  const faults = ['land:neckCold@to>neckVolume.2', 'contact:selector:B-C'];
  const edits = faults.flatMap((id) => bench.hypothesis(id).edits);
  // One cuts the neck pickup off, the other the bridge one: with both on, each leaves the other's ohms by itself.
  const readings = [
    bench.true(edits, bench.at('neck')),
    bench.true(edits, bench.at('both')),
    bench.true(edits, bench.at('both', { bridgeVolume: 0 })),
    bench.true(edits, bench.at('both'), 'selector.B', 'jack.sleeve'),
    bench.true(edits, bench.at('both'), 'selector.A', 'selector.C'),
  ];
  const isBoth = (hypothesis: Hypothesis) =>
    hypothesis.faults.length === 2 && hypothesis.faults.every(({ id }) => faults.includes(id));

  it('are weighed where no single fault explains the readings', () => {
    const { weighed } = believe(predictor, singles, readings);
    const found = weighed.filter(({ hypothesis }) => isBoth(hypothesis));
    expect(found.length).toBeGreaterThan(0);
    const best = weighed[0]?.probability as number;
    expect(found[0]?.probability).toBeGreaterThan(best / 100);
    // Each once: the same pair twice would count its prior twice.
    const indexes = weighed.map(({ hypothesis }) => hypothesis.index);
    expect(new Set(indexes).size).toBe(indexes.length);
  });

  it('lead once the readings that part them are taken', () => {
    const more = [
      ...readings,
      bench.true(edits, bench.at('bridge')),
      bench.true(edits, bench.at('both'), 'selector.B', 'selector.C'),
      bench.true(edits, bench.at('neck'), 'neckCold@to', 'neckVolume.case'),
      bench.true(edits, bench.at('neck'), 'neckCold@to', 'neckVolume.2'),
    ];
    const [first] = groupsOf(believe(predictor, singles, more).weighed);
    expect(['place:neckCold@to', 'switch:selector']).toContain(first?.repair);
    expect(first?.probability).toBeGreaterThan(0.9);
  });

  it('are not looked for where a single fault does', () => {
    const open = bench.hypothesis('coil-open:neckSlug').edits;
    const { weighed } = believe(predictor, singles, [
      bench.true(open, bench.at('neck')),
      bench.true(open, bench.at('both')),
    ]);
    expect(
      weighed.filter(({ hypothesis }) => hypothesis.faults.length === 2).length,
    ).toBeLessThanOrEqual(400);
    expect(weighed[0]?.hypothesis.faults.length).toBe(1);
  });
});

describe('a fault that shows in no reading by itself', () => {
  const bench = new Bench('humbucker-single-humbucker');
  // Where the split is broken, the middle pickup's lead on its switch half makes it show as a pickup in series.
  const faults = ['exchange:selector.A2~selector.B2', 'open:splitGround@to'];
  const edits = faults.flatMap((id) => bench.hypothesis(id).edits);

  // A thousand suspects and some thousand pairs are solved anew here: seconds on a busy machine.
  it('is put beside those that explain most', { timeout: 120_000 }, () => {
    const heard = ['1', '2', '3', '4', '5'].map((position) =>
      bench.answer(edits, { kind: 'listen', setting: { ...bench.at(position), plug: 'in' } }),
    );
    const { weighed } = believe(bench.predictor, bench.singles, [
      ...heard,
      bench.true(edits, bench.at('4')),
      bench.true(edits, bench.at('5')),
      bench.true(edits, bench.at('1'), 'middleHot@to', 'jack.sleeve'),
      bench.true(edits, bench.at('2'), 'selector.A2', 'jack.sleeve'),
      bench.true(edits, bench.at('2'), 'selector.A2', 'jack.tip'),
      bench.true(edits, bench.at('1'), 'selector.A2', 'jack.tip'),
    ]);
    const found = weighed.find(({ hypothesis }) =>
      faults.every((id) => hypothesis.faults.some((one) => one.id === id)),
    );
    expect(found?.probability ?? 0).toBeGreaterThan((weighed[0]?.probability as number) / 100);
  });
});
