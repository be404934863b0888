import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { endToEndTally, faultsOf, sum, unitTally } from '../../scripts/tally.ts';

const clean = { passed: 3, failed: 0, skipped: 0, remarks: [] };

describe('the tally of a test run', () => {
  let reports: string;
  beforeEach(() => {
    reports = mkdtempSync(join(tmpdir(), 'reports-'));
  });
  afterEach(() => rmSync(reports, { recursive: true }));
  const write = (name: string, report: object) =>
    writeFileSync(join(reports, name), JSON.stringify(report));

  it('passes only a run in which tests ran and none was left out', () => {
    expect(faultsOf(clean)).toEqual([]);
    expect(faultsOf({ ...clean, passed: 0 })).toEqual(['no test ran']);
    expect(faultsOf({ ...clean, failed: 2 })).toEqual(['2 failed']);
    expect(faultsOf({ ...clean, skipped: 1 })).toEqual([
      '1 skipped: a full run leaves no test out',
    ]);
  });

  it('does not pass a run that left no report', () => {
    expect(faultsOf(unitTally(reports))).toContain('the unit tests left no report');
    expect(faultsOf(endToEndTally(reports))).toContain('the end-to-end tests left no report');
  });

  it('counts a test file that did not load as one that failed', () => {
    write('unit.json', {
      numPassedTests: 4,
      numFailedTests: 1,
      numPendingTests: 2,
      numTodoTests: 1,
      testResults: [{ name: 'tests/broken.test.ts', status: 'failed', assertionResults: [] }],
    });
    expect(unitTally(reports)).toMatchObject({ passed: 4, failed: 2, skipped: 3 });
  });

  it('counts a flaky end-to-end test as one that failed', () => {
    write('end-to-end.json', {
      errors: [{ message: 'no browser' }],
      stats: { expected: 5, unexpected: 1, flaky: 1, skipped: 0 },
    });
    expect(endToEndTally(reports)).toEqual({
      passed: 5,
      failed: 2,
      skipped: 0,
      remarks: ['no browser'],
    });
  });

  it('adds up', () => {
    expect(sum([clean, { ...clean, failed: 1 }])).toEqual({ ...clean, passed: 6, failed: 1 });
  });
});
