import { backward, cholesky, forward, logNormal, logSum } from './gauss.ts';

/** The level readings of one hypothesis: what was shown, what it predicts, and how the shared unknowns move it. */
export interface Levels {
  /** Residual of each reading: seen minus mean. */
  readonly residuals: Float64Array;
  /** ln of the ohms foretold for each reading, minus infinity where it is none of ohms; where left out, no fingers are thought of. */
  readonly foretold?: Float64Array;
  /** Slopes of each reading on the unknowns. */
  readonly slopes: readonly Float64Array[];
  readonly noises: Float64Array;
  /** Standard deviation of each unknown. */
  readonly deviations: Float64Array;
  /** How often each was read with the same outcome; once where left out. */
  readonly times?: readonly number[];
}

/** Share of entered figures that are wrong: k for M, a decade, a neighbouring lug, a wrong position. */
export const SLIP = 0.03;
/**
 * Chance that who got a reading wrong gets it wrong in the same way when it is read again: the probes go back to the lug they were on, the
 * switch stays where it is (common practice, no source).
 */
export const HABIT = 0.5;
/**
 * Chance of a finger on each tip during a reading, and what a body then puts beside it, in ln ohm: 0.2 to 40 megohm, evenly
 * (common practice, no source).
 */
export const FINGERS = 0.02;
export const FINGER_RANGE: readonly [number, number] = [Math.log(2e5), Math.log(4e7)];
const BODIES = Array.from({ length: 12 }, (_, at) => {
  const [low, high] = FINGER_RANGE;
  return low + ((at + 0.5) / 12) * (high - low);
});
/** Below this, in ln ohm, a body beside the reading moves it by no more than parts differ. */
const FELT = Math.log(2e4);
/** Whether fingers on the tips show in a reading of so much, in ln ohm. */
export const feelsFingers = (foretold: number): boolean => foretold > FELT;
/** A slip anywhere on the meter's range: about 18 nats from tenths of an ohm to tens of megohms. */
const ANYWHERE = Math.log(1 / 18);

/** Covariance of the residuals: slopes x deviations^2 x slopes' + noise^2. */
export function covariance({ slopes, noises, deviations }: Levels): Float64Array {
  const n = noises.length;
  const sigma = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      let sum = 0;
      const [x, y] = [slopes[i] as Float64Array, slopes[j] as Float64Array];
      for (let k = 0; k < deviations.length; k += 1)
        sum += (x[k] as number) * (y[k] as number) * (deviations[k] as number) ** 2;
      sigma[i * n + j] = sigma[j * n + i] = sum;
    }
  for (let i = 0; i < n; i += 1)
    sigma[i * n + i] = (sigma[i * n + i] as number) + (noises[i] as number) ** 2;
  return sigma;
}

/** Density of a slip given what the reading should have been: k/M and decade errors stand out, the rest is anywhere. */
function logSlip(residual: number, variance: number): number {
  const shifted = (by: number, weight: number) =>
    Math.log(weight) + logNormal(residual - by, variance);
  return logSum([
    Math.log(0.5) + ANYWHERE,
    shifted(Math.log(1000), 0.15),
    shifted(-Math.log(1000), 0.15),
    shifted(Math.log(10), 0.1),
    shifted(-Math.log(10), 0.1),
  ]);
}

/** Fingers on both tips: the body beside what should have been shown, each of its sizes as likely; `mean` is ln of what should have been. */
function logFingers(residual: number, variance: number, mean: number): number {
  // A body only takes away.
  if (residual > 4 * Math.sqrt(variance)) return Number.NEGATIVE_INFINITY;
  return (
    logSum(
      BODIES.map((body) => logNormal(residual + Math.log1p(Math.exp(mean - body)), variance)),
    ) - Math.log(BODIES.length)
  );
}

/**
 * ln of the density of a reading that is not sound, and of the chance that it is none.
 * @param residual seen minus foretold
 * @param variance of what was foretold
 * @param foretold ln of the ohms that should have been shown; null where no fingers are thought of
 */
export function logUnsound(residual: number, variance: number, foretold: number | null): number {
  const slipped = Math.log(SLIP) + logSlip(residual, variance);
  if (foretold === null) return slipped;
  return logSum([slipped, Math.log(FINGERS) + logFingers(residual, variance, foretold)]);
}

/**
 * ln of the joint density of all level readings. Readings share the unknowns; up to two of them may be slips, or taken
 * with fingers on the tips, whichever they are, so the answer does not depend on their order. Such a reading is scored against what the
 * others predict for it.
 */
export function logLevels(levels: Levels): number {
  const n = levels.residuals.length;
  if (n === 0) return 0;
  const l = cholesky(covariance(levels), n);
  if (!l) return Number.NEGATIVE_INFINITY;
  const r = levels.residuals;
  const half = forward(l, n, r);
  let all = 0;
  for (let i = 0; i < n; i += 1)
    all +=
      -0.5 * ((half[i] as number) ** 2 + Math.log(2 * Math.PI)) - Math.log(l[i * n + i] as number);
  const { foretold, times } = levels;
  const isHigh = (i: number): boolean =>
    foretold !== undefined && feelsFingers(foretold[i] as number);
  /** ln of the chance that a reading is sound, and of what it shows where it is not. */
  const sound = Float64Array.from(r, (_, i) => Math.log(isHigh(i) ? 1 - SLIP - FINGERS : 1 - SLIP));
  const unsound = (i: number, residual: number, variance: number): number =>
    ((times?.[i] ?? 1) - 1) * Math.log(HABIT) +
    logUnsound(
      residual,
      variance,
      isHigh(i) ? (foretold?.[i] as number) + (r[i] as number) - residual : null,
    );
  const keep = sound.reduce((sum, one) => sum + one, 0);
  if (n === 1) {
    const variance = (l[0] as number) ** 2;
    return logSum([keep + all, unsound(0, r[0] as number, variance)]);
  }
  // Precision matrix p and p r give every leave-some-out density in closed form.
  const p = precision(l, n);
  const pr = backward(l, n, half);
  const terms = [keep + all];
  for (let i = 0; i < n; i += 1) {
    const variance = 1 / (p[i * n + i] as number);
    const residual = (pr[i] as number) * variance;
    const rest = keep - (sound[i] as number);
    terms.push(rest + all - logNormal(residual, variance) + unsound(i, residual, variance));
  }
  // Two slips are only weighed where the readings do not agree as they stand.
  let quadratic = 0;
  for (let i = 0; i < n; i += 1) quadratic += (half[i] as number) ** 2;
  if (n >= 3 && quadratic > n + 6)
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j < i; j += 1) {
        const [a, b, d] = [p[i * n + i] as number, p[i * n + j] as number, p[j * n + j] as number];
        const det = a * d - b * b;
        // Residuals and covariance of the pair, given the others: (p_block)^-1 (p r)_block and (p_block)^-1.
        const [vi, vj] = [d / det, a / det];
        const ri = (d * (pr[i] as number) - b * (pr[j] as number)) / det;
        const rj = (a * (pr[j] as number) - b * (pr[i] as number)) / det;
        const joint = a * ri * ri + 2 * b * ri * rj + d * rj * rj;
        const both = -0.5 * joint - Math.log(2 * Math.PI) + 0.5 * Math.log(det);
        const rest = keep - (sound[i] as number) - (sound[j] as number);
        terms.push(rest + all - both + unsound(i, ri, vi) + unsound(j, rj, vj));
      }
  return logSum(terms);
}

function precision(l: Float64Array, n: number): Float64Array {
  const p = new Float64Array(n * n);
  const unit = new Float64Array(n);
  for (let j = 0; j < n; j += 1) {
    unit.fill(0);
    unit[j] = 1;
    const column = backward(l, n, forward(l, n, unit));
    for (let i = 0; i < n; i += 1) p[i * n + j] = column[i] as number;
  }
  return p;
}

/** What the readings so far say about the unknowns of one hypothesis: mean and remaining spread along any slope. */
export class Learned {
  private readonly levels: Levels;
  private readonly l: Float64Array | null;
  private readonly gain: Float64Array;
  /** Posterior mean of each unknown. */
  readonly mean: Float64Array;

  constructor(levels: Levels) {
    this.levels = levels;
    const n = levels.residuals.length;
    const d = levels.deviations.length;
    this.l = n > 0 ? cholesky(covariance(levels), n) : null;
    this.mean = new Float64Array(d);
    this.gain = this.l
      ? backward(this.l, n, forward(this.l, n, levels.residuals))
      : new Float64Array(0);
    for (let k = 0; k < d; k += 1) {
      let sum = 0;
      for (let i = 0; i < n; i += 1) sum += (levels.slopes[i]?.[k] as number) * (this.gain[i] ?? 0);
      this.mean[k] = sum * (levels.deviations[k] as number) ** 2;
    }
  }

  /** Shift of the mean and variance (noise not included) of a reading with these slopes. */
  along(slopes: Float64Array): { readonly shift: number; readonly variance: number } {
    const { slopes: rows, deviations } = this.levels;
    let [shift, variance] = [0, 0];
    for (let k = 0; k < deviations.length; k += 1) {
      shift += (slopes[k] as number) * (this.mean[k] as number);
      variance += ((slopes[k] as number) * (deviations[k] as number)) ** 2;
    }
    if (this.l) {
      const n = rows.length;
      const cross = new Float64Array(n);
      for (let i = 0; i < n; i += 1) {
        let sum = 0;
        for (let k = 0; k < deviations.length; k += 1)
          sum += (rows[i]?.[k] as number) * (slopes[k] as number) * (deviations[k] as number) ** 2;
        cross[i] = sum;
      }
      for (const x of forward(this.l, n, cross)) variance -= x * x;
    }
    return { shift, variance: Math.max(0, variance) };
  }
}
