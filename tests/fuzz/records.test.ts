import fc from 'fast-check';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { wholeLayout } from '../../src/bench/drawings/whole/index.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import { DATABASE_VERSION } from '../../src/notebook/database.ts';
import { freshDevice, putDeviceAway, tab } from '../../src/notebook/device.fixture.ts';
import { importJob } from '../../src/notebook/exchange.ts';
import { emptyJob, fullJob } from '../../src/notebook/job.fixture.ts';
import { photoOfFile, restorePhoto } from '../../src/notebook/photo.ts';
import { JobShapeError } from '../../src/notebook/shape.ts';
import { pickupSheet, togetherSheet } from '../../src/notebook/sheet.fixture.ts';
import { damaged } from './damage.ts';
import { photo } from './samples.ts';
import { expectFinite, expectSentence, UNHURRIED, underFire } from './under-fire.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

type Raw = Readonly<Record<string, unknown>>;
/** A database takes no record without an identifier, and no other shape of one. */
const named = (values: fc.Arbitrary<unknown>, id: string): fc.Arbitrary<Raw> =>
  values
    .filter((one): one is object => typeof one === 'object' && one !== null)
    .map((one) => ({ ...one, id }));

describe('a record that is stored', UNHURRIED, () => {
  it('may be wrong in any place: it is opened or named, leaves as a file, and keeps no other out', async () => {
    const sound = { ...emptyJob(), id: 'sound' };
    const records = fc.record({
      job: named(damaged([fullJob(), emptyJob()]), 'job-1'),
      sheet: named(damaged([pickupSheet(), togetherSheet()]), 'sheet-1'),
      photo: named(damaged([photo()]), 'p1'),
    });
    const names = new Set<string>();
    await underFire(
      'stored records: wrong places',
      records,
      async (raw) => {
        freshDevice();
        (await tab()).close();
        const db = await openDB('lugwise', DATABASE_VERSION);
        await db.put('jobs', raw.job);
        await db.put('jobs', sound);
        await db.put('sheets', raw.sheet);
        await db.put('photos', raw.photo);
        db.close();
        const notebook = await tab();
        expect(notebook.place).toBe('disk');
        const lines = await notebook.list();
        const practised = (await notebook.withPractice()).practised;
        for (const { damaged: why } of [
          ...lines,
          ...practised,
          ...(await notebook.sheets.list()),
        ]) {
          if (why !== undefined) expectSentence(why);
          names.add(why === undefined ? 'opened' : 'named');
        }
        expect(lines.map(({ id }) => id)).toContain('sound');
        expect(await notebook.read('sound')).toEqual(sound);
        const opened = await notebook.read('job-1').catch((error: Error) => error.message);
        if (typeof opened === 'string') expectSentence(opened);
        expect(await notebook.rescue('job-1')).not.toBe('');
        expectFinite(await notebook.photos.of('job-1'));
        expectFinite(await notebook.photos.size());
        const { jobs } = await notebook.everything();
        expect(jobs).toContainEqual(raw.job);
        notebook.close();
      },
      { few: 40, share: 0.02 },
    );
    expect(names).toEqual(new Set(['opened', 'named']));
  });

  it('of a photo may be anything: it is a small JPEG, or refused in words', async () => {
    const { data: bytes, ...rest } = photo();
    const written = fc.oneof(
      fc.base64String(),
      fc.string(),
      fc.constant(btoa(String.fromCharCode(...bytes))),
    );
    const one = fc.oneof(
      damaged([photo()]),
      fc
        .record({
          rest: damaged([rest], 1),
          data: fc.uint8Array({ maxLength: 80 }),
          size: fc.boolean(),
        })
        .map(({ rest: other, data, size }) => ({
          ...(other as object),
          data: Uint8Array.from([0xff, 0xd8, 0xff, ...data]),
          ...(size && { bytes: data.length + 3 }),
        })),
      fc
        .record({ rest: damaged([rest], 1), data: written })
        .map(({ rest: other, data }) => ({ ...(other as object), data })),
    );
    await underFire(
      'photos: wrong places and any bytes',
      one,
      (raw) => {
        for (const restore of [restorePhoto, photoOfFile]) {
          try {
            const { data, width, height, bytes: said } = restore(raw);
            expect([...data.subarray(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
            expect(data.length).toBe(said);
            expectFinite([width, height]);
          } catch (error) {
            if (!(error instanceof JobShapeError)) throw error;
            expectSentence(error.message);
          }
        }
      },
      { few: 500 },
    );
  });
});

describe('a job that was taken, with odd values in it', UNHURRIED, () => {
  it('is answered in figures and words that can be shown', async () => {
    let answered = 0;
    const job = fullJob();
    const values = damaged([JSON.parse(JSON.stringify(job))], 2).filter(
      (raw) => importJob(JSON.stringify(raw) ?? '').ok,
    );
    await underFire(
      'jobs with odd values: what the engine says',
      values,
      (raw) => {
        const read = importJob(JSON.stringify(raw));
        if (!read.ok) throw new Error(read.sentence);
        const { circuit, meter, access, readings, refused, repairs } = read.job;
        const made = repairs.map(({ repair }) => repair);
        const said = assess({ circuit, meter, access, readings, refused, repairs: made });
        // What the person called NaN is called so.
        expectFinite(said, !JSON.stringify(raw).includes('NaN'));
        expectFinite(wholeLayout(circuit));
        answered += 1;
      },
      { few: 4, share: 0.002, hang: 5000 },
    );
    expect(answered).toBeGreaterThan(0);
  });
});
