import type { Prediction } from '../readings/prediction.ts';
import type { Meter } from '../readings/reading.ts';
import { type Figure, figureOf } from './figure.ts';

/** Deviations at which a reading counts as off. */
export const ALARM = 4;
/** A fault is claimed where a reading is beyond `ALARM` with 99 % chance: 2.33 deviations of the faulty guitar further off (normal quantile). */
export const POWER = 2.33;
/** Squared separation that the words of a plan must add up to. */
export const ENOUGH = ALARM ** 2;
/** A word is odd where a healthy guitar brings it less than one time in ten. */
export const SELDOM = 0.1;
/** Chance that what comes and goes with a movement is never seen in all the movements of a plan. */
export const MISSED = 0.01;

/** How far one reading sets a faulty guitar apart from the healthy one. */
export interface Apart {
  /** Another kind of answer: over-range in place of a figure, or the other way round. */
  readonly decisive: boolean;
  /** Shift of the figure's mean, and the deviation that the size of the fault itself adds. */
  readonly shift: number;
  readonly ownDeviation: number;
  /** Whether the figure alone, whatever else is read, is beyond the alarm with 99 % chance. */
  readonly alone: boolean;
  /** Squared separation by words: of those without a sign, and of the taps if the guitar starts from the same or the other sign. */
  readonly words: number;
  readonly direct: number;
  readonly mirrored: number;
  /** -ln of the chance that the faulty guitar brings no odd word here. */
  readonly odd: number;
}

/**
 * Words as squared separation: d^2 = -8 ln BC with the Bhattacharyya coefficient BC = sum of sqrt(p q) over the words. For two normal
 * densities of one variance BC = exp(-d^2 / 8), so it is the number of deviations they would have to lie apart; it adds up over
 * independent readings, as d^2 does (Bhattacharyya 1943; Kailath 1967, both from memory).
 */
export function separation(
  p: Readonly<Record<string, number>>,
  q: Readonly<Record<string, number>>,
): number {
  let sum = 0;
  for (const [word, chance] of Object.entries(p)) sum += Math.sqrt(chance * (q[word] ?? 0));
  return sum > 0 ? Math.max(0, -8 * Math.log(Math.min(1, sum))) : Number.POSITIVE_INFINITY;
}

/** Chance that `now` brings a word which is not odd on a guitar that brings `then`. */
const evenChance = (
  then: Readonly<Record<string, number>>,
  now: Readonly<Record<string, number>>,
): number =>
  Object.entries(now).reduce(
    (sum, [word, chance]) => sum + ((then[word] ?? 0) < SELDOM ? 0 : chance),
    0,
  );

/** The figure among the parts of a reading; at most one. */
export function figureIn(
  predictions: readonly Prediction[],
  deviations: Float64Array,
): Figure | null {
  const level = predictions.find((one) => one.type === 'level');
  return level ? figureOf(level, deviations) : null;
}

/** What a faulty guitar shows beside what the healthy one does. */
export function apart(
  healthy: readonly Prediction[],
  faulty: readonly Prediction[],
  deviations: { readonly healthy: Float64Array; readonly faulty: Float64Array },
  meter: Meter,
): Apart {
  let decisive = false;
  let [words, direct, mirrored, odd] = [0, 0, 0, 0];
  const limit = Math.log(meter.limit);
  faulty.forEach((now, at) => {
    const then = healthy[at];
    if (!then || now === then) return;
    if (now.type === 'choice' && then.type === 'choice') {
      const plain = separation(then.chances, now.chances);
      if (then.mirrored) {
        direct += plain;
        mirrored += separation(then.mirrored, now.chances);
      } else {
        words += plain;
        odd -= Math.log(evenChance(then.chances, now.chances));
      }
    } else if (now.type !== then.type) {
      const level = now.type === 'level' ? now : then.type === 'level' ? then : undefined;
      if (!level) return;
      const figure = figureOf(level, now.type === 'level' ? deviations.faulty : deviations.healthy);
      // The figure must be one the meter surely shows.
      decisive ||= figure.mean + ALARM * Math.sqrt(figure.variance) < limit;
    }
  });
  const [then, now] = [figureIn(healthy, deviations.healthy), figureIn(faulty, deviations.faulty)];
  const same: Apart = {
    decisive,
    shift: 0,
    ownDeviation: 0,
    alone: decisive,
    words,
    direct,
    mirrored,
    odd,
  };
  if (!then || !now) return same;
  const shift = now.mean - then.mean;
  const own = (now.slopes.at(-1) as number) * (deviations.faulty.at(-1) as number);
  return {
    ...same,
    shift,
    ownDeviation: Math.abs(own),
    alone:
      decisive ||
      Math.abs(shift) >= ALARM * Math.sqrt(then.variance) + POWER * Math.sqrt(now.variance),
  };
}
