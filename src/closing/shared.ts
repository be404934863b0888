import { backward, cholesky, forward } from '../diagnosis/gauss.ts';
import type { Figure } from './figure.ts';

/** Figures of a healthy guitar taken together: they share the deviations of its parts, so each foretells the others. */
export class Shared {
  private readonly figures: readonly Figure[];
  /** Precision matrix of all figures, n x n. */
  private readonly precision: Float64Array;

  /** @param deviations standard deviations of the unknowns that the figures' slopes belong to */
  constructor(figures: readonly Figure[], deviations: Float64Array) {
    this.figures = figures;
    const n = figures.length;
    const l = cholesky(covariance(figures, deviations), n);
    if (!l) throw new Error('Readings without any noise of their own have no joint density.');
    this.precision = new Float64Array(n * n);
    const unit = new Float64Array(n);
    for (let j = 0; j < n; j += 1) {
      unit.fill(0);
      unit[j] = 1;
      this.precision.set(backward(l, n, forward(l, n, unit)), j * n);
    }
  }

  /**
   * Each figure given all the others: what is left of its shift, and its deviation.
   * @param shifts of each figure from the mean of a healthy guitar
   */
  givenOthers(
    shifts: ArrayLike<number>,
  ): readonly { readonly shift: number; readonly deviation: number }[] {
    const n = this.figures.length;
    return this.figures.map((_, i) => {
      let sum = 0;
      for (let j = 0; j < n; j += 1)
        sum += (this.precision[i * n + j] as number) * (shifts[j] as number);
      const own = this.precision[i * n + i] as number;
      return { shift: sum / own, deviation: Math.sqrt(1 / own) };
    });
  }
}

/** Covariance of figures: slopes x deviations^2 x slopes' + noise. Row-major n x n. */
export function covariance(
  figures: readonly Figure[],
  deviations: Float64Array,
): Float64Array<ArrayBuffer> {
  const n = figures.length;
  const sigma = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1)
    for (let j = 0; j <= i; j += 1) {
      const [x, y] = [figures[i] as Figure, figures[j] as Figure];
      const sum = crossing(x, y, deviations) + (i === j ? x.noise : 0);
      sigma[i * n + j] = sigma[j * n + i] = sum;
    }
  return sigma;
}

/** Covariance of two readings through the unknowns that they share. */
export function crossing(x: Figure, y: Figure, deviations: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < deviations.length; k += 1)
    sum += (x.slopes[k] as number) * (y.slopes[k] as number) * (deviations[k] as number) ** 2;
  return sum;
}

/** One figure after those taken before it: what they make expect of it. */
export interface Foretold {
  readonly mean: number;
  readonly deviation: number;
}

/** Mean and deviation of a figure once `before` were read as `seen`. */
export function foretold(
  figure: Figure,
  before: readonly Figure[],
  seen: readonly number[],
  deviations: Float64Array,
): Foretold {
  const n = before.length;
  if (n === 0) return { mean: figure.mean, deviation: Math.sqrt(figure.variance) };
  const l = cholesky(covariance(before, deviations), n);
  if (!l) return { mean: figure.mean, deviation: Math.sqrt(figure.variance) };
  const cross = new Float64Array(n);
  const residual = new Float64Array(n);
  before.forEach((other, at) => {
    cross[at] = crossing(other, figure, deviations);
    residual[at] = (seen[at] as number) - other.mean;
  });
  const gain = forward(l, n, cross);
  const white = forward(l, n, residual);
  let [mean, variance] = [figure.mean, figure.variance];
  for (let at = 0; at < n; at += 1) {
    mean += (gain[at] as number) * (white[at] as number);
    variance -= (gain[at] as number) ** 2;
  }
  return { mean, deviation: Math.sqrt(Math.max(variance, figure.noise)) };
}
