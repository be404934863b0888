import { type Bin, isOver, newestRemoved, type Removed } from './bin.ts';
import type { NotebookDatabase } from './database.ts';
import { NotebookError } from './notebook-error.ts';
import type { Notice } from './notices.ts';
import type { Photo } from './photo.ts';
import { removePhotos } from './photos.ts';
import type { SecondCopy } from './second-copy.ts';
import { wholly } from './transaction.ts';

type Run = <T>(act: (db: NotebookDatabase) => Promise<T>) => Promise<T>;

export class DiskBin implements Bin {
  readonly #run: Run;
  readonly #tell: (notice: Notice) => void;

  readonly #copy: SecondCopy;

  constructor(run: Run, tell: (notice: Notice) => void, copy: SecondCopy) {
    this.#run = run;
    this.#tell = tell;
    this.#copy = copy;
  }

  list = async () => newestRemoved(await this.#run((db) => db.getAll('bin')));

  async putBack(id: string): Promise<string> {
    const back = await this.#copy.inTurn(async () => {
      const put = await this.#run((db) => this.#backFrom(db, id));
      await this.#run((db) => this.#copy.refresh(db));
      return put;
    });
    this.#tell({ id: back.job ?? back.id, what: back.job === undefined ? 'written' : 'photos' });
    return back.id;
  }

  #backFrom(db: NotebookDatabase, id: string): Promise<{ id: string; job: string | undefined }> {
    return wholly(
      db.transaction(['bin', 'jobs', 'sheets', 'photos'], 'readwrite', { durability: 'strict' }),
      async (tx) => {
        const removed = await tx.objectStore('bin').get(id);
        if (!removed) throw new NotebookError('missing');
        const place = tx.objectStore(removed.what);
        // It may have come back by a file since: then both stay.
        const isThere = (await place.getKey(removed.record.id)) !== undefined;
        const record = isThere ? { ...removed.record, id: crypto.randomUUID() } : removed.record;
        await place.put(record as never);
        await tx.objectStore('bin').delete(id);
        return {
          id: record.id,
          job: removed.what === 'photos' ? (record as Photo).job : undefined,
        };
      },
    );
  }

  empty = (): Promise<void> => this.#throwAway(() => true);

  /** What was removed long ago goes for good. */
  sweep = (now: number): Promise<void> => this.#throwAway((one) => isOver(one, now));

  async #throwAway(chosen: (removed: Removed) => boolean): Promise<void> {
    await this.#run((db) =>
      wholly(db.transaction(['bin', 'jobs', 'photos'], 'readwrite'), async (tx) => {
        const gone = (await tx.objectStore('bin').getAll()).filter(chosen);
        for (const { id, what, record } of gone) {
          await tx.objectStore('bin').delete(id);
          const isBack = (await tx.objectStore('jobs').getKey(record.id)) !== undefined;
          // Its photos waited for it.
          if (what === 'jobs' && !isBack) await removePhotos(tx.objectStore('photos'), record.id);
        }
      }),
    );
  }
}
