import { ALARM, type Apart, ENOUGH, MISSED, POWER } from './apart.ts';
import type { Figure } from './figure.ts';
import { dot, Joint, Shared } from './shared.ts';
import type { Column, Row } from './table.ts';

/** Whether a figure is beyond the alarm with 99 % chance, given what foretells it. */
const passes = (shift: number, deviation: number, own: number): boolean =>
  Math.abs(shift) >= ALARM * deviation + POWER * Math.hypot(deviation, own);

/** Whether these readings show a row's fault by figures: one of them alone, or given all the others. */
export class Together {
  private readonly columns: readonly Column[];
  private readonly read: readonly Column[];
  private joint: Joint | undefined;
  private readonly deviations: Float64Array;

  constructor(columns: readonly Column[], deviations: Float64Array) {
    this.columns = columns;
    this.read = columns.filter(({ figure }) => figure);
    this.deviations = deviations;
  }

  shows({ apart }: Pick<Row, 'apart'>): boolean {
    if (this.columns.some((column) => apart.get(column)?.alone)) return true;
    if (!this.read.some((column) => (apart.get(column)?.shift ?? 0) !== 0)) return false;
    this.joint ??= new Joint(
      this.read.map(({ figure }) => figure as Figure),
      this.deviations,
    );
    return this.joint
      .givenOthers(this.read.map((column) => apart.get(column)?.shift ?? 0))
      .some(({ shift, deviation }, at) =>
        passes(shift, deviation, apart.get(this.read[at] as Column)?.ownDeviation ?? 0),
      );
  }
}

/** For each column what the figures of `base` leave of its shift: which column would show which row once they are known. */
export class Given {
  private readonly base: readonly Column[];
  private readonly figures: readonly Figure[];
  private readonly shared: Shared;
  private readonly known = new Map<
    Column,
    { readonly t: Float64Array; readonly deviation: number }
  >();

  constructor(base: readonly Column[], deviations: Float64Array) {
    this.base = base.filter(({ figure }) => figure);
    this.figures = this.base.map(({ figure }) => figure as Figure);
    this.shared = Shared.of(this.figures, deviations);
  }

  /** Columns with a figure that would show the row's fault. */
  columns({ apart }: Pick<Row, 'apart'>): readonly Column[] {
    const u = this.shared.leaning(
      this.figures,
      this.base.map((column) => apart.get(column)?.shift ?? 0),
    );
    const found: Column[] = [];
    for (const [column, one] of apart) {
      if (!column.figure || one.shift === 0 || this.base.includes(column)) continue;
      const { t, deviation } = this.of(column, column.figure);
      if (passes(one.shift - dot(t, u), deviation, one.ownDeviation)) found.push(column);
    }
    return found;
  }

  private of(column: Column, figure: Figure) {
    const known = this.known.get(column);
    if (known) return known;
    const made = {
      t: this.shared.tOf(figure),
      deviation: this.shared.foretell(figure).deviation,
    };
    this.known.set(column, made);
    return made;
  }
}

/** What of a fault's need one reading brings by words, 1 being all. `sign`: how the taps start. */
export function wordShare(
  { apart, moving }: Pick<Row, 'apart' | 'moving'>,
  column: Column,
  sign: (typeof SIGNS)[number],
): number {
  const one: Apart | undefined = apart.get(column);
  if (moving) return one ? one.odd / -Math.log(MISSED) : 0;
  const signed = one ? one[sign] : sign === 'mirrored' ? column.turned : 0;
  return ((one?.words ?? 0) + signed) / ENOUGH;
}

/** How the taps of a guitar may start. */
export const SIGNS = ['direct', 'mirrored'] as const;

/** What all words bring to a row's need, for either sign, each column read so often. */
export const wordSums = (
  row: Pick<Row, 'apart' | 'moving'>,
  times: ReadonlyMap<Column, number>,
): number[] =>
  SIGNS.map((sign) => {
    let sum = 0;
    for (const [column, count] of times) sum += count * wordShare(row, column, sign);
    return sum;
  });

export const enough = (sum: number): boolean => sum >= 1 - 1e-9;

/** Whether words show a row's fault, each column read so often. The sign the taps start from is free: the lesser sum counts. */
export const wordsShow = (
  row: Pick<Row, 'apart' | 'moving'>,
  times: ReadonlyMap<Column, number>,
): boolean => wordSums(row, times).every(enough);
