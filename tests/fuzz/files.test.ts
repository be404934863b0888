import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardFrom } from '../../src/bench/editor/stored-board.ts';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { openFile } from '../../src/notebook/collection.ts';
import { restoredDraft } from '../../src/notebook/draft.ts';
import { exportJob, importJob } from '../../src/notebook/exchange.ts';
import { fullJob } from '../../src/notebook/job.fixture.ts';
import schema from '../../src/notebook/job.schema.json' with { type: 'json' };
import { jobShape } from '../../src/notebook/job-shape.ts';
import { photoForFile } from '../../src/notebook/photo.ts';
import { pickupSheet, togetherSheet } from '../../src/notebook/sheet.fixture.ts';
import { anyText, damaged, torn } from './damage.ts';
import { draft, photo } from './samples.ts';
import { expectFinite, expectSentence, UNHURRIED, underFire } from './under-fire.ts';

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
const plain = (raw: unknown): unknown => JSON.parse(JSON.stringify(raw) ?? 'null');

/** A text that was brought in, or pasted: a job that is whole, or a sentence. */
function bringInJob(text: string): void {
  const imported = importJob(text);
  if (!imported.ok) {
    expectSentence(imported.sentence);
    return;
  }
  expectFinite(imported.job.readings);
  expect(importJob(exportJob(imported.job))).toEqual(imported);
}

function bringIn(text: string): void {
  const file = openFile(text);
  if (!file.ok) {
    expectSentence(file.sentence);
    return;
  }
  for (const { title, sentence } of file.refused) {
    expectSentence(sentence);
    expect(title).not.toBe('');
  }
  for (const one of file.drafts) {
    const { states, undone } = boardFrom(one);
    expect(undone.length).toBeLessThanOrEqual(one.undone.length);
    for (const { circuit } of states)
      expect(restoredDraft({ ...one, now: { circuit, places: {} } })).not.toBeNull();
  }
}

const jobs = startingWirings.map(({ id }) => plain(fullJob(id)));
const notebook = {
  format: 'lugwise-notebook',
  version: 1,
  savedAt: '2026-03-01T18:00:00Z',
  jobs: [jobs[3]],
  sheets: [pickupSheet(), togetherSheet()],
  drafts: [draft()],
  photos: [photoForFile(photo())],
};

describe('a text that is brought in or pasted', UNHURRIED, () => {
  it('may be anything', async () => {
    await underFire('pasted text: anything', anyText, bringIn, { few: 700 });
  });

  it('may be a job that was cut, doubled or overwritten', async () => {
    await underFire('job file: torn', torn(exportJob(fullJob())), bringInJob, { few: 500 });
  });

  it('may be a job with wrong places, and is taken in no shape that the schema refuses', async () => {
    let [taken, refused] = [0, 0];
    await underFire(
      'job file: wrong places',
      damaged(jobs),
      (raw) => {
        bringInJob(JSON.stringify(raw) ?? '');
        const fits = fitsShape(plain(raw));
        if (fits !== fitsSchema(plain(raw)))
          throw new Error(`shape says ${fits}, the schema does not`);
        if (fits) taken += 1;
        else refused += 1;
      },
      { few: 800, share: 0.3 },
    );
    // Both outcomes must have been met, or the comparison shows nothing.
    expect(taken).toBeGreaterThan(10);
    expect(refused).toBeGreaterThan(100);
  });

  it('may be a notebook with wrong places', async () => {
    await underFire(
      'notebook file: wrong places',
      damaged([notebook], 4),
      (raw) => bringIn(JSON.stringify(raw) ?? ''),
      { few: 250, share: 0.05 },
    );
  });

  it('may be a sheet or a drawing with wrong places', async () => {
    const one = fc.oneof(damaged([pickupSheet(), togetherSheet()]), damaged([draft()]));
    await underFire(
      'sheet and drawing: wrong places',
      one,
      (raw) => {
        bringIn(JSON.stringify(raw) ?? '');
        bringIn(JSON.stringify({ ...notebook, sheets: [raw], drafts: [raw] }));
      },
      { few: 400, share: 0.1 },
    );
  });
});
