import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { rooms } from '../.dependency-cruiser.mjs';
import { root } from './folders.ts';

/** What a run of tests came to. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
  /** What the counts do not show, a sentence each: no report, a file that did not load. */
  readonly remarks: readonly string[];
}

/** The part of Vitest's JSON report that is read. */
interface UnitReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numPendingTests: number;
  readonly numTodoTests: number;
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly unknown[];
  }[];
}

/** The part of Playwright's JSON report that is read. */
interface EndToEndReport {
  readonly errors: readonly { readonly message?: string }[];
  readonly stats: {
    readonly expected: number;
    readonly unexpected: number;
    readonly flaky: number;
    readonly skipped: number;
  };
}

const nothing: Tally = { passed: 0, failed: 0, skipped: 0, remarks: [] };

export function unitTally(reports: string): Tally {
  const report = readReport<UnitReport>(join(reports, 'unit.json'));
  if (!report) return { ...nothing, remarks: ['the unit tests left no report'] };
  // A file that throws while it loads has no tests to count: it counts as one that failed.
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  );
  const files = report.testResults.map(({ name }) => relative(root, name));
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
    remarks: [
      ...unloaded.map(({ name }) => `did not load: ${relative(root, name)}`),
      ...roomsWithoutTests(files).map((room) => `src/${room} has code, and no unit test`),
    ],
  };
}

export function endToEndTally(reports: string): Tally {
  const report = readReport<EndToEndReport>(join(reports, 'end-to-end.json'));
  if (!report) return { ...nothing, remarks: ['the end-to-end tests left no report'] };
  const { expected, unexpected, flaky, skipped } = report.stats;
  return {
    passed: expected,
    failed: unexpected + flaky,
    skipped,
    remarks: report.errors.map(({ message }) => message ?? 'an error outside any test'),
  };
}

export function sum(tallies: readonly Tally[]): Tally {
  return tallies.reduce(
    (all, one) => ({
      passed: all.passed + one.passed,
      failed: all.failed + one.failed,
      skipped: all.skipped + one.skipped,
      remarks: [...all.remarks, ...one.remarks],
    }),
    nothing,
  );
}

/** Why a tally does not pass: a run in which nothing ran, or in which a test was left out, does not. */
export function faultsOf({ passed, failed, skipped, remarks }: Tally): string[] {
  return [
    ...(failed > 0 ? [`${failed} failed`] : []),
    ...(passed + failed === 0 ? ['no test ran'] : []),
    ...(skipped > 0 ? [`${skipped} skipped: a full run leaves no test out`] : []),
    ...remarks,
  ];
}

function readReport<Report>(file: string): Report | undefined {
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Report) : undefined;
}

function roomsWithoutTests(testFiles: readonly string[]): string[] {
  return Object.keys(rooms).filter((room) => {
    const folder = join(root, 'src', room);
    const hasCode =
      existsSync(folder) &&
      readdirSync(folder, { recursive: true, encoding: 'utf8' }).some((it) => /[.]tsx?$/.test(it));
    return hasCode && !testFiles.some((file) => file.startsWith(`src/${room}/`));
  });
}
