import { varianceOf } from '../diagnosis/predictor.ts';
import { shareOf } from '../readings/bend.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';

/**
 * A reading of ohms on the check's own scale, y = ln(ohms + 1). Above some ohms this is the logarithm the rest of the engine works
 * with; below one ohm errors add instead of multiplying (leads, contact, last digit), and 5 ohm where 0.3 belong is many deviations.
 */
export interface Figure {
  readonly mean: number;
  readonly slopes: Float64Array;
  /** Variance of what no other reading shares. */
  readonly noise: number;
  /** Variance before any other reading, noise included. */
  readonly variance: number;
}

const ONE_OHM = 1;

/** An unknown that may be several times its middle, as the ends of a pot's track: its logarithm spreads over more than this. */
const WIDE = 1;
/** Shares of a figure between which a wide unknown bends it: ln(a exp(x) + b) follows x as long as one of the two is all there is. */
const BENDS = [0.02, 0.98] as const;

export function figureOf(
  prediction: Extract<Prediction, { type: 'level' }>,
  deviations: Float64Array,
): Figure {
  const scale = prediction.ohms / (prediction.ohms + ONE_OHM);
  // Two ends in one figure, ten times apart, would foretell each other wrongly by a straight line: such a figure stands for itself.
  const bent = prediction.slopes.map((slope, at) => {
    const deviation = deviations[at] as number;
    if (deviation <= WIDE) return 0;
    const share = shareOf(slope, deviation);
    return share > BENDS[0] && share < BENDS[1] ? slope : 0;
  });
  const own = bent.reduce((sum, slope, at) => sum + (slope * (deviations[at] as number)) ** 2, 0);
  return {
    mean: Math.log(prediction.ohms + ONE_OHM),
    slopes: prediction.slopes.map((slope, at) => (slope - (bent[at] as number)) * scale),
    noise: scale ** 2 * (prediction.noise ** 2 + own),
    variance: scale ** 2 * varianceOf(prediction, deviations),
  };
}

export const figureSeen = (seen: Extract<Observation, { type: 'level' }>): number =>
  Math.log(Math.exp(seen.value) + ONE_OHM);

/** Ohms at a point of the scale. */
export const ohmsAt = (value: number): number => Math.max(0, Math.exp(value) - ONE_OHM);
