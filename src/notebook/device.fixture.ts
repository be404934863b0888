import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { vi } from 'vitest';
import type { Reading } from '../readings/reading.ts';
import { fullJob, moment } from './job.fixture.ts';
import type { Job } from './job.ts';
import type { Notebook } from './notebook.ts';
import { openNotebook } from './store.ts';
import 'fake-indexeddb/auto';

/** A device with tabs, for the tests of the store: a database in memory and notebooks on it. */

export const opened: Notebook[] = [];
/** A tab: a notebook of its own on the same database. */
export async function tab(silent = 10_000): Promise<Notebook> {
  const notebook = await openNotebook({ blocked: 30, silent });
  opened.push(notebook);
  return notebook;
}

export function freshDevice(): void {
  vi.stubGlobal('indexedDB', new IDBFactory());
}

export function putDeviceAway(): void {
  for (const notebook of opened.splice(0)) notebook.close();
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
}

export const withReading = (job: Job, minute: number): Job => {
  const [template] = fullJob().readings as readonly [Reading];
  const reading = { ...template, id: `r${job.readings.length + 1}`, at: moment(minute), round: 0 };
  return { ...job, readings: [...job.readings, reading], changedAt: reading.at };
};
export const times = (job: Job) => job.readings.map(({ at }) => at);

/** Puts a record past all checks, as an older, newer or broken app would. */
export async function putRaw(record: unknown): Promise<void> {
  const db = await openDB('lugwise', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('jobs', { keyPath: 'id' }),
  });
  await db.put('jobs', record);
  db.close();
}

export const throwing = (name: string) => () => {
  throw new DOMException('made up for the test', name);
};
