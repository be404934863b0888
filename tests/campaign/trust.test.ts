import { describe, expect, it } from 'vitest';
import { byRule, calibrationNoise, figuresOf } from './figures.ts';
import type { HuntResult } from './hunt.ts';
import { calibrationPlot, readingsPlot } from './plots.ts';
import { trustDocument, trustHeadline } from './trust.ts';

const result = (more: Partial<HuntResult>): HuntResult => ({
  wiring: 'one-humbucker-one-knob',
  kind: 'single-by-prior',
  order: 'ours',
  truth: ['coil:x'],
  faults: ['coil-open:x'],
  verdict: 'repair',
  first: 'coil:x',
  probability: 0.97,
  right: true,
  noticed: true,
  readings: 4,
  seconds: 90,
  stepMs: [10],
  story: [],
  ...more,
});

describe('the report of a campaign', () => {
  it('names every hunt that ended wrong, beside the figures and targets', () => {
    const hunts = [
      result({}),
      result({ right: false, first: 'pot:volume', probability: 0.6, faults: ['worn:tone'] }),
      result({ order: 'fixed', readings: 20 }),
    ];
    const figures = {
      ...figuresOf(hunts),
      seed: 5,
      wrongEntries: 0,
      fingers: 0.05,
      access: 'open',
    };
    const text = trustDocument([{ figures, hunts }]);
    expect(text).toContain('`worn:tone`; after 4 readings repair, `pot:volume` 60 %');
    expect(text).toContain('| 99 % | 1 of 2 |');
    expect(text).not.toContain('NaN');
  });

  it('keeps wirings that nobody had drawn apart from those the engine was made with', () => {
    const shared = { seed: 5, wrongEntries: 0, fingers: 0.05, access: 'open' };
    const kept = [
      { figures: { ...figuresOf([]), ...shared, modified: 60 }, hunts: [result({ right: false })] },
      { figures: { ...figuresOf([]), ...shared }, hunts: [result({}), result({})] },
    ];
    expect(trustDocument(kept).match(/^## .*$/gm)).toHaveLength(2);
    expect(trustDocument(kept)).toMatch(/## Seed 5: 1 guitars.*held out/);
    const head = trustHeadline(kept);
    expect(head).toMatch(/how likely it is .*\| 2 of 2/);
    expect(head).toMatch(/nobody had drawn \(one fault \/ two\) .*\| 0 of 1 \/ 0 of 0/);
  });

  it('lists apart what nobody heard and the closing check was left to find', () => {
    const quiet = { right: false, noticed: false, verdict: 'not-ruled-out', first: 'healthy' };
    const hunts = [result({}), result({ ...quiet, faults: ['intermittent:x'] }), result(quiet)];
    const shared = { seed: 5, wrongEntries: 0, fingers: 0.05, access: 'open' };
    const text = trustDocument([{ figures: { ...figuresOf(hunts), ...shared }, hunts }]);
    expect(text).toContain('| 99 % | 1 of 3 |');
    expect(text).toContain('No hunt ended wrong.');
    expect(text).toMatch(/counted as not right:\n\n.*`intermittent:x`/);
  });

  it('holds rules against each other on guitars that each of them hunted on', () => {
    const shared = { seed: 5, wrongEntries: 0, fingers: 0, access: 'open' };
    const all = (['ours', 'entropy', 'half'] as const).map((order) =>
      result({ order, readings: 6 }),
    );
    const rules = byRule(all);
    const text = trustDocument([
      { figures: { ...figuresOf([result({})]), ...shared }, hunts: [result({ readings: 30 })] },
      { figures: { ...figuresOf(all), ...shared, rules }, hunts: all },
    ]);
    expect(text).toContain('on the same 1 guitars');
    expect(text).toContain('| ours | 100.0 % | 6.0 |');
  });

  // By hand: of two hunts stated at one half, half of the time both are right or both wrong: one hunt more or less than stated, of two.
  it('says how far stated shares would be off by chance alone', () => {
    expect(calibrationNoise([{ probability: 1 }, { probability: 1 }])).toBe(0);
    expect(calibrationNoise([{ probability: 0.5 }])).toBe(0.5);
    expect(calibrationNoise([{ probability: 0.5 }, { probability: 0.5 }])).toBe(0.25);
  });

  it('makes one table of campaigns that differ in their seed alone', () => {
    const kept = (seed: number, wrongEntries: number, right: boolean) => {
      const hunts = [result({ right })];
      const figures = { ...figuresOf(hunts), seed, wrongEntries, fingers: 0, access: 'open' };
      return { figures, hunts };
    };
    const text = trustDocument([kept(1, 0, true), kept(2, 0, false), kept(3, 0.03, true)]);
    expect(text.match(/^## .*/gm)).toEqual([
      '## Seeds 1, 2: 2 guitars, open, 0 % wrong entries, fingers on both probes in 0 % of readings',
      '## Seed 3: 1 guitars, open, 3 % wrong entries, fingers on both probes in 0 % of readings',
    ]);
    expect(text).toContain('| 99 % | 1 of 2 |');
    expect(text).toContain('| 97 % | 1 of 1 |');
    const head = trustHeadline([kept(1, 0, true), kept(2, 0, false), kept(3, 0.03, true)]);
    expect(head).toMatch(/how likely it is +\| 1 of 2 +\|/);
    expect(head).toMatch(
      /right with 3 % wrong entries \(one fault \/ two\) +\| 1 of 1 \/ 0 of 0 +\|/,
    );
    expect(head).not.toContain('NaN');
  });

  it('draws ours and the fixed order, and a dot for each stated tenth', () => {
    const hunts = [
      result({}),
      result({ probability: 0.55, right: false }),
      result({ order: 'fixed' }),
    ];
    expect(calibrationPlot(hunts).match(/<circle/g)).toHaveLength(2);
    expect(readingsPlot(hunts).match(/stroke-width="2.5"/g)).toHaveLength(2);
    expect(calibrationPlot(hunts) + readingsPlot(hunts)).not.toMatch(/NaN|undefined/);
  });
});
