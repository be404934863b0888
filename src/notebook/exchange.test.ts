import { readFileSync } from 'node:fs';
import Ajv2020 from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { exportJob, importJob } from './exchange.ts';
import { emptyJob, fullJob } from './job.fixture.ts';
import schema from './job.schema.json' with { type: 'json' };

// The outside check is ajv, a general validator of JSON Schema draft 2020-12, on the schema that
// people who write other programs are given.
const fitsSchema = new Ajv2020({ strict: true, strictTypes: false, strictRequired: false }).compile(
  schema,
);

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
