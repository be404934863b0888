import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { freshDevice, putDeviceAway, tab, times, withReading } from './device.fixture.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

describe('the notebook on disk', () => {
  it('keeps a job for the next opening, as it was', async () => {
    const first = await tab();
    await first.write(fullJob());
    first.close();
    const second = await tab();
    expect(second).toMatchObject({ place: 'disk', trouble: null });
    expect(await second.read('job-1')).toEqual(fullJob());
  });

  it('lists the newest first, and forgets what is removed', async () => {
    const notebook = await tab();
    await notebook.write({ ...emptyJob(), id: 'a', changedAt: moment(1) });
    await notebook.write({ ...fullJob(), id: 'b', changedAt: moment(3), closedAt: moment(3) });
    await notebook.write({ ...emptyJob(), id: 'c', changedAt: moment(2) });
    const list = await notebook.list();
    expect(list.map(({ id }) => id)).toEqual(['b', 'c', 'a']);
    expect(list[0]).toEqual({
      id: 'b',
      title: 'The blue one',
      wiring: 'one humbucker, one volume',
      createdAt: moment(0),
      changedAt: moment(3),
      closedAt: moment(3),
      readings: fullJob().readings.length,
      repairs: 1,
      guitar: { id: 'job-1', title: 'The blue one' },
      done: ['Remake the hot lead'],
    });
    await notebook.remove('b');
    expect((await notebook.list()).map(({ id }) => id)).toEqual(['c', 'a']);
    await expect(notebook.read('b')).rejects.toMatchObject({ code: 'missing' });
  });

  it('removes, and hands over, after what is still being written', async () => {
    const notebook = await tab();
    await notebook.write(emptyJob());
    const writing = [1, 2].map((minute) => notebook.write(withReading(emptyJob(), minute)));
    const [last] = (await notebook.everything()).jobs as [ReturnType<typeof emptyJob>];
    expect(last.readings).toHaveLength(1);
    await Promise.all(writing);
    const more = [3, 4].map((minute) => notebook.write(withReading(emptyJob(), minute)));
    await Promise.all([...more, notebook.remove('job-1')]);
    await expect(notebook.read('job-1')).rejects.toMatchObject({ code: 'missing' });
  });

  it('gives back the very job while no other tab added to it', async () => {
    const notebook = await tab();
    const job = withReading(emptyJob(), 1);
    expect(await notebook.write(emptyJob())).toEqual(emptyJob());
    expect(await notebook.write(job)).toBe(job);
  });

  it('has written with strict durability, and through, when write resolves', async () => {
    const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const notebook = await tab();
    await notebook.write(emptyJob());
    expect(transaction).toHaveBeenLastCalledWith('jobs', 'readwrite', { durability: 'strict' });
    const db = await openDB('lugwise');
    expect(await db.get('jobs', 'job-1')).toEqual(emptyJob());
    db.close();
  });

  it('goes on after the browser closed the connection', async () => {
    const close = vi.spyOn(IDBDatabase.prototype, 'close');
    const notebook = await tab();
    await notebook.write(emptyJob());
    const database = vi.spyOn(IDBDatabase.prototype, 'transaction').mock;
    await notebook.read('job-1');
    (database.contexts[0] as IDBDatabase).close();
    expect(close).toHaveBeenCalled();
    expect(await notebook.read('job-1')).toEqual(emptyJob());
  });
});

describe('two tabs', () => {
  it('do not lose each other a reading', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.write(emptyJob());
    const [inA, inB] = [await a.read('job-1'), await b.read('job-1')];
    await Promise.all([a.write(withReading(inA, 1)), b.write(withReading(inB, 2))]);
    const both = await (await tab()).read('job-1');
    expect(times(both).sort()).toEqual([moment(1), moment(2)]);
    // Neither tab took up the other's reading, and each goes on from its own.
    await a.write(withReading(withReading(inA, 1), 3));
    await b.write(inB);
    expect(times(await (await tab()).read('job-1')).sort()).toEqual([moment(1), moment(3)]);
  });

  it('can take back what the other added, once they have it', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.write(emptyJob());
    await b.write(withReading(await b.read('job-1'), 1));
    const joined = await a.write({ ...emptyJob(), title: 'Renamed' });
    expect(times(joined)).toEqual([moment(1)]);
    await a.write({ ...joined, readings: [] });
    expect(times(await b.read('job-1'))).toEqual([]);
  });

  it('cannot take back what they never saw, however often they write', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.write(emptyJob());
    await b.write(withReading(await b.read('job-1'), 1));
    const own = withReading(emptyJob(), 2);
    // Another circuit of the same shape: tab a wins that field, and still did not see the reading.
    const rewired = { ...own, circuit: { ...own.circuit, title: 'rewired' } };
    await a.write(rewired);
    await a.write(rewired);
    await a.write({ ...rewired, readings: [] });
    const job = await b.read('job-1');
    expect(times(job)).toEqual([moment(1)]);
    expect(job.circuit.title).toBe('rewired');
  });

  it('hear of each other', async () => {
    const [a, b] = [await tab(), await tab()];
    const heard = new Promise((resolve) => b.watch(resolve));
    const own = vi.fn();
    a.watch(own);
    await a.write(emptyJob());
    expect(await heard).toEqual({ id: 'job-1', what: 'written' });
    expect(own).not.toHaveBeenCalled();
  });

  it('bring a job back that one deleted while the other worked on it', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.write(emptyJob());
    const inB = await b.read('job-1');
    await a.remove('job-1');
    await b.write(withReading(inB, 1));
    expect(times(await a.read('job-1'))).toEqual([moment(1)]);
  });
});

describe('undo', () => {
  it('takes a reading off the disk', async () => {
    const notebook = await tab();
    const one = withReading(emptyJob(), 1);
    await notebook.write(withReading(one, 2));
    await notebook.write(one);
    expect(times(await notebook.read('job-1'))).toEqual([moment(1)]);
  });

  it('does so after the job was resumed', async () => {
    await (await tab()).write(withReading(emptyJob(), 1));
    const later = await tab();
    await later.read('job-1');
    await later.write(emptyJob());
    expect(times(await later.read('job-1'))).toEqual([]);
  });

  it('does so while the write before it is under way', async () => {
    const notebook = await tab();
    const writes = [notebook.write(withReading(emptyJob(), 1)), notebook.write(emptyJob())];
    await Promise.all(writes);
    expect(times(await notebook.read('job-1'))).toEqual([]);
  });
});
