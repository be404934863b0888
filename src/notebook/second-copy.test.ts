import { openDB } from 'idb';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { freshDevice, opened, putDeviceAway, tab, times, withReading } from './device.fixture.ts';
import { emptyJob, moment } from './job.fixture.ts';

/** As much of the browser's cache (Service Workers, W3C) as is used. */
function fakeCaches(): CacheStorage {
  const kept = new Map<string, Response>();
  const cache = {
    put: async (url: string, response: Response) => void kept.set(url, response),
    match: async (asked: string | { url: string }) =>
      kept.get(typeof asked === 'string' ? asked : new URL(asked.url).pathname)?.clone(),
    delete: async (url: string) => kept.delete(url),
    keys: async () => [...kept.keys()].map((url) => ({ url: `https://example.test${url}` })),
  };
  return { open: async () => cache } as unknown as CacheStorage;
}

/** A cache that is kept in half, and never answers, once `good` copies were made: the browser ended in the middle of the next one. */
function tornCaches(good: number) {
  const kept = fakeCaches();
  const torn = { puts: 0 };
  const open = async () => {
    const cache = await kept.open('');
    const put = async (url: string, response: Response) => {
      torn.puts += 1;
      if (torn.puts <= good) return cache.put(url, response);
      const { headers } = response;
      const text = await response.text();
      await cache.put(url, new Response(text.slice(0, text.length / 2), { headers }));
      return new Promise(() => {});
    };
    return { ...cache, put };
  };
  return { torn, caches: { open } as unknown as CacheStorage };
}

/** What Chromium does with a file that it finds damaged. */
async function throwAway(): Promise<void> {
  for (const notebook of opened.splice(0)) notebook.close();
  await new Promise((resolve, reject) => {
    const gone = indexedDB.deleteDatabase('lugwise');
    gone.onsuccess = resolve;
    gone.onerror = reject;
  });
}

beforeEach(() => {
  freshDevice();
  vi.stubGlobal('caches', fakeCaches());
});
afterEach(putDeviceAway);

it('fills a database that was thrown away with every job as it was stored last', async () => {
  const before = await tab();
  const job = await before.write(emptyJob());
  const next = await before.write(withReading(job, 1));
  await before.write({ ...emptyJob(), id: 'other', changedAt: moment(2) });
  await throwAway();
  const after = await tab();
  expect((await after.list()).map(({ id }) => id)).toEqual(['other', 'job-1']);
  expect(times(await after.read('job-1'))).toEqual(times(next));
});

it('has the state before where the browser ended while the newest was being copied, however often', async () => {
  const { torn, caches } = tornCaches(2);
  vi.stubGlobal('caches', caches);
  const before = await tab();
  const job = await before.write(emptyJob());
  const whole = await before.write(withReading(job, 1));
  for (let lives = 1; lives < 4; lives += 1) {
    const ending = await tab();
    void ending.write(withReading(whole, 1 + lives));
    await vi.waitFor(() => expect(torn.puts).toBe(2 + lives));
  }
  await throwAway();
  expect(times(await (await tab()).read('job-1'))).toEqual(times(whole));
});

it('brings nothing back that was removed, and nothing beside what is there', async () => {
  const before = await tab();
  await before.write(emptyJob());
  await before.write({ ...emptyJob(), id: 'other' });
  await before.remove('job-1');
  await throwAway();
  const after = await tab();
  expect((await after.list()).map(({ id }) => id)).toEqual(['other']);
  await after.remove('other', 'forever');
  await throwAway();
  expect(await (await tab()).list()).toEqual([]);
});

it('has what was put back from the bin', async () => {
  const before = await tab();
  await before.write(emptyJob());
  await before.remove('job-1');
  const [removed] = await before.bin.list();
  await before.bin.putBack(removed?.id ?? '');
  await throwAway();
  expect((await (await tab()).list()).map(({ id }) => id)).toEqual(['job-1']);
});

it('copies what was stored without it before anything more is stored', async () => {
  vi.stubGlobal('caches', undefined);
  const before = await tab();
  await before.write(emptyJob());
  vi.stubGlobal('caches', fakeCaches());
  const later = await tab();
  await later.write({ ...emptyJob(), id: 'other', changedAt: moment(2) });
  await throwAway();
  expect((await (await tab()).list()).map(({ id }) => id)).toEqual(['other', 'job-1']);
});

it('changes nothing where the browser has no such place, or it fails', async () => {
  vi.stubGlobal('caches', { open: async () => Promise.reject(new Error('made up')) });
  const notebook = await tab();
  await notebook.write(emptyJob());
  const db = await openDB('lugwise');
  expect(await db.count('jobs')).toBe(1);
  db.close();
});
