import type { Brought } from './collection.ts';
import { type NotebookDatabase, openDatabase, type Patience } from './database.ts';
import { DiskBin } from './disk-bin.ts';
import { everythingIn, planIn, takeInto } from './disk-transfer.ts';
import type { Plan } from './import-plan.ts';
import { realAndPractice } from './job-summary.ts';
import { memoryNotebook } from './memory.ts';
import type { Notebook } from './notebook.ts';
import { NotebookError, notebookErrorOf } from './notebook-error.ts';
import { openNotices } from './notices.ts';
import { DiskPhotos } from './photos.ts';
import { SecondCopy } from './second-copy.ts';
import { DiskShelf } from './shelf.ts';
import { jobKind } from './stored-job.ts';
import { sheetKind } from './stored-sheet.ts';

const PATIENCE: Patience = { blocked: 3000, silent: 8000 };

/**
 * Opens the notebook of this device. Never rejects: where the disk cannot be had the notebook keeps
 * everything in memory, and its `trouble` says why and what to do.
 */
export async function openNotebook(patience: Patience = PATIENCE): Promise<Notebook> {
  const disk = new DiskNotebook(patience);
  try {
    await disk.connect();
    // What stays longer than it should does no harm.
    disk.bin.sweep(Date.now()).catch(() => {});
    return disk;
  } catch (error) {
    disk.close();
    return memoryNotebook(notebookErrorOf(error), () => openNotebook(patience));
  }
}

class DiskNotebook implements Notebook {
  readonly place = 'disk';
  readonly trouble = null;
  readonly #patience: Patience;
  readonly #notices = openNotices();
  readonly #copy = new SecondCopy();
  /** One opening for all who wait for it. */
  #database: Promise<NotebookDatabase> | undefined;
  #superseded = false;
  readonly #jobs;
  readonly sheets;
  readonly photos;
  readonly bin;

  constructor(patience: Patience) {
    this.#patience = patience;
    const run = <T>(act: (db: NotebookDatabase) => Promise<T>) => this.#run(act);
    this.#jobs = new DiskShelf(jobKind, run, this.#notices.tell, this.#copy);
    this.sheets = new DiskShelf(sheetKind, run, this.#notices.tell, this.#copy);
    this.photos = new DiskPhotos(run, this.#notices.tell);
    this.bin = new DiskBin(run, this.#notices.tell, this.#copy);
  }

  connect(): Promise<NotebookDatabase> {
    if (this.#superseded) return Promise.reject(new NotebookError('newer-version'));
    this.#database ??= this.#open();
    return this.#database;
  }

  async #open(): Promise<NotebookDatabase> {
    try {
      const db = await openDatabase((reason) => {
        this.#database = undefined;
        this.#superseded ||= reason === 'superseded';
      }, this.#patience);
      await this.#copy.fill(db);
      return db;
    } catch (error) {
      this.#database = undefined;
      throw error;
    }
  }

  withPractice = async () => realAndPractice(await this.#jobs.list());
  list = async () => (await this.withPractice()).jobs;
  read = (id: string) => this.#jobs.read(id);
  write: Notebook['write'] = (job) => this.#jobs.write(job);
  remove = (id: string, how?: 'forever') => this.#jobs.remove(id, how);
  rescue = (id: string) => this.#jobs.rescue(id);

  #unsaved = () => ({ jobs: this.#jobs.unsaved(), sheets: this.sheets.unsaved() });
  async everything() {
    await this.#settled();
    return await this.#run((db) => everythingIn(db, this.#unsaved()));
  }

  async plan(brought: Brought): Promise<Plan> {
    await this.#settled();
    return await this.#run((db) => planIn(db, this.#unsaved(), brought));
  }

  #settled = () => Promise.all([this.#jobs.settled(), this.sheets.settled()]);

  async takeIn(brought: Brought): Promise<Plan> {
    const plan = await this.#copy.inTurn(async () => {
      const done = await this.#run((db) => takeInto(db, this.#unsaved(), brought));
      await this.#run((db) => this.#copy.refresh(db));
      return done;
    });
    const put = plan.records.flatMap((one) => (one.put ? [one.put.id] : []));
    this.#jobs.forget(put);
    this.sheets.forget(put);
    for (const id of put) this.#notices.tell({ id, what: 'written' });
    return plan;
  }

  unsaved = (): number => this.#jobs.unsaved().length + this.sheets.unsaved().length;

  watch(listener: Parameters<Notebook['watch']>[0]): () => void {
    return this.#notices.watch(listener);
  }

  async retry(): Promise<Notebook> {
    await this.#jobs.retry();
    await this.sheets.retry();
    return this;
  }

  close(): void {
    this.#database?.then((db) => db.close()).catch(() => {});
    this.#database = undefined;
    this.#notices.close();
  }

  /** Runs `act` on the database, once more on a new connection if the browser had closed the old one. */
  async #run<T>(act: (db: NotebookDatabase) => Promise<T>): Promise<T> {
    try {
      const db = await this.connect();
      try {
        return await act(db);
      } catch (error) {
        if ((error as Error | null)?.name !== 'InvalidStateError') throw error;
        this.#database = undefined;
        return await act(await this.connect());
      }
    } catch (error) {
      throw notebookErrorOf(error);
    }
  }
}
