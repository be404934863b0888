import type { IDBPTransaction } from 'idb';
import { type Brought, type Everything, isReal } from './collection.ts';
import type { NotebookDatabase, NotebookSchema } from './database.ts';
import { type Here, type Plan, planOf } from './import-plan.ts';
import type { Kept } from './kept.ts';
import { type PhotoSize, sizeOf } from './photos.ts';
import { wholly } from './transaction.ts';

type Unsaved = Readonly<Record<'jobs' | 'sheets', readonly Kept[]>>;
const STORES = ['jobs', 'sheets', 'photos'] as const;

/** Everything as it stands at one moment; what could not be stored yet is in it. */
export async function everythingIn(db: NotebookDatabase, unsaved: Unsaved): Promise<Everything> {
  const tx = db.transaction(STORES);
  const [jobs, sheets, photos] = await Promise.all(
    STORES.map((store) => tx.objectStore(store).getAll() as Promise<readonly Kept[]>),
  );
  const withUnsaved = (stored: readonly Kept[], mine: readonly Kept[]) => [
    ...new Map([...stored, ...mine].map((one) => [one.id, one])).values(),
  ];
  return {
    jobs: withUnsaved(jobs!, unsaved.jobs).filter(isReal),
    sheets: withUnsaved(sheets!, unsaved.sheets),
    photos: photos!,
  };
}

export async function planIn(
  db: NotebookDatabase,
  unsaved: Unsaved,
  brought: Brought,
): Promise<Plan> {
  return planOf(brought, await hereIn(db.transaction(STORES), unsaved, brought));
}

/** Looks, plans and writes in one transaction: all of the plan is done, or nothing. */
export async function takeInto(
  db: NotebookDatabase,
  unsaved: Unsaved,
  brought: Brought,
): Promise<Plan> {
  return await wholly(db.transaction(STORES, 'readwrite', { durability: 'strict' }), async (tx) => {
    const plan = planOf(brought, await hereIn(tx, unsaved, brought));
    for (const { what, put } of plan.records) if (put) await tx.objectStore(what).put(put as never);
    return plan;
  });
}

async function hereIn(
  tx: IDBPTransaction<NotebookSchema, typeof STORES, IDBTransactionMode>,
  unsaved: Unsaved,
  brought: Brought,
): Promise<Here> {
  const jobs = new Map<string, unknown>();
  const sheets = new Map<string, unknown>();
  const photos = new Map<string, readonly string[]>();
  const note =
    (into: Map<string, unknown>, mine: readonly Kept[]) => (id: string, raw: unknown) => {
      const kept = mine.find((one) => one.id === id) ?? raw;
      if (kept !== undefined) into.set(id, kept);
    };
  const [noteJob, noteSheet] = [note(jobs, unsaved.jobs), note(sheets, unsaved.sheets)];
  const ofJobs = new Set([
    ...brought.jobs.map(({ id }) => id),
    ...brought.photos.map(({ job }) => job),
  ]);
  for (const id of ofJobs) {
    noteJob(id, await tx.objectStore('jobs').get(id));
    photos.set(id, await tx.objectStore('photos').index('job').getAllKeys(id));
  }
  for (const { id } of brought.sheets) noteSheet(id, await tx.objectStore('sheets').get(id));
  const size: PhotoSize = await sizeOf(tx.objectStore('photos').index('bytes').openKeyCursor());
  return { jobs, sheets, photos, size };
}
