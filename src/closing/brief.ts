import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Predictor } from '../diagnosis/predictor.ts';
import type { Chosen } from './choose.ts';
import type { Showable } from './faults-shown.ts';
import { apartBy, type Column, isMoving } from './table.ts';
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
  const faults = ladders
    .flatMap(({ ladder, hidden }) => ladder.slice(hidden))
    .map((fault) => {
      const row = {
        apart: apartBy(predictor, healthy, fault, columns),
        moving: isMoving(fault),
      };
      return {
        weight: Math.exp(fault.logPrior),
        shares: columns.map((column) => {
          if (row.apart.get(column)?.alone) return 1;
          const times = chosen.get(column) ?? 0;
          return (
            times * Math.min(wordShare(row, column, 'direct'), wordShare(row, column, 'mirrored'))
          );
        }),
        shown: 0,
      };
    });
  const all = faults.reduce((sum, { weight }) => sum + weight, 0);
  const taken = new Set<number>();
  const shown = () =>
    faults.reduce((sum, one) => sum + (one.shown >= 1 - 1e-9 ? one.weight : 0), 0) / all;
  if (columns.length <= WHOLE) return { columns, share: 1 };
  while (taken.size < columns.length && shown() < ENOUGH_FIRST) {
    let [best, rate] = [-1, 0];
    columns.forEach((column, at) => {
      if (taken.has(at)) return;
      let gain = 0;
      for (const { weight, shares, shown: already } of faults)
        gain += weight * Math.min(1 - already, shares[at] as number);
      if (gain / seconds(column) > rate) [best, rate] = [at, gain / seconds(column)];
    });
    if (best < 0) break;
    taken.add(best);
    for (const one of faults) one.shown = Math.min(1, one.shown + (one.shares[best] as number));
  }
  return { columns: columns.filter((_, at) => taken.has(at)), share: shown() };
}
