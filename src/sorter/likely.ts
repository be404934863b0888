import { type Ohms, ohms } from '../circuit/units.ts';
import { learnedBy } from '../diagnosis/belief.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import type { PickupPredictor } from './foretelling.ts';
import type { Standing } from './question.ts';

/** A figure that an ohms reading may show, as a band of about 95 %. */
export interface Likely {
  readonly low: Ohms;
  readonly high: Ohms;
}

/** Candidates asked for it, the heaviest first, and the share below which a figure is not likely. */
const ASKED = 60;
const LEAST = 0.002;

/** What the meter may show for this ask, band by band; over-range is not among them. */
export function likelyFigures(
  predictor: PickupPredictor,
  standings: readonly Standing[],
  ask: Ask,
  readings: readonly Reading[],
): readonly Likely[] {
  if (ask.kind !== 'ohms') return [];
  const bands: { low: number; high: number }[] = [];
  const asked = standings.slice(0, ASKED).filter(({ probability }) => probability > LEAST);
  for (const { candidate } of asked) {
    const [level] = predictor.predict(candidate, ask);
    if (level?.type !== 'level') continue;
    const learned = learnedBy(predictor, candidate, readings).along(level.slopes);
    const spread = 2 * Math.sqrt(learned.variance + level.noise ** 2);
    const [low, high] = [-spread, spread].map((by) =>
      Math.exp(level.mean + learned.shift + by),
    ) as [number, number];
    const same = bands.find((band) => low <= band.high && high >= band.low);
    if (same) {
      same.low = Math.min(same.low, low);
      same.high = Math.max(same.high, high);
    } else bands.push({ low, high });
  }
  return bands.map(({ low, high }) => ({ low: ohms(low), high: ohms(high) }));
}
