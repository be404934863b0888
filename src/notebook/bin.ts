import type { Kept } from './kept.ts';

/** Something that was removed, whole, so that it can be put back. */
export interface Removed {
  readonly id: string;
  readonly what: 'jobs' | 'sheets' | 'photos';
  readonly title: string;
  /** ISO 8601. */
  readonly removedAt: string;
  readonly record: Kept;
}

/** What was removed on this device in the last days. */
export interface Bin {
  /** Newest first, without the records themselves. */
  list(): Promise<readonly Omit<Removed, 'record'>[]>;
  /** Puts one back where it was; gives its id there. */
  putBack(id: string): Promise<string>;
  /** For good. */
  empty(): Promise<void>;
}

/** So long can what was removed be put back. */
export const DAYS_IN_BIN = 30;

export const isOver = ({ removedAt }: Pick<Removed, 'removedAt'>, now: number): boolean =>
  now - Date.parse(removedAt) > DAYS_IN_BIN * 86_400_000;

export function removedRecord(what: Removed['what'], record: Kept, at: string): Removed {
  const { title, words } = record as { readonly title?: unknown; readonly words?: unknown };
  const name = [title, words].find((one) => typeof one === 'string' && one !== '');
  return { id: crypto.randomUUID(), what, title: String(name ?? ''), removedAt: at, record };
}

export const newestRemoved = (all: readonly Removed[]): readonly Omit<Removed, 'record'>[] =>
  [...all]
    .sort((a, b) => (a.removedAt < b.removedAt ? 1 : -1))
    .map(({ record: _, ...rest }) => rest);
