import { solve } from 'yalps';
import { ALARM, POWER } from './apart.ts';
import { wordShares } from './choose.ts';
import type { Showable } from './faults-shown.ts';
import type { Column, Row } from './table.ts';

/** A need, as the most that each column could bring to it. */
type Need = ReadonlyMap<number, number>;

/**
 * Readings below which no plan shows all of `showable`: the least sum of a linear programme in which each reading brings the most it
 * ever could, rounded up. By figures that is all where it shows a fault alone, otherwise shift^2 / noise of the (4 + 2.33)^2 that a
 * figure given all others must reach, as if every part's value were known: the joint separation of any readings is at least that
 * of one given the others, and at most the sum of shift^2 / noise, since their covariance is at least their noise. Words add up as they are.
 * @param kept readings that every plan has
 */
export function lowerBound(
  { figures, words }: Pick<Showable, 'figures' | 'words'>,
  columns: readonly Column[],
  kept: readonly Column[],
): number {
  const numbers = new Map(columns.map((column, at) => [column, at]));
  const numbered = (shares: Iterable<readonly [Column, number]>): Need =>
    new Map([...shares].map(([column, share]) => [numbers.get(column) as number, share]));
  const signs = columns.filter(({ turned }) => turned > 0);
  return fewest(
    [
      ...figures.map((row) => numbered(mostByFigures(row))),
      ...words.flatMap((row) => wordShares(row, signs).map(numbered)),
    ],
    columns.length,
    kept.map((column) => numbers.get(column) as number),
  );
}

/** The least count of columns, each taken as often as one likes, of which the shares of every need add up to 1: the bound of the linear programme. */
export function fewest(all: readonly Need[], columns: number, kept: readonly number[]): number {
  const needs = hardest(all);
  const variables = Array.from(
    { length: columns },
    (_, at): Record<string, number> => ({
      count: 1,
      ...(kept.includes(at) ? { [`kept ${at}`]: 1 } : {}),
    }),
  );
  const constraints: Record<string, { min: number }> = {};
  needs.forEach((need, row) => {
    constraints[`need ${row}`] = { min: 1 };
    for (const [at, share] of need)
      (variables[at] as Record<string, number>)[`need ${row}`] = share;
  });
  for (const at of kept) constraints[`kept ${at}`] = { min: 1 };
  const { status, result } = solve({
    direction: 'minimize',
    objective: 'count',
    constraints,
    variables: Object.fromEntries(variables.map((one, at) => [`${at}`, one])),
  });
  // Without an optimum only the counting bound is left: what is kept.
  return status === 'optimal' ? Math.ceil(result - 1e-6) : kept.length;
}

function mostByFigures(row: Row): ReadonlyMap<Column, number> {
  const need = new Map<Column, number>();
  for (const [column, one] of row.apart) {
    const most = one.alone
      ? 1
      : column.figure
        ? Math.min(1, one.shift ** 2 / column.figure.noise / (ALARM + POWER) ** 2)
        : 0;
    if (most > 0) need.set(column, most);
  }
  return need;
}

/** Leaves out a need that is met wherever another one is: of two, the one to which each reading brings no less. */
function hardest(needs: readonly Need[]): readonly Need[] {
  const sorted = [...needs].sort((x, y) => x.size - y.size);
  const left: Need[] = [];
  for (const need of sorted)
    if (
      !left.some((other) => [...other].every(([column, share]) => (need.get(column) ?? 0) >= share))
    )
      left.push(need);
  return left;
}
