import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { exportJob, importJob } from './exchange.ts';
import { emptyJob, fullJob } from './job.fixture.ts';
import schema from './job.schema.json' with { type: 'json' };
import { jobShape } from './job-shape.ts';

// The outside check is ajv, a general validator of JSON Schema draft 2020-12, on the schema that
// people who write other programs are given.
const fitsSchema = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false }).compile(
  schema,
);

const fitsShape = (raw: unknown): boolean => {
  try {
    jobShape(raw, '');
    return true;
  } catch {
    return false;
  }
};

/** Every path through a JSON value, to its leaves and to the objects on the way. */
function pathsOf(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, one]) => pathsOf(one, [...path, key]))];
}

function withChange(
  raw: unknown,
  path: readonly string[],
  change: (old: unknown) => unknown,
): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return change(raw);
  const copy = (Array.isArray(raw) ? [...raw] : { ...(raw as object) }) as Record<string, unknown>;
  const value = withChange(copy[key], rest, change);
  if (value === undefined && !Array.isArray(copy)) delete copy[key];
  else copy[key] = value;
  return copy;
}

const plainJobs = startingWirings.map(({ id }) => JSON.parse(exportJob(fullJob(id))));
const places = plainJobs.flatMap((job) => pathsOf(job).map((path) => ({ job, path })));

/** An exported job with one place of it replaced by something that may or may not belong there. */
const damagedJob = fc
  .record({
    place: fc.constantFrom(...places),
    change: fc.oneof(
      fc.constant(() => undefined),
      fc.jsonValue({ maxDepth: 2 }).map((value) => () => value),
      fc
        .constantFrom('', 'jack.tip', 'hot@to', 'volume', '__proto__', 'open', 'ohms', 'NaN', '1')
        .map((value) => () => value),
      fc
        .constantFrom(0, -0, -1, 1, 10, 1e-9, 1e13, Number.MAX_VALUE, Number.MIN_VALUE)
        .map((value) => () => value),
      fc.constant((old: unknown) => (typeof old === 'number' ? -old : [old])),
      fc.constant((old: unknown) => (Array.isArray(old) ? [...old, ...old] : { a: old })),
    ),
  })
  .map(({ place, change }) => withChange(place.job, place.path, change));

function expectFinite(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === 'object' && value !== null)
    for (const one of Object.values(value)) expectFinite(one);
}

describe('the file of a job', () => {
  it.each(startingWirings.map(({ id }) => id))('on %s comes back as it went', (wiring) => {
    const job = fullJob(wiring);
    expect(importJob(exportJob(job))).toEqual({ ok: true, job });
    expect(exportJob(job)).toBe(exportJob(JSON.parse(exportJob(job))));
  });

  it.each(startingWirings.map(({ id }) => id))('on %s fits the published schema', (wiring) => {
    for (const job of [fullJob(wiring), emptyJob(wiring)]) {
      fitsSchema(JSON.parse(exportJob(job)));
      expect(fitsSchema.errors).toBeNull();
    }
  });

  it('is described by an example that can be opened and fits the schema', () => {
    const page = readFileSync(new URL('../../docs/job-file.md', import.meta.url), 'utf8');
    const example = /```json\n(.*?)```/s.exec(page)?.[1] ?? '';
    expect(importJob(example)).toMatchObject({ ok: true });
    expect(fitsSchema(JSON.parse(example))).toBe(true);
  });

  it('takes a file that starts with a byte order mark', () => {
    expect(importJob(`\uFEFF${exportJob(fullJob())}`).ok).toBe(true);
  });

  it.each([
    ['', 'The file is empty.'],
    ['{"format": "lugwise-job",\n  "version": }', 'The file is not JSON: line 2, character 14.'],
    [exportJob(fullJob()).slice(0, 60), 'The file is not JSON: line 4, character 16.'],
    ['[]', 'This is not a job: expected an object, got a list'],
    [`"${'x'.repeat(2_000_001)}"`, /^The file is too large: 2000003 characters/],
    [`"${'x'.repeat(1_900_000)}`, 'The file is not JSON: line 1, character 1.'],
    ['['.repeat(500_000), 'The file is not JSON: line 1, character 500001.'],
    [
      exportJob(fullJob()).replace('430000', '1e999'),
      'readings[0].seen.ohms: expected a number of ohms from 0 to 1e12 or "open", got null',
    ],
  ])('refuses %.20j in one line', (text, sentence) => {
    const imported = importJob(text);
    expect(imported.ok).toBe(false);
    if (!imported.ok) expect(imported.sentence).toMatch(sentence);
  });
});

describe('the importer under fire', () => {
  const expectSafe = (text: string): void => {
    // Processor time, so that a busy machine is not taken for a hang.
    const started = process.cpuUsage();
    const imported = importJob(text);
    const { user, system } = process.cpuUsage(started);
    expect((user + system) / 1000).toBeLessThan(1000);
    if (imported.ok) {
      expectFinite(imported.job);
      expect(importJob(exportJob(imported.job))).toEqual(imported);
    } else expect(imported.sentence).toMatch(/^\S[^\n]*$/);
  };

  const UNHURRIED = 60_000;

  it('lives through any text and any JSON', { timeout: UNHURRIED }, () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), expectSafe), { numRuns: 500 });
    fc.assert(fc.property(fc.json(), expectSafe), { numRuns: 500 });
  });

  it('lives through files cut, doubled and overwritten', { timeout: UNHURRIED }, () => {
    const text = exportJob(fullJob());
    const spot = fc.nat(text.length);
    fc.assert(
      fc.property(spot, spot, fc.string({ maxLength: 8 }), (a, b, between) =>
        expectSafe(text.slice(0, a) + between + text.slice(b)),
      ),
      { numRuns: 500 },
    );
  });

  it(
    'lives through jobs with one wrong place, and takes no shape that the schema refuses',
    () => {
      let [taken, refused] = [0, 0];
      fc.assert(
        fc.property(damagedJob, (raw) => {
          expectSafe(JSON.stringify(raw) ?? '');
          const plain = JSON.parse(JSON.stringify(raw) ?? 'null');
          const fits = fitsShape(plain);
          if (fits !== fitsSchema(plain))
            throw new Error(`shape says ${fits}, the schema does not`);
          if (fits) taken += 1;
          else refused += 1;
        }),
        { numRuns: 1000 },
      );
      // Both outcomes must have been met, or the comparison shows nothing.
      expect(taken).toBeGreaterThan(10);
      expect(refused).toBeGreaterThan(100);
    },
    UNHURRIED,
  );
});
