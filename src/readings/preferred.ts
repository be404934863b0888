/**
 * Preferred numbers of IEC 60063, series E24 (5 % parts); every second is E12 (10 %), every fourth E6 (20 %). The standard's table, from
 * memory: 27, 30, 33, 36, 39, 43, 47 and 82 are not the rounded powers of ten.
 */
const E24 = [
  10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91,
];

export type Series = 'E6' | 'E12' | 'E24';
const STEP = { E6: 4, E12: 2, E24: 1 } as const;

/** The numbers of a series between 10 and 100. */
export const seriesOf = (series: Series): readonly number[] =>
  E24.filter((_, at) => at % STEP[series] === 0);

/**
 * The nearest values of a series at or below and at or above a value, nearest by ratio first; the value alone where it is one of them.
 * Resistors are sold in E24, capacitors in E12. Pots are not made in these series and are never offered one.
 */
export function nearestPreferred(value: number, series: Series): readonly number[] {
  const decade = 10 ** Math.floor(Math.log10(value) - 1);
  // One decade more at either end, as 9.9 lies nearer to 10 than to 9.1.
  const all = [0.1, 1, 10].flatMap((factor) =>
    // Twelve figures, so that 4.7 times a power of ten is what was typed.
    seriesOf(series).map((number) => Number((number * factor * decade).toPrecision(12))),
  );
  const exact = all.find((one) => Math.abs(one / value - 1) < 1e-9);
  if (exact !== undefined) return [exact];
  const below = all.filter((one) => one < value).at(-1) as number;
  const above = all.find((one) => one > value) as number;
  return value / below < above / value ? [below, above] : [above, below];
}
