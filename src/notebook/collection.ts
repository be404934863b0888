import { notebookWords } from '../words/en/notebook.ts';
import { restoredDraft, type WiringDraft } from './draft.ts';
import type { Job } from './job.ts';
import { type Photo, photoForFile, photoOfFile } from './photo.ts';
import { restoreJob } from './restore.ts';
import { isSheetFormat, restoreSheet } from './restore-sheet.ts';
import { JobShapeError, shown } from './shape.ts';
import type { Sheet } from './sheet.ts';
import { LONGEST_FILE, oneLine, parsed, type Refused, refused } from './written.ts';

/** Version of the file of a whole notebook. */
const COLLECTION_VERSION = 1;
const COLLECTION = 'lugwise-notebook';

/** All photos that a phone keeps, in base64, are 40 million characters; the rest is for more jobs than a life has. */
export const LONGEST_COLLECTION = 150_000_000;

/** All that a notebook keeps, as it stands: records are not checked, so that damaged ones are carried too. */
export interface Everything {
  readonly jobs: readonly unknown[];
  readonly sheets: readonly unknown[];
  readonly photos: readonly unknown[];
}

/** Practice stays on the phone. */
export const isReal = (raw: unknown): boolean =>
  typeof raw !== 'object' || raw === null || !Object.hasOwn(raw, 'practice');

/** One record of a file that is no good, by name, and why. */
export interface RefusedRecord {
  readonly title: string;
  readonly sentence: string;
}

/** What a file brings, each record checked. */
export interface Brought {
  readonly jobs: readonly Job[];
  readonly sheets: readonly Sheet[];
  readonly photos: readonly Photo[];
  readonly drafts: readonly WiringDraft[];
  readonly refused: readonly RefusedRecord[];
}

/** A whole notebook, or one job with its photos, as the text of a file. `at` is ISO 8601. See docs/job-file.md. */
export const exportCollection = (
  { jobs, sheets, photos, drafts = [] }: Everything & { readonly drafts?: readonly WiringDraft[] },
  at: string,
): string =>
  `${JSON.stringify(
    {
      format: COLLECTION,
      version: COLLECTION_VERSION,
      savedAt: at,
      jobs,
      sheets,
      drafts,
      photos: (photos as readonly Photo[])
        .filter(({ data }) => data instanceof Uint8Array)
        .map(photoForFile),
    },
    null,
    1,
  )}\n`;

/** Reads the text of a file of a job, of a sheet or of a notebook, whichever it is. Never throws. */
export function openFile(text: string): ({ readonly ok: true } & Brought) | Refused {
  const read = parsed(text, LONGEST_COLLECTION);
  if (!read.ok) return read;
  const { raw } = read;
  const { format, version } = (raw ?? {}) as {
    readonly format?: unknown;
    readonly version?: unknown;
  };
  if (format !== COLLECTION && text.length > LONGEST_FILE)
    return refused(notebookWords().theFileIsTooLargeCountCharacters(text.length, LONGEST_FILE));
  if (format === COLLECTION) {
    if (version !== COLLECTION_VERSION)
      return refused(notebookWords().thisReadsVersion(COLLECTION_VERSION, shown(version)));
    return { ok: true, ...broughtBy(raw as Readonly<Record<string, unknown>>) };
  }
  const brought = broughtBy(isSheetFormat(format) ? { sheets: [raw] } : { jobs: [raw] });
  const [wrong] = brought.refused;
  return wrong ? refused(wrong.sentence) : { ok: true, ...brought };
}

/** Each record by itself: one that is no good keeps none of the others out. */
function broughtBy(raw: Readonly<Record<string, unknown>>): Brought {
  const no: RefusedRecord[] = [];
  const all = <T extends { readonly id: string }>(
    key: string,
    restore: (one: unknown) => T,
  ): readonly T[] => {
    const list = Object.hasOwn(raw, key) ? raw[key] : [];
    if (!Array.isArray(list)) {
      no.push({ title: key, sentence: notebookWords().keyExpectedAList(key, shown(list)) });
      return [];
    }
    const taken = new Map<string, T>();
    for (const one of list) {
      try {
        const record = restore(one);
        if (taken.has(record.id))
          throw new JobShapeError('id', notebookWords().twoAreCalled(record.id));
        taken.set(record.id, record);
      } catch (error) {
        no.push({ title: titleOf(one), sentence: sentenceOf(error) });
      }
    }
    return [...taken.values()];
  };
  return {
    jobs: all('jobs', restoreJob),
    sheets: all('sheets', restoreSheet),
    photos: all('photos', photoOfFile),
    drafts: all('drafts', draftOf),
    refused: no,
  };
}

function draftOf(raw: unknown): WiringDraft {
  const draft = restoredDraft(raw);
  if (!draft) throw new JobShapeError('', notebookWords().thisIsNotADrawing);
  return draft;
}

function titleOf(raw: unknown): string {
  const { title, words } = (raw ?? {}) as { readonly title?: unknown; readonly words?: unknown };
  const name = [title, words].find((one) => typeof one === 'string' && one.trim() !== '');
  return oneLine(String(name ?? notebookWords().withoutAName)).slice(0, 80);
}

const sentenceOf = (error: unknown): string =>
  oneLine(
    error instanceof JobShapeError
      ? error.message
      : notebookWords().itCouldNotBeRead(String(error)),
  );
