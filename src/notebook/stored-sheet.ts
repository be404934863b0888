import type { Rests } from '../diagnosis/rests.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { distinctIds, joined, picker, readingKey, refusalsOf } from './merge.ts';
import { NotebookError, notebookErrorOf } from './notebook-error.ts';
import { isSheetFormat, restoreSheet } from './restore-sheet.ts';
import type { PickupSheet, Sheet, SheetSummary, TogetherSheet } from './sheet.ts';
import { SHEET_VERSION, sheetSummary } from './sheet.ts';
import type { RecordKind } from './shelf.ts';

/** Sheets as the notebook keeps them. */
export const sheetKind: RecordKind<Sheet, SheetSummary> = {
  store: 'sheets',
  restoring,
  summarising,
  joinedWith(raw, base, mine) {
    if (raw === undefined) return { joined: mine };
    if (raw.version > mine.version) throw new NotebookError('newer-version');
    const aside = {
      ...raw,
      id: crypto.randomUUID(),
      title: notebookWords().rawSetAside(raw.title),
    };
    if (!isReadable(raw)) return { joined: mine, aside };
    const merged = mergeSheets(base, mine, raw);
    if (JSON.stringify(merged) === JSON.stringify(mine)) return { joined: mine };
    if (merged && isReadable(merged)) return { joined: structuredClone(merged) };
    return { joined: mine, aside };
  },
  mark: (sheet) => (sheet.format === 'lugwise-pickup' ? sheet.seen : sheet.pickups),
};

/** Joins what two tabs did to one sheet since `base`, as `mergeJobs` does. Null where they are of different formats. */
function mergeSheets(base: Sheet | undefined, mine: Sheet, theirs: Sheet): Sheet | null {
  if (mine.format === 'lugwise-pickup' && theirs.format === mine.format) {
    const old = base?.format === mine.format ? base : undefined;
    const refusals = joined(
      old && refusalsOf(old),
      refusalsOf(mine),
      refusalsOf(theirs),
      JSON.stringify,
    );
    return {
      ...fieldsOf<PickupSheet>(old, mine, theirs),
      readings: distinctIds(joined(old?.readings, mine.readings, theirs.readings, readingKey)),
      refused: refusals.map(({ ask }) => ask),
      refusedAt: refusals.map(({ at }) => at),
    };
  }
  if (mine.format === 'lugwise-together' && theirs.format === mine.format) {
    const old = base?.format === mine.format ? base : undefined;
    return {
      ...fieldsOf<TogetherSheet>(old, mine, theirs),
      readings: distinctIds(
        joined(old?.readings, mine.readings, theirs.readings, ({ id: _, ...rest }) =>
          JSON.stringify(rest),
        ),
      ),
    };
  }
  return null;
}

/** Each field by itself, in the order of the caller's sheet. */
function fieldsOf<T extends Sheet>(base: T | undefined, mine: T, theirs: T): T {
  const pick = picker<T>(base, mine, theirs);
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])] as (keyof T)[];
  const fields = keys.map((key) => [key, pick(key)] as const);
  const [changedAt] = [mine.changedAt, theirs.changedAt].sort().reverse() as [string];
  return {
    ...(Object.fromEntries(fields.filter(([, value]) => value !== undefined)) as unknown as T),
    changedAt,
  };
}

function isReadable(raw: unknown): boolean {
  try {
    restoreSheet(raw);
    return true;
  } catch {
    return false;
  }
}

/** Small enough for one piece. */
// biome-ignore lint/correctness/useYield: of one shape with the jobs' own, which rests.
function* restoring(raw: unknown): Rests<Sheet> {
  try {
    return restoreSheet(raw);
  } catch (error) {
    const { version } = (raw ?? {}) as { readonly version?: unknown };
    const newer = typeof version === 'number' && version > SHEET_VERSION;
    throw new NotebookError(newer ? 'newer-version' : 'damaged', (error as Error).message, error);
  }
}

function* summarising(raw: unknown): Rests<SheetSummary> {
  try {
    return sheetSummary(yield* restoring(raw));
  } catch (error) {
    const left = raw as Partial<Record<keyof SheetSummary, unknown>>;
    const word = (value: unknown) => (typeof value === 'string' ? value : '');
    return {
      id: String(left.id),
      format: isSheetFormat(left.format) ? left.format : 'lugwise-pickup',
      title: word(left.title),
      createdAt: word(left.createdAt),
      changedAt: word(left.changedAt),
      readings: 0,
      damaged: notebookErrorOf(error).sentence,
    };
  }
}
