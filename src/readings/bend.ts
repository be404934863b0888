/**
 * A part of a figure whose logarithm is known only roughly, as the ends of a pot's track, bends the figure: where it is a share s of it
 * and e^u times its middle, ln R rises by ln(1 + s (e^u - 1)), which is s u for small u alone. What follows along one straight line takes
 * the chord to one and a half deviations up: an end is felt most where it is large, and the chord's deviation is from a fifth less
 * to two fifths more than the curve's, where the tangent's is down to a third of it.
 */
const CHORD = 1.5;

/** How far ln R rises on the curve, over how far u does. @param share 0..1 @param far u, not 0 */
export const chord = (share: number, far: number): number =>
  Math.log1p(share * Math.expm1(far)) / far;

/** The slope to go by. @param share of the figure at the middle, 0..1 @param deviation of u */
export const bentSlope = (share: number, deviation: number): number =>
  chord(share, CHORD * deviation);

/** The share whose slope that is. */
export const shareOf = (slope: number, deviation: number): number =>
  Math.expm1(slope * CHORD * deviation) / Math.expm1(CHORD * deviation);
