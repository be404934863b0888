import type { Seconds } from '../circuit/units.ts';
import { cover } from './cover.ts';
import { type Showable, timesOf } from './faults-shown.ts';
import type { Column, Row } from './table.ts';
import { enough, Given, SIGNS, Together, wordShare, wordSums, wordsShow } from './together.ts';

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

/** A choice, and the faults that it leaves: those that only too many figures together would show. */
export interface Choosing {
  readonly chosen: Chosen;
  readonly beyond: readonly Row[];
}

/** Readings of small effort that show every fault which all readings together show, but for what takes too many. */
export function choose(
  { figures, words }: Pick<Showable, 'figures' | 'words'>,
  choice: Choice,
  deviations: Float64Array,
): Choosing {
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
  chosen = withSomeFor(figures, deviations, chosen);
  const all = new Together([...chosen.keys()], deviations);
  return {
    chosen: withoutNeedless(figures, words, choice, deviations, chosen),
    beyond: figures.filter((row) => !all.shows(row)),
  };
}

/**
 * How many figures may be added for what no single further one shows. A hundred would show a smaller leak, each by a little of its own
 * noise: nobody takes ten minutes for the last size of one fault, so that size is not claimed.
 */
const MORE = [2, 4, 8];

/** For what no single further reading shows: the figures it shifts most, as few as show it. What of these is needless is dropped afterwards. */
function withSomeFor(figures: readonly Row[], deviations: Float64Array, chosen: Chosen): Chosen {
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
      const tried = new Together([...all.keys()], deviations);
      if (!tried.shows(row)) continue;
      [now, together] = [all, tried];
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
  const signs = choice.columns.filter(({ turned }) => turned > 0);
  let rows = 0;
  for (const row of figures) {
    for (const [column, one] of row.apart)
      if (one.alone || given.get(row)?.includes(column))
        placed.get(column)?.[0]?.entries.push([rows, 1]);
    rows += 1;
  }
  for (const row of words)
    for (const shares of wordShares(row, signs)) {
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
 * @param signs columns whose words have a sign: these speak against the other sign even where the fault changes nothing
 */
export function wordShares(
  row: Row,
  signs: readonly Column[],
): readonly (readonly (readonly [Column, number])[])[] {
  const signed = [...row.apart.values()].some(({ direct }) => direct > 0);
  const sharesOf = (columns: Iterable<Column>, sign: 'direct' | 'mirrored') =>
    [...columns].flatMap((column): (readonly [Column, number])[] => {
      const share = wordShare(row, column, sign);
      return share > 0 ? [[column, Math.min(1, share)]] : [];
    });
  const direct = sharesOf(row.apart.keys(), 'direct');
  if (!signed) return [direct];
  return [direct, sharesOf(new Set([...row.apart.keys(), ...signs]), 'mirrored')];
}

/** Drops, dearest first, what the rest makes needless once figures are read together. */
function withoutNeedless(
  figures: readonly Row[],
  words: readonly Row[],
  { seconds, kept }: Choice,
  deviations: Float64Array,
  chosen: Chosen,
): Chosen {
  const all = new Together([...chosen.keys()], deviations);
  // How many columns show each row alone: only what none does is looked at jointly.
  const ours = figures
    .filter((row) => all.shows(row))
    .map((row) => ({
      row,
      alone: [...row.apart].filter(([column, one]) => one.alone && chosen.has(column)).length,
    }));
  const heard = words
    .filter((row) => wordsShow(row, chosen))
    .map((row) => ({ row, sums: wordSums(row, chosen) }));
  const left = new Map(chosen);
  const isAlone = (row: Row, column: Column) => row.apart.get(column)?.alone ?? false;
  const dearestFirst = [...chosen.keys()].sort((x, y) => seconds(y) - seconds(x));
  for (const column of dearestFirst) {
    if (kept.includes(column)) continue;
    while (left.has(column) && needless(column)) drop(column);
  }
  return left;

  function needless(column: Column): boolean {
    const silent = heard.every(({ row, sums }) =>
      SIGNS.every((sign, at) => enough((sums[at] as number) - wordShare(row, column, sign))),
    );
    if (!silent || (left.get(column) as number) > 1) return silent;
    const open = ours.filter(({ row, alone }) => alone - (isAlone(row, column) ? 1 : 0) === 0);
    if (open.length === 0) return true;
    const rest = new Together(
      [...left.keys()].filter((one) => one !== column),
      deviations,
    );
    return open.every(({ row }) => rest.shows(row));
  }

  function drop(column: Column): void {
    const times = left.get(column) as number;
    if (times > 1) left.set(column, times - 1);
    else {
      left.delete(column);
      for (const one of ours) if (isAlone(one.row, column)) one.alone -= 1;
    }
    for (const { row, sums } of heard)
      SIGNS.forEach((sign, at) => {
        sums[at] = (sums[at] as number) - wordShare(row, column, sign);
      });
  }
}
