import { notebookWords } from '../words/en/notebook.ts';
import { atOnce } from './aside.ts';
import type { Brought, RefusedRecord } from './collection.ts';
import type { Job } from './job.ts';
import type { Dated, Kept } from './kept.ts';
import type { Photo } from './photo.ts';
import { isTooMuch, type PhotoSize } from './photos.ts';
import type { Sheet } from './sheet.ts';
import type { RecordKind } from './shelf.ts';
import { jobKind } from './stored-job.ts';
import { sheetKind } from './stored-sheet.ts';

/** What is on this device, as far as a file can touch it. */
export interface Here {
  readonly jobs: ReadonlyMap<string, unknown>;
  readonly sheets: ReadonlyMap<string, unknown>;
  /** Ids of the photos of each job. */
  readonly photos: ReadonlyMap<string, readonly string[]>;
  readonly size: PhotoSize;
}

/** What one record of a file would do. */
export interface Planned {
  readonly what: 'jobs' | 'sheets' | 'photos';
  /** Id of the record in the file. */
  readonly id: string;
  readonly title: string;
  /** `copy`: it cannot be joined with what is here, and comes beside it. */
  readonly does: 'new' | 'nothing' | 'joins' | 'copy' | 'refused';
  /** What would change, each a sentence; of a refused one, why. */
  readonly notes: readonly string[];
  /** What is put on the device; absent where nothing is. */
  readonly put?: Kept;
}

export interface Plan {
  readonly records: readonly Planned[];
  /** Of the file, what could not be read at all. */
  readonly refused: readonly RefusedRecord[];
}

/** What taking a file in would change on this device. */
export function planOf(brought: Brought, here: Here): Plan {
  const jobs = brought.jobs.map((job) => planned(jobKind, job, here.jobs.get(job.id), jobNotes));
  const sheets = brought.sheets.map((sheet) =>
    planned(sheetKind, sheet, here.sheets.get(sheet.id), sheetNotes),
  );
  const put = new Map(jobs.flatMap((one) => (one.put ? [[one.id, one.put.id]] : [])));
  return {
    records: [...jobs, ...sheets, ...photosPlanned(brought.photos, here, put)],
    refused: brought.refused,
  };
}

function planned<Item extends Kept & { readonly title: string; readonly changedAt: string }>(
  kind: RecordKind<Item, Dated>,
  item: Item,
  raw: unknown,
  notesOn: (before: Item, after: Item) => readonly string[],
): Planned {
  const base = { what: kind.store, id: item.id, title: item.title };
  if (raw === undefined) return { ...base, does: 'new', notes: [], put: item };
  try {
    // Without a version that both grew from, nothing counts as taken back.
    const { joined, aside } = kind.joinedWith(raw as Item, undefined, item);
    if (aside !== undefined) return asCopy();
    const before = atOnce(kind.restoring(raw));
    if (sameJson(joined, before)) return { ...base, does: 'nothing', notes: [] };
    const { title } = before;
    return { ...base, title, does: 'joins', notes: notesOn(before, joined), put: joined };
  } catch (error) {
    return { ...base, does: 'refused', notes: [(error as Error).message] };
  }

  function asCopy(): Planned {
    const title = notebookWords().fromAFile(item.title).slice(0, 200);
    return {
      ...base,
      does: 'copy',
      notes: [notebookWords().bothAreKept],
      put: { ...item, id: crypto.randomUUID(), title } as Kept,
    };
  }
}

function jobNotes(before: Job, after: Job): readonly string[] {
  const differ = (key: keyof Job) => !sameJson(before[key], after[key]);
  return [
    ...more('reading', before.readings, after.readings),
    ...more('repair', before.repairs, after.repairs),
    ...more('check', before.checks, after.checks),
    ...(differ('title') ? [notebookWords().itsNameBecomes(after.title)] : []),
    ...(differ('circuit') ? [notebookWords().itsWiringBecomes] : []),
    ...(differ('closedAt')
      ? [after.closedAt ? notebookWords().itIsClosedThen : notebookWords().itIsOpenThen]
      : []),
    ...(differ('guitar') && before.title === after.title
      ? [notebookWords().itIsOnGuitarThen(after.guitar.title)]
      : []),
  ];
}

const sheetNotes = (before: Sheet, after: Sheet): readonly string[] => [
  ...more('reading', before.readings, after.readings),
  ...(before.title === after.title ? [] : [notebookWords().itsNameBecomes(after.title)]),
];

const added = () => {
  const { readingsAreAdded, repairsAreAdded, checksAreAdded } = notebookWords();
  return { reading: readingsAreAdded, repair: repairsAreAdded, check: checksAreAdded };
};

function more(
  what: 'reading' | 'repair' | 'check',
  before: readonly unknown[] = [],
  after: readonly unknown[] = [],
): readonly string[] {
  const count = after.length - before.length;
  return count > 0 ? [added()[what](count)] : [];
}

function photosPlanned(
  photos: readonly Photo[],
  here: Here,
  jobIds: ReadonlyMap<string, string>,
): readonly Planned[] {
  const counts = new Map([...here.photos].map(([job, ids]) => [job, ids.length]));
  const known = new Set([...here.photos.values()].flat());
  let { size } = here;
  return photos.map((photo): Planned => {
    const base = { what: 'photos', id: photo.id, title: photo.words } as const;
    if (known.has(photo.id)) return { ...base, does: 'nothing', notes: [] };
    const job = jobIds.get(photo.job) ?? photo.job;
    if (!jobIds.has(photo.job) && !here.jobs.has(job))
      return { ...base, does: 'refused', notes: [notebookWords().itsJobIsNowhere] };
    const ofJob = counts.get(job) ?? 0;
    if (isTooMuch(photo, ofJob, size))
      return { ...base, does: 'refused', notes: [notebookWords().photosAreFull] };
    counts.set(job, ofJob + 1);
    size = { count: size.count + 1, bytes: size.bytes + photo.bytes };
    return { ...base, does: 'new', notes: [], put: { ...photo, job } as Kept };
  });
}

/** Same fields, in whatever order. */
function sameJson(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  const [one, other] = [a, b] as readonly [Record<string, unknown>, Record<string, unknown>];
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every(
    (key) => JSON.stringify(one[key]) === JSON.stringify(other[key]),
  );
}
