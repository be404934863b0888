import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { exportCollection, openFile } from './collection.ts';
import { freshDevice, putDeviceAway, putRaw, tab, withReading } from './device.fixture.ts';
import { exportJob } from './exchange.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';
import type { Job } from './job.ts';
import type { Notebook } from './notebook.ts';
import { MOST_PHOTOS, type Photo } from './photo.ts';
import { pickupSheet, togetherSheet } from './sheet.fixture.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

const photo = (id: string, job = 'job-1', bytes = 2000): Photo => {
  const data = new Uint8Array(bytes).map((_, at) => (at * 31) % 256);
  data.set([0xff, 0xd8, 0xff, 0xe0]);
  return { id, job, words: 'the jack', at: moment(9), width: 640, height: 480, bytes, data };
};
const written = async (notebook: Notebook): Promise<string> =>
  exportCollection(await notebook.everything(), moment(40));
const brought = (text: string) => {
  const file = openFile(text);
  if (!file.ok) throw new Error(file.sentence);
  return file;
};
const does = async (notebook: Notebook, text: string) =>
  (await notebook.plan(brought(text))).records.map(({ id, does: act }) => [id, act]);

async function fill(notebook: Notebook): Promise<void> {
  await notebook.write(fullJob());
  await notebook.write({ ...emptyJob(), id: 'job-2' });
  await notebook.sheets.write(pickupSheet());
  await notebook.sheets.write({ ...togetherSheet(), id: 'sheet-2' });
  await notebook.photos.add(photo('p1'));
}

describe('a whole notebook as a file', () => {
  it('comes back as it went on another device, and once more changes nothing', async () => {
    const here = await tab();
    await fill(here);
    const text = await written(here);
    const all = await here.everything();
    freshDevice();
    const there = await tab();
    expect(await does(there, text)).toEqual([
      ['job-1', 'new'],
      ['job-2', 'new'],
      ['sheet-1', 'new'],
      ['sheet-2', 'new'],
      ['p1', 'new'],
    ]);
    expect(await there.list()).toEqual([]);
    await there.takeIn(brought(text));
    expect(await there.everything()).toEqual(all);
    expect(new Set((await does(there, text)).map(([, act]) => act))).toEqual(new Set(['nothing']));
  });

  it('carries what is damaged, and names it when it is opened', async () => {
    await putRaw({ ...emptyJob(), title: 'Torn', readings: 7 });
    const text = await written(await tab());
    expect(JSON.parse(text).jobs[0]).toMatchObject({ title: 'Torn', readings: 7 });
    expect(brought(text)).toMatchObject({
      jobs: [],
      refused: [{ title: 'Torn', sentence: 'readings: expected a list, got 7' }],
    });
  });

  it('is taken in whole or not at all', async () => {
    const notebook = await tab();
    await notebook.write(emptyJob());
    const before = await notebook.everything();
    const file = brought(
      exportCollection({ jobs: [{ ...emptyJob(), id: 'b' }], sheets: [], photos: [] }, moment(1)),
    );
    // A record that no database takes: a function cannot be cloned.
    const poisoned = { ...emptyJob(), id: 'c', title: (() => 'x') as unknown as string };
    await expect(notebook.takeIn({ ...file, jobs: [...file.jobs, poisoned] })).rejects.toThrow();
    expect(await notebook.everything()).toEqual(before);
  });
});

describe('a file that touches what is here', () => {
  it('adds its readings and says how many, and takes none away', async () => {
    const notebook = await tab();
    const base = withReading(emptyJob(), 1);
    await notebook.write(withReading(base, 2));
    const theirs = { ...withReading(withReading(base, 3), 4), title: 'Theirs' };
    const { records } = await notebook.plan(brought(exportJob(theirs)));
    expect(records).toMatchObject([
      { does: 'joins', notes: ['2 readings are added.', 'Its name becomes “Theirs”.'] },
    ]);
    await notebook.takeIn(brought(exportJob(theirs)));
    const job = await notebook.read('job-1');
    expect(job.readings.map(({ at }) => at)).toEqual([2, 1, 3, 4].map(moment).sort());
  });

  it('of an older state of the job changes nothing', async () => {
    const notebook = await tab();
    await notebook.write(withReading(withReading(emptyJob(), 1), 2));
    expect(await does(notebook, exportJob(withReading(emptyJob(), 1)))).toEqual([
      ['job-1', 'nothing'],
    ]);
  });

  it('comes beside a job with which it cannot be joined', async () => {
    const notebook = await tab();
    await notebook.write(withReading(emptyJob(), 1));
    const renamed =
      (name: string) =>
      (job: Job): Job => ({
        ...job,
        circuit: {
          ...job.circuit,
          parts: job.circuit.parts.map((part) =>
            part.id === 'jack' ? { ...part, id: name } : part,
          ),
          leads: job.circuit.leads.map((lead) => ({
            ...lead,
            to: lead.to.replace('jack.', `${name}.`),
          })),
        },
      });
    const theirs = { ...renamed('out')(emptyJob()), changedAt: moment(5) };
    expect(await does(notebook, exportJob(theirs))).toEqual([['job-1', 'copy']]);
    await notebook.takeIn(brought(exportJob(theirs)));
    expect((await notebook.list()).map(({ title }) => title).sort()).toEqual([
      'The blue one',
      'The blue one (from a file)',
    ]);
    expect(await notebook.read('job-1')).toEqual(withReading(emptyJob(), 1));
  });

  it('leaves out photos beyond what is kept, and of jobs that are nowhere', async () => {
    const notebook = await tab();
    await notebook.write(emptyJob());
    for (let count = 1; count < MOST_PHOTOS.ofJob; count++)
      await notebook.photos.add(photo(`p${count}`));
    const photos = [photo('p1'), photo('x1'), photo('x2'), photo('x3', 'nowhere')];
    const text = exportCollection({ jobs: [], sheets: [], photos }, moment(1));
    expect(await does(notebook, text)).toEqual([
      ['p1', 'nothing'],
      ['x1', 'new'],
      ['x2', 'refused'],
      ['x3', 'refused'],
    ]);
  });
});
