import { ROOMS } from '../readings/hearing.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';
import { logSum } from './gauss.ts';
import { FINGER_RANGE, FINGERS, HABIT, type Levels, logLevels } from './levels.ts';

/** Chance that a reading that should show a figure is entered as over-range (a probe that missed its lug). */
const MISSED = 0.012;
/** Chance that a reading that should be over-range shows a figure below what fingers or leakage make of it. */
const STRAY = 0.004;

/** Thresholds of continuity testers, ohm (20 to 150; the meters of the trade vary), equally likely. */
export const THRESHOLDS = [20, 30, 45, 65, 95, 140];
/** Chance that a beep or silence is not what was entered. */
const MISHEARD = 0.015;

/** One reading as one hypothesis sees it, part for part. */
export interface Scored {
  readonly predictions: readonly Prediction[];
  readonly observations: readonly (Observation | undefined)[];
  /** What its words count for, where it shares its error with other readings; 1 unless said. */
  readonly share?: number;
  /** How often the same was seen; 1 unless said. */
  readonly times?: number;
}

/** Splits the scored readings of a hypothesis into level readings and the rest. */
export function levelsOf(scored: readonly Scored[], deviations: Float64Array): Levels {
  const residuals: number[] = [];
  const foretold: number[] = [];
  const slopes: Float64Array[] = [];
  const noises: number[] = [];
  const often: number[] = [];
  for (const { predictions, observations, times = 1 } of scored)
    predictions.forEach((prediction, at) => {
      const seen = observations[at];
      if (prediction.type !== 'level' || seen?.type !== 'level') return;
      residuals.push(seen.value - prediction.mean);
      foretold.push(Math.log(prediction.ohms));
      slopes.push(prediction.slopes);
      noises.push(prediction.noise);
      often.push(times);
    });
  return {
    residuals: Float64Array.from(residuals),
    foretold: Float64Array.from(foretold),
    slopes,
    noises: Float64Array.from(noises),
    deviations,
    times: often,
  };
}

/** ln of the density of everything seen, given one hypothesis. Order of the readings does not matter. */
export function logLikelihood(scored: readonly Scored[], deviations: Float64Array): number {
  let total = logLevels(levelsOf(scored, deviations));
  const beeps = THRESHOLDS.map(() => 0);
  const signs = { tap: [0, 0], pole: [0, 0] };
  const rooms = ROOMS.map(() => 0);
  for (const { predictions, observations, share = 1, times = 1 } of scored)
    predictions.forEach((prediction, at) => {
      const seen = observations[at];
      if (seen === undefined) return;
      if (prediction.type === 'threshold' && seen.type === 'threshold')
        THRESHOLDS.forEach((threshold, i) => {
          beeps[i] =
            (beeps[i] as number) +
            Math.log(prediction.ohms < threshold === seen.beeps ? 1 - MISHEARD : MISHEARD);
        });
      else if (prediction.type === 'choice' && seen.type === 'choice') {
        if (prediction.rooms) {
          prediction.rooms.forEach((chances, room) => {
            rooms[room] = (rooms[room] as number) + share * Math.log(chances[seen.word] ?? 1e-6);
          });
          return;
        }
        const chance = share * Math.log(prediction.chances[seen.word] ?? 1e-6);
        if (prediction.latent && prediction.mirrored) {
          const pair = signs[prediction.latent];
          pair[0] = (pair[0] as number) + chance;
          pair[1] = (pair[1] as number) + Math.log(prediction.mirrored[seen.word] ?? 1e-6);
        } else total += chance;
      } else total += logMixed(prediction, seen, times);
    });
  total += logSum(beeps) - Math.log(THRESHOLDS.length);
  total += logSum(rooms) - Math.log(ROOMS.length);
  total += logSum(signs.tap) + logSum(signs.pole) - 2 * Math.LN2;
  return total;
}

/**
 * Over-range predicted or seen, so many times the same. A level seen where a level was predicted is scored elsewhere, jointly. What was a
 * slip the first time comes again by habit alone.
 */
export function logMixed(prediction: Prediction, seen: Observation, times = 1): number {
  const again = (times - 1) * Math.log(HABIT);
  if (prediction.type === 'over' && seen.type === 'over') return Math.log(1 - FINGERS - STRAY);
  if (prediction.type === 'level' && seen.type === 'over') return Math.log(MISSED) + again;
  if (prediction.type === 'over' && seen.type === 'level') {
    const [low, high] = FINGER_RANGE;
    return Math.log(seen.value > low ? FINGERS / (high - low) : STRAY / (low + 2)) + again;
  }
  return 0;
}

/**
 * ln of the density under `something else`, which predicts nothing: any figure on the range. Words are as frequent as over all
 * modelled guitars together (`usual`, by reading and part), so that a common word is no evidence for the unknown.
 */
export function logAnything(
  scored: readonly Scored[],
  usual: (reading: number, part: number, word: string) => number,
): number {
  let total = 0;
  scored.forEach(({ observations, share = 1 }, reading) => {
    observations.forEach((seen, part) => {
      if (seen?.type === 'level') total += Math.log(0.75 / 18);
      else if (seen?.type === 'over') total += Math.log(0.25);
      else if (seen?.type === 'threshold') total -= Math.LN2;
      else if (seen?.type === 'choice') total += share * Math.log(usual(reading, part, seen.word));
    });
  });
  return total;
}
