import { removedRecord } from './bin.ts';
import type { NotebookDatabase } from './database.ts';
import { NotebookError } from './notebook-error.ts';
import type { Notice } from './notices.ts';
import { MOST_PHOTOS, type Photo, restorePhoto } from './photo.ts';
import { wholly } from './transaction.ts';

/** How many photos there are, and their bytes. */
export interface PhotoSize {
  readonly count: number;
  readonly bytes: number;
}

/** Photos of the jobs on this device. Every failure is a NotebookError. */
export interface Photos {
  /** Of one job, oldest first. What is damaged is left out. */
  of(job: string): Promise<readonly Photo[]>;
  /** Rejects with `photos-full` where the job or the device has as many as are kept. */
  add(photo: Photo): Promise<void>;
  /** Into the bin. */
  remove(id: string): Promise<void>;
  size(): Promise<PhotoSize>;
}

/** Whether one more photo would go beyond what is kept. */
export const isTooMuch = (photo: Photo, ofJob: number, { bytes }: PhotoSize): boolean =>
  ofJob >= MOST_PHOTOS.ofJob || bytes + photo.bytes > MOST_PHOTOS.ofAll;

export const soundPhotos = (raw: readonly unknown[]): readonly Photo[] =>
  raw
    .flatMap((one) => {
      try {
        return [restorePhoto(one)];
      } catch {
        return [];
      }
    })
    .sort((a, b) => (a.at < b.at ? -1 : 1));

type Run = <T>(act: (db: NotebookDatabase) => Promise<T>) => Promise<T>;

export class DiskPhotos implements Photos {
  readonly #run: Run;
  readonly #tell: (notice: Notice) => void;

  constructor(run: Run, tell: (notice: Notice) => void) {
    this.#run = run;
    this.#tell = tell;
  }

  of = async (job: string): Promise<readonly Photo[]> =>
    soundPhotos(await this.#run((db) => db.getAllFromIndex('photos', 'job', job)));

  async add(photo: Photo): Promise<void> {
    await this.#run((db) =>
      wholly(db.transaction('photos', 'readwrite', { durability: 'strict' }), async (tx) => {
        const ofJob = await tx.store.index('job').count(photo.job);
        const size = await sizeOf(tx.store.index('bytes').openKeyCursor());
        if (isTooMuch(photo, ofJob, size)) throw new NotebookError('photos-full');
        await tx.store.put(photo);
      }),
    );
    this.#tell({ id: photo.job, what: 'photos' });
  }

  async remove(id: string): Promise<void> {
    const job = await this.#run((db) =>
      wholly(
        db.transaction(['photos', 'bin'], 'readwrite', { durability: 'strict' }),
        async (tx) => {
          const photo = await tx.objectStore('photos').get(id);
          if (!photo) return null;
          const removed = removedRecord('photos', photo, new Date().toISOString());
          await tx.objectStore('bin').put(removed);
          await tx.objectStore('photos').delete(id);
          return photo.job;
        },
      ),
    );
    if (job !== null) this.#tell({ id: job, what: 'photos' });
  }

  size = (): Promise<PhotoSize> =>
    this.#run((db) => sizeOf(db.transaction('photos').store.index('bytes').openKeyCursor()));
}

interface PhotoStore {
  index(name: 'job'): { getAllKeys(job: string): Promise<readonly string[]> };
  delete(id: string): Promise<void>;
}

/** Removes all photos of a job for good, inside a transaction. */
export async function removePhotos(store: PhotoStore, job: string): Promise<void> {
  for (const id of await store.index('job').getAllKeys(job)) await store.delete(id);
}

interface KeyCursor {
  readonly key: number;
  continue(): Promise<KeyCursor | null>;
}

/** Counts by the keys of the index alone: no photo is read. */
export async function sizeOf(opening: Promise<KeyCursor | null>): Promise<PhotoSize> {
  let [count, bytes] = [0, 0];
  for (let cursor = await opening; cursor; cursor = await cursor.continue()) {
    count += 1;
    bytes += cursor.key;
  }
  return { count, bytes };
}
