import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { notebookWords } from '../words/en/notebook.ts';
import type { Removed } from './bin.ts';
import type { Job } from './job.ts';
import { NotebookError, notebookErrorOf } from './notebook-error.ts';
import type { Photo } from './photo.ts';
import type { Sheet } from './sheet.ts';

/** The whole database. Raise the version with every change here, and add its step to `upgrade`. */
export interface NotebookSchema extends DBSchema {
  /** One record a job; what was done and seen, never a conclusion. */
  jobs: { key: string; value: Job };
  /** One record a sheet: a pickup on the mat, or pickups that play together. */
  sheets: { key: string; value: Sheet };
  /** One record a photo of a job; `bytes` is an index so that they are counted without being read. */
  photos: { key: string; value: Photo; indexes: { job: string; bytes: number } };
  /** One record for everything that was removed in the last days. */
  bin: { key: string; value: Removed };
}

export type NotebookDatabase = IDBPDatabase<NotebookSchema>;

const DATABASE_NAME = 'lugwise';
export const DATABASE_VERSION = 3;
const STORES = ['jobs', 'sheets', 'photos', 'bin'] as const;

/** The connection is gone: a newer app took over in another tab, or the browser dropped the data. */
export type OnClosed = (reason: 'superseded' | 'dropped') => void;

export interface Patience {
  /** Milliseconds to wait for other tabs to let go of an older database. */
  readonly blocked: number;
  /** Milliseconds to wait for any answer at all; some private windows never give one. */
  readonly silent: number;
}

/** Opens the database, or rejects with a NotebookError; never waits for ever. */
export async function openDatabase(
  onClosed: OnClosed,
  patience: Patience,
): Promise<NotebookDatabase> {
  if (typeof indexedDB === 'undefined') throw new NotebookError('unavailable');
  return await new Promise((resolve, reject) => {
    let given = false;
    const giveUp = (code: 'blocked' | 'unavailable') => () => {
      given = true;
      reject(new NotebookError(code));
    };
    const timers = [setTimeout(giveUp('unavailable'), patience.silent)];
    let database: NotebookDatabase | undefined;
    openDB<NotebookSchema>(DATABASE_NAME, DATABASE_VERSION, {
      upgrade(db, from) {
        // Steps run in order, each from the version before; data is kept.
        if (from < 1) db.createObjectStore('jobs', { keyPath: 'id' });
        if (from < 2) db.createObjectStore('sheets', { keyPath: 'id' });
        if (from < 3) {
          const photos = db.createObjectStore('photos', { keyPath: 'id' });
          photos.createIndex('job', 'job');
          photos.createIndex('bytes', 'bytes');
          db.createObjectStore('bin', { keyPath: 'id' });
        }
      },
      blocked() {
        timers.push(setTimeout(giveUp('blocked'), patience.blocked));
      },
      blocking() {
        // Letting go at once keeps the newer app of the other tab from waiting.
        database?.close();
        onClosed('superseded');
      },
      terminated: () => onClosed('dropped'),
    })
      .then((db) => {
        database = db;
        const lacks = STORES.filter((store) => !db.objectStoreNames.contains(store));
        if (given || lacks.length > 0) db.close();
        if (lacks.length > 0)
          reject(new NotebookError('broken', notebookWords().itLacks(lacks.join(', '))));
        else resolve(db);
      })
      .catch((error: unknown) => reject(notebookErrorOf(error)))
      .finally(() => {
        for (const timer of timers) clearTimeout(timer);
      });
  });
}

/**
 * What is stored, whatever app made it: nothing is changed, nothing is checked. For a file where the database is of another
 * version or damaged. Null where nothing can be read.
 */
export async function storedAnyhow(
  silent: number,
): Promise<Readonly<Record<'jobs' | 'sheets' | 'photos', readonly unknown[]>> | null> {
  const late = new Promise<null>((resolve) => {
    setTimeout(() => resolve(null), silent);
  });
  const read = async () => {
    const db = await openDB(DATABASE_NAME, undefined, {
      // There was none, and none is made.
      upgrade: (_db, _from, _to, tx) => tx.abort(),
    });
    const all = async (store: string): Promise<readonly unknown[]> =>
      db.objectStoreNames.contains(store) ? await db.getAll(store) : [];
    try {
      return {
        jobs: await all('jobs'),
        sheets: await all('sheets'),
        photos: await all('photos'),
      };
    } finally {
      db.close();
    }
  };
  return await Promise.race([late, read().catch(() => null)]);
}
