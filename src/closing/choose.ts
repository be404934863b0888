import type { Seconds } from '../circuit/units.ts';
import { cover } from './cover.ts';
import { type Showable, timesOf } from './faults-shown.ts';
import type { Column, Row } from './table.ts';
import { Given, Together, wordShare, wordsShow } from './together.ts';

/** Times that the figures chosen so far are put to use for what none shows alone. */
const ROUNDS = 3;

/** How often each chosen reading is taken. */
export type Chosen = ReadonlyMap<Column, number>;

export interface Choice {
  readonly columns: readonly Column[];
  /** Effort of a reading, and of taking it once more without moving anything. */
  readonly seconds: (column: Column) => Seconds;
  readonly again: (column: Column) => Seconds;
  /** Readings that are taken whatever they show. */
  readonly kept: readonly Column[];
}

/** Readings of small effort that show every fault which all readings together show. */
export function choose(
  { figures, words }: Pick<Showable, 'figures' | 'words'>,
  choice: Choice,
  deviations: Float64Array,
): Chosen {
  const given = new Map<Row, readonly Column[]>();
  let chosen: Chosen = new Map(choice.kept.map((column) => [column, 1]));
  for (let round = 0; round < ROUNDS; round += 1) {
    chosen = linearCover(figures, words, given, choice, chosen);
    const together = new Together([...chosen.keys()], deviations);
    const open = figures.filter((row) => !together.shows(row));
    if (open.length === 0) break;
    const base = new Given([...chosen.keys()], deviations);
    for (const row of open) given.set(row, base.columns(row));
    if (open.every((row) => given.get(row)?.length === 0)) break;
  }
  chosen = withAllFor(figures, deviations, chosen);
  return withoutNeedless(figures, words, choice, deviations, chosen);
}

/** How many figures are added at once for what no single further one shows. */
const MORE = [4, 8, 16, 32, Number.POSITIVE_INFINITY];

/** For what no single further reading shows: the figures it shifts most, as many as show it. What of these is needless is dropped afterwards. */
function withAllFor(figures: readonly Row[], deviations: Float64Array, chosen: Chosen): Chosen {
  let now = chosen;
  let together = new Together([...now.keys()], deviations);
  for (const row of figures) {
    if (together.shows(row)) continue;
    const force = (column: Column) =>
      (row.apart.get(column)?.shift ?? 0) ** 2 / (column.figure?.noise ?? 1);
    const strongest = [...row.apart.keys()]
      .filter((column) => column.figure && !now.has(column))
      .sort((x, y) => force(y) - force(x));
    for (const count of MORE) {
      const more = strongest.slice(0, count).map((column) => [column, 1] as const);
      const all = new Map([...now, ...more]);
      together = new Together([...all.keys()], deviations);
      if (!together.shows(row) && count < strongest.length) continue;
      now = all;
      break;
    }
  }
  return now;
}

function linearCover(
  figures: readonly Row[],
  words: readonly Row[],
  given: ReadonlyMap<Row, readonly Column[]>,
  choice: Choice,
  kept: Chosen,
): Chosen {
  // Each time that a reading may be taken is a column of its own.
  const times = choice.columns.flatMap((column, bundle) =>
    Array.from({ length: timesOf(column) }, (_, time) => ({
      column,
      time,
      bundle,
      cost: time === 0 ? choice.seconds(column) : choice.again(column),
      entries: [] as [number, number][],
    })),
  );
  const placed = new Map<Column, typeof times>();
  for (const one of times) placed.set(one.column, [...(placed.get(one.column) ?? []), one]);
  let rows = 0;
  for (const row of figures) {
    for (const [column, one] of row.apart)
      if (one.alone || given.get(row)?.includes(column))
        placed.get(column)?.[0]?.entries.push([rows, 1]);
    rows += 1;
  }
  for (const row of words)
    for (const shares of wordShares(row, choice.columns)) {
      for (const [column, share] of shares)
        for (const { entries } of placed.get(column) ?? []) entries.push([rows, share]);
      rows += 1;
    }
  const taken = times.flatMap(({ column, time }, at) =>
    time < (kept.get(column) ?? 0) ? [at] : [],
  );
  const found = new Map<Column, number>();
  for (const at of cover(times, rows, taken)) {
    const { column } = times[at] as (typeof times)[number];
    found.set(column, (found.get(column) ?? 0) + 1);
  }
  return found;
}

/**
 * What share of a fault's need each reading brings by words. Where words have a sign there are two needs: against the guitar as it
 * is, and against one whose taps all start from the other sign.
 */
export function wordShares(
  row: Row,
  columns: readonly Column[],
): readonly (readonly (readonly [Column, number])[])[] {
  const signed = [...row.apart.values()].some(({ direct }) => direct > 0);
  return (signed ? (['direct', 'mirrored'] as const) : (['direct'] as const)).map((sign) =>
    columns.flatMap((column): (readonly [Column, number])[] => {
      const share = wordShare(row, column, sign);
      return share > 0 ? [[column, Math.min(1, share)]] : [];
    }),
  );
}

/** Drops, dearest first, what the rest makes needless once figures are read together. */
function withoutNeedless(
  figures: readonly Row[],
  words: readonly Row[],
  { seconds, kept }: Choice,
  deviations: Float64Array,
  chosen: Chosen,
): Chosen {
  const shown = (times: Chosen) => {
    const together = new Together([...times.keys()], deviations);
    return {
      byFigures: (row: Row) => together.shows(row),
      byWords: (row: Row) => wordsShow(row, times),
    };
  };
  const { byFigures, byWords } = shown(chosen);
  const [ours, heard] = [figures.filter(byFigures), words.filter(byWords)];
  let left = chosen;
  const dearestFirst = [...chosen.keys()].sort((x, y) => seconds(y) - seconds(x));
  for (const column of dearestFirst) {
    if (kept.includes(column)) continue;
    for (;;) {
      const times = left.get(column) ?? 0;
      if (times === 0) break;
      const without = new Map(left);
      if (times === 1) without.delete(column);
      else without.set(column, times - 1);
      const now = shown(without);
      if (!heard.every(now.byWords) || (times === 1 && !ours.every(now.byFigures))) break;
      left = without;
    }
  }
  return left;
}
