import { isReal } from './collection.ts';
import { storedAnyhow } from './database.ts';
import { type Here, planOf } from './import-plan.ts';
import type { Job } from './job.ts';
import { realAndPractice } from './job-summary.ts';
import { MemoryPhotos } from './memory-photos.ts';
import { MemoryBin, MemoryShelf } from './memory-shelf.ts';
import type { Notebook } from './notebook.ts';
import type { NotebookError } from './notebook-error.ts';
import type { Photo } from './photo.ts';
import type { Sheet } from './sheet.ts';
import { jobKind } from './stored-job.ts';
import { sheetKind } from './stored-sheet.ts';

/** Milliseconds to wait for a database that an older or newer app, or a damaged one, may answer for. */
const SILENT = 3000;

/**
 * Keeps everything in this page alone, where the disk cannot be had, and says so by `trouble`.
 * `reopen` tries the disk again.
 */
export function memoryNotebook(trouble: NotebookError, reopen: () => Promise<Notebook>): Notebook {
  const bin = new MemoryBin();
  const [jobs, sheets] = [new MemoryShelf(jobKind, bin), new MemoryShelf(sheetKind, bin)];
  const photos = new MemoryPhotos(bin);
  const here = async (): Promise<Here> => {
    const ofJobs = new Map<string, string[]>();
    for (const { id, job } of photos.items.values())
      ofJobs.set(job, [...(ofJobs.get(job) ?? []), id]);
    return { jobs: jobs.items, sheets: sheets.items, photos: ofJobs, size: await photos.size() };
  };
  const self: Notebook = {
    place: 'memory',
    trouble,
    list: async () => (await self.withPractice()).jobs,
    withPractice: async () => realAndPractice(await jobs.list()),
    read: (id) => jobs.read(id),
    write: (job) => jobs.write(job),
    remove: (id, how) => jobs.remove(id, how),
    rescue: (id) => jobs.rescue(id),
    sheets,
    photos,
    bin,
    async everything() {
      // What the disk still gives belongs in a file too: this page may not be able to change it.
      const stored = await storedAnyhow(SILENT);
      return {
        jobs: [...(stored?.jobs ?? []), ...jobs.items.values()].filter(isReal),
        sheets: [...(stored?.sheets ?? []), ...sheets.items.values()],
        photos: [...(stored?.photos ?? []), ...photos.items.values()],
      };
    },
    plan: async (brought) => planOf(brought, await here()),
    async takeIn(brought) {
      const plan = planOf(brought, await here());
      for (const { what, put } of plan.records) {
        if (!put) continue;
        if (what === 'jobs') jobs.items.set(put.id, put as Job);
        else if (what === 'sheets') sheets.items.set(put.id, put as Sheet);
        else photos.items.set(put.id, put as Photo);
      }
      return plan;
    },
    unsaved: () => jobs.items.size + sheets.items.size + photos.items.size,
    watch: () => () => {},
    async retry() {
      const next = await reopen();
      if (next.place === 'memory') {
        next.close();
        return self;
      }
      await jobs.moveTo(next);
      await sheets.moveTo(next.sheets);
      for (const photo of photos.items.values()) await next.photos.add(photo);
      return next;
    },
    close: () => {},
  };
  return self;
}
