import { IDBFactory, IDBObjectStore, IDBOpenDBRequest } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DATABASE_VERSION } from './database.ts';
import {
  freshDevice,
  opened,
  putDeviceAway,
  putRaw,
  tab,
  throwing,
  times,
  withReading,
} from './device.fixture.ts';
import { importJob } from './exchange.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';
import { JOB_VERSION } from './job.ts';
import type { Notebook } from './notebook.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

describe('when the disk cannot be had', () => {
  const expectMemory = async (notebook: Notebook, code: string, words: string) => {
    expect(notebook).toMatchObject({ place: 'memory', trouble: { code } });
    expect(notebook.trouble?.sentence).toContain(words);
    expect(notebook.trouble?.sentence).toMatch(/save (it|your work) as a file/i);
    await notebook.write(fullJob());
    expect(await notebook.read('job-1')).toEqual(fullJob());
    expect(importJob(await notebook.rescue('job-1'))).toEqual({ ok: true, job: fullJob() });
    expect(await notebook.list()).toHaveLength(1);
  };

  it('a browser without a database', async () => {
    vi.stubGlobal('indexedDB', undefined);
    await expectMemory(await tab(), 'unavailable', 'stores nothing');
  });

  it.each(['SecurityError', 'InvalidStateError', 'UnknownError'])(
    'a private window that answers %s',
    async (name) => {
      vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(throwing(name));
      await expectMemory(await tab(), 'unavailable', 'private window');
    },
  );

  it('a browser that never answers', async () => {
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(() => new IDBOpenDBRequest());
    await expectMemory(await tab(200), 'unavailable', 'stores nothing');
  });

  it('a database of a newer version', async () => {
    (await openDB('lugwise', 7)).close();
    await expectMemory(await tab(), 'newer-version', 'newer Lugwise');
  });

  it('a tab that does not let go of an older database; then it does', async () => {
    // Version 1 is the first, so the older one is made by asking for a higher version of this one.
    const held = await openDB('lugwise', 1, {
      upgrade: (db) => void db.createObjectStore('jobs', { keyPath: 'id' }),
    });
    const original = IDBFactory.prototype.open;
    vi.spyOn(IDBFactory.prototype, 'open').mockImplementation(function (this: IDBFactory, name) {
      return original.call(this, name, DATABASE_VERSION);
    });
    const notebook = await tab();
    await expectMemory(notebook, 'blocked', 'Close the other tabs');
    expect(await notebook.retry()).toBe(notebook);
    held.close();
    const disk = await notebook.retry();
    opened.push(disk);
    expect(disk.place).toBe('disk');
    expect(await disk.read('job-1')).toEqual(fullJob());
  });

  it('a newer app that takes over in another tab: the older lets go and says so', async () => {
    const notebook = await tab();
    await notebook.write(emptyJob());
    const newer = await openDB('lugwise', DATABASE_VERSION + 1);
    newer.close();
    const write = notebook.write(withReading(emptyJob(), 1));
    await expect(write).rejects.toMatchObject({ code: 'newer-version' });
    expect(times(await notebook.read('job-1'))).toEqual([moment(1)]);
  });
});

describe('when a write fails', () => {
  it('no room: the job stays in this page, and goes to disk once there is room', async () => {
    const notebook = await tab();
    await notebook.write(emptyJob());
    const put = vi
      .spyOn(IDBObjectStore.prototype, 'put')
      .mockImplementation(throwing('QuotaExceededError'));
    const job = withReading(emptyJob(), 1);
    await expect(notebook.write(job)).rejects.toMatchObject({
      code: 'full',
      sentence: expect.stringContaining('no room left on this device'),
    });
    expect(await notebook.read('job-1')).toEqual(job);
    expect(await notebook.list()).toMatchObject([{ id: 'job-1', readings: 1 }]);
    put.mockRestore();
    expect(await (await tab()).read('job-1')).toEqual(emptyJob());
    expect(await notebook.retry()).toBe(notebook);
    expect(await (await tab()).read('job-1')).toEqual(job);
  });
});

describe('what is stored and cannot be read', () => {
  it('is listed, named, given as a file, and never overwritten', async () => {
    const broken = { ...fullJob(), readings: [{ id: 'r1', half: 'writ' }] };
    await putRaw(broken);
    const notebook = await tab();
    const [line] = await notebook.list();
    expect(line).toMatchObject({ id: 'job-1', title: 'The blue one' });
    expect(line?.damaged).toContain('readings[0]: "half" is not a key that is known here');
    await expect(notebook.read('job-1')).rejects.toMatchObject({ code: 'damaged' });
    expect(JSON.parse(await notebook.rescue('job-1'))).toEqual(broken);
    await notebook.write(emptyJob());
    expect(await notebook.read('job-1')).toEqual(emptyJob());
    const aside = (await notebook.list()).find(({ id }) => id !== 'job-1');
    expect(aside?.title).toBe('The blue one (set aside)');
    expect(JSON.parse(await notebook.rescue(aside!.id)).readings).toEqual(broken.readings);
  });

  it('of a newer version is neither read nor overwritten', async () => {
    const newer = { ...fullJob(), version: JOB_VERSION + 1 };
    await putRaw(newer);
    const notebook = await tab();
    await expect(notebook.read('job-1')).rejects.toMatchObject({ code: 'newer-version' });
    await expect(notebook.write(emptyJob())).rejects.toMatchObject({ code: 'newer-version' });
    const db = await openDB('lugwise');
    expect(await db.get('jobs', 'job-1')).toEqual(newer);
    db.close();
  });

  it('of two tabs whose circuits exclude each other both stay', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.write(emptyJob());
    const [inA, inB] = [await a.read('job-1'), await b.read('job-1')];
    await b.write(withReading(inB, 1));
    // Tab a rebuilt the guitar: the reading of tab b names a point that is gone.
    const circuit = {
      ...inA.circuit,
      parts: inA.circuit.parts.map((part) => (part.id === 'jack' ? { ...part, id: 'out' } : part)),
      leads: inA.circuit.leads.map((lead) => ({ ...lead, to: lead.to.replace('jack.', 'out.') })),
    };
    await a.write({ ...inA, circuit, changedAt: moment(2) });
    const list = await a.list();
    expect(list.map(({ title }) => title)).toEqual(['The blue one', 'The blue one (set aside)']);
    expect((await a.read('job-1')).circuit).toEqual(circuit);
    expect(times(await a.read(list[1]!.id))).toEqual([moment(1)]);
  });
});
