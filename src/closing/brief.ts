import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import type { Chosen } from './choose.ts';
import type { Showable } from './faults-shown.ts';
import { apartBy, byFigures, type Column, isMoving } from './table.ts';
import { wordShare } from './together.ts';

/** The readings of a list that show most of what goes wrong, to be taken first. */
export interface Brief {
  readonly columns: readonly Column[];
  /** Share of what goes wrong, weighed by how often it does, that they show. */
  readonly share: number;
}

/** Where the first readings of a list stop, of what all of it shows. */
const ENOUGH_FIRST = 0.8;
/** A list with no more readings than this is not parted. */
const WHOLE = 12;

/**
 * Faults are far from alike: a few readings at the jack show most of what goes wrong, and most readings show joints that seldom fail.
 * Greedily the most share of faults for the effort; that is within 1 - 1/e of the best (Nemhauser, Wolsey and Fisher 1978, from memory).
 */
export function briefOf(
  predictor: Predictor,
  healthy: Hypothesis,
  { ladders }: Pick<Showable, 'ladders'>,
  chosen: Chosen,
  seconds: (column: Column) => number,
): Brief {
  const columns = [...chosen.keys()];
  if (columns.length <= WHOLE) return { columns, share: 1 };
  const faults = ladders
    .flatMap(({ ladder, hidden }) => ladder.slice(hidden))
    .map((fault) => ({
      weight: Math.exp(fault.logPrior),
      shareOf: sharesOf(fault),
      shown: 0,
    }))
    .sort((x, y) => y.weight - x.weight);
  const all = faults.reduce((sum, { weight }) => sum + weight, 0);
  const taken = new Set<number>();
  const shown = () =>
    faults.reduce((sum, one) => sum + (one.shown >= 1 - 1e-9 ? one.weight : 0), 0) / all;
  // Words last: how a guitar sounds takes long to work out, and mostly the best figure brings more than any word could.
  const cheapFirst = columns
    .map((column, at) => ({ column, at }))
    .sort((x, y) => Number(byFigures(y.column)) - Number(byFigures(x.column)));
  while (taken.size < columns.length && shown() < ENOUGH_FIRST) {
    /** What faults from each one on could still bring. */
    const rest = new Float64Array(faults.length + 1);
    for (let one = faults.length - 1; one >= 0; one -= 1) {
      const { weight, shown: already } = faults[one] as (typeof faults)[number];
      rest[one] = (rest[one + 1] as number) + weight * (1 - already);
    }
    let [best, rate] = [-1, 0];
    for (const { column, at } of cheapFirst) {
      if (taken.has(at)) continue;
      const now = gainOf(at, rest, rate * seconds(column)) / seconds(column);
      if (now > rate || (now === rate && now > 0 && at < best)) [best, rate] = [at, now];
    }
    if (best < 0) break;
    taken.add(best);
    for (const one of faults) one.shown = Math.min(1, one.shown + one.shareOf(best));
  }
  return { columns: columns.filter((_, at) => taken.has(at)), share: shown() };

  /** Weighed share of faults that a reading newly shows; less than that where it cannot reach `least`. */
  function gainOf(at: number, rest: Float64Array, least: number): number {
    let gain = 0;
    for (let one = 0; one < faults.length; one += 1) {
      if (gain + (rest[one] as number) < least) return gain;
      const { weight, shareOf, shown: already } = faults[one] as (typeof faults)[number];
      if (already < 1) gain += weight * Math.min(1 - already, shareOf(at));
    }
    return gain;
  }

  /** What share of one fault's need each reading brings, worked out when it is first asked for. */
  function sharesOf(fault: Hypothesis): (at: number) => number {
    const known = new Float64Array(columns.length).fill(Number.NaN);
    const moving = isMoving(fault);
    return (at) => {
      const share = known[at] as number;
      if (!Number.isNaN(share)) return share;
      const column = columns[at] as Column;
      const row = { apart: apartBy(predictor, healthy, fault, [column]), moving };
      const bring = Math.min(wordShare(row, column, 'direct'), wordShare(row, column, 'mirrored'));
      known[at] = row.apart.get(column)?.alone ? 1 : (chosen.get(column) ?? 0) * bring;
      return known[at];
    };
  }
}
