import { cholesky, forward } from '../diagnosis/gauss.ts';
import { ALARM, type Apart, ENOUGH, MISSED, POWER } from './apart.ts';
import type { Figure } from './figure.ts';
import { covariance, crossing, Shared } from './shared.ts';
import type { Column, Row } from './table.ts';

/** Whether a figure is beyond the alarm with 99 % chance, given what foretells it. */
const passes = (shift: number, deviation: number, own: number): boolean =>
  Math.abs(shift) >= ALARM * deviation + POWER * Math.hypot(deviation, own);

/** Whether these readings show a row's fault by figures: one of them alone, or given all the others. */
export class Together {
  private readonly columns: readonly Column[];
  private readonly read: readonly Column[];
  private shared: Shared | undefined;
  private readonly deviations: Float64Array;

  constructor(columns: readonly Column[], deviations: Float64Array) {
    this.columns = columns;
    this.read = columns.filter(({ figure }) => figure);
    this.deviations = deviations;
  }

  shows({ apart }: Pick<Row, 'apart'>): boolean {
    if (this.columns.some((column) => apart.get(column)?.alone)) return true;
    if (!this.read.some((column) => (apart.get(column)?.shift ?? 0) !== 0)) return false;
    this.shared ??= new Shared(
      this.read.map(({ figure }) => figure as Figure),
      this.deviations,
    );
    return this.shared
      .givenOthers(this.read.map((column) => apart.get(column)?.shift ?? 0))
      .some(({ shift, deviation }, at) =>
        passes(shift, deviation, apart.get(this.read[at] as Column)?.ownDeviation ?? 0),
      );
  }
}

/** For each column what the figures of `base` leave of its shift: which column would show which row once they are known. */
export class Given {
  private readonly base: readonly Column[];
  private readonly l: Float64Array | null;
  private readonly deviations: Float64Array;
  private readonly known = new Map<
    Column,
    { readonly gain: Float64Array; readonly left: number }
  >();

  constructor(base: readonly Column[], deviations: Float64Array) {
    this.base = base.filter(({ figure }) => figure);
    this.deviations = deviations;
    this.l = cholesky(
      covariance(
        this.base.map(({ figure }) => figure as Figure),
        deviations,
      ),
      this.base.length,
    );
  }

  /** Columns with a figure that would show the row's fault. */
  columns({ apart }: Row): readonly Column[] {
    const { l } = this;
    if (!l) return [];
    const n = this.base.length;
    const white = forward(
      l,
      n,
      Float64Array.from(this.base, (column) => apart.get(column)?.shift ?? 0),
    );
    const found: Column[] = [];
    for (const [column, one] of apart) {
      if (!column.figure || one.shift === 0 || this.base.includes(column)) continue;
      const { gain, left } = this.of(column, column.figure, l);
      let shift = one.shift;
      for (let at = 0; at < n; at += 1) shift -= (gain[at] as number) * (white[at] as number);
      if (passes(shift, Math.sqrt(left), one.ownDeviation)) found.push(column);
    }
    return found;
  }

  private of(column: Column, figure: Figure, l: Float64Array) {
    const known = this.known.get(column);
    if (known) return known;
    const n = this.base.length;
    const cross = Float64Array.from(this.base, (other) =>
      crossing(other.figure as Figure, figure, this.deviations),
    );
    const gain = forward(l, n, cross);
    const left = gain.reduce((sum, x) => sum - x * x, figure.variance);
    const made = { gain, left: Math.max(left, figure.noise) };
    this.known.set(column, made);
    return made;
  }
}

/** What of a fault's need one reading brings by words, 1 being all. `sign`: how the taps start. */
export function wordShare(
  { apart, moving }: Pick<Row, 'apart' | 'moving'>,
  column: Column,
  sign: 'direct' | 'mirrored',
): number {
  const one: Apart | undefined = apart.get(column);
  if (moving) return one ? one.odd / -Math.log(MISSED) : 0;
  const signed = one ? one[sign] : sign === 'mirrored' ? column.turned : 0;
  return ((one?.words ?? 0) + signed) / ENOUGH;
}

/** Whether words show a row's fault, each column read so often. The sign the taps start from is free: the lesser sum counts. */
export const wordsShow = (
  row: Pick<Row, 'apart' | 'moving'>,
  times: ReadonlyMap<Column, number>,
): boolean =>
  (['direct', 'mirrored'] as const).every((sign) => {
    let sum = 0;
    for (const [column, count] of times) sum += count * wordShare(row, column, sign);
    return sum >= 1 - 1e-9;
  });
