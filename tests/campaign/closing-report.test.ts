import { describe, expect, it } from 'vitest';
import type { ClosingResult } from './closing.ts';
import { closingDocument, closingHeadline } from './closing-report.ts';

const result = (more: Partial<ClosingResult>): ClosingResult => ({
  wiring: 'one-humbucker-one-knob',
  stage: 'open',
  seed: 1,
  trouble: 'healthy',
  faults: [],
  state: 'passed',
  taken: 30,
  planReadings: 26,
  lowerBoundReadings: 16,
  minutes: 9.8,
  firstReadings: 5,
  firstMinutes: 2.1,
  firstShare: 0.87,
  failed: [],
  ...more,
});

describe('the report of closing checks', () => {
  const missed = result({
    seed: 3,
    trouble: 'single',
    faults: ['The tone capacitor leaks'],
    state: 'passed',
  });
  const results = [
    result({}),
    result({ seed: 2, state: 'failed', failed: ['ohms: 3; expected 4'] }),
    missed,
    missed,
    result({ seed: 4, trouble: 'single', faults: ['The jack is turned'], state: 'failed' }),
    result({ seed: 5, wiring: 'one-humbucker-one-knob + treble-bleed', planReadings: 40 }),
  ];

  it('tells every check that ended otherwise than it should, and counts none twice', () => {
    const text = closingDocument(results);
    expect(text).toContain('| healthy guitar called faulty | at most 0.5 % | 1 of 2 |');
    expect(text).toContain('| one fault that the list claims, caught | 99 % | 1 of 2 |');
    expect(text).toContain('seed 3, single: The tone capacitor leaks. After 30 readings: passed');
    expect(text).toContain(
      'seed 2, healthy: nothing wrong. After 30 readings: failed (ohms: 3; expected 4)',
    );
    expect(text).not.toMatch(/NaN|undefined/);
    // 1 - (1 - 2 Q(4))^25, with Q(4) = 3.167e-5 from a table of the normal distribution.
    expect(text).toContain('does so on 0.16 % of healthy guitars');
  });

  it('parts modified wirings from starting ones, and joins them in the head', () => {
    const text = closingDocument(results);
    expect(text).toContain('## Cavity open: starting wirings');
    expect(text).toContain('## Cavity open: wirings modified at random');
    expect(closingHeadline(results)).toMatch(
      /mean over the wirings \/ fewest there can be +\| 33.0 \/ 16.0 +\|/,
    );
    expect(closingHeadline(results)).toMatch(/\| wirings +\| 2 +\|/);
    expect(closingHeadline(results)).toMatch(/\| healthy guitars called faulty +\| 1 of 3 +\|/);
  });

  it('has a part and a column for each stage that was measured', () => {
    const mat = [...results, result({ stage: 'mat', planReadings: 30, lowerBoundReadings: 20 })];
    expect(closingDocument(mat)).toContain(
      '## Harness on the mat, before it is fitted: starting wirings',
    );
    const head = closingHeadline(mat);
    expect(head).toMatch(/^\| closing check +\| cavity open +\| harness on the mat +\|/);
    expect(head).toMatch(/fewest there can be +\| 33.0 \/ 16.0 +\| 30.0 \/ 20.0 +\|/);
    expect(head).not.toContain('guitar closed');
  });
});
