import { backward, cholesky, forward } from '../diagnosis/gauss.ts';
import type { Figure } from './figure.ts';

/** One figure after others were read: what they make expect of it. */
export interface Foretold {
  readonly mean: number;
  readonly deviation: number;
}

/**
 * What read figures tell of the unknowns that all figures of a guitar share: y = mean + t'u + noise, u independent standard normals
 * and t the slopes times the deviations. It is kept as M = 1 + sum t t' / noise and h = sum t (y - mean) / noise (information form of
 * the conditional normal density), as large as there are unknowns and not as there are figures.
 */
export class Shared {
  private readonly deviations: Float64Array;
  private readonly m: Float64Array;
  private readonly h: Float64Array;
  private l: Float64Array | undefined;

  /** @param deviations standard deviations of the unknowns that the figures' slopes belong to */
  constructor(deviations: Float64Array) {
    const n = deviations.length;
    this.deviations = deviations;
    this.m = new Float64Array(n * n);
    for (let k = 0; k < n; k += 1) this.m[k * n + k] = 1;
    this.h = new Float64Array(n);
  }

  /** Figures of which no one knows yet what they will show. */
  static of(figures: readonly Figure[], deviations: Float64Array): Shared {
    const shared = new Shared(deviations);
    for (const figure of figures) shared.add(figure, figure.mean);
    return shared;
  }

  add(figure: Figure, seen: number): void {
    this.count(figure, seen, 1);
  }

  /** Forgets a figure that was added. */
  drop(figure: Figure, seen: number): void {
    this.count(figure, seen, -1);
  }

  foretell(figure: Figure): Foretold {
    const t = this.tOf(figure);
    const half = forward(this.factor(), t.length, t);
    const told = forward(this.factor(), t.length, this.h);
    let [mean, variance] = [figure.mean, figure.noise];
    for (let k = 0; k < t.length; k += 1) {
      mean += (half[k] as number) * (told[k] as number);
      variance += (half[k] as number) ** 2;
    }
    return { mean, deviation: Math.sqrt(variance) };
  }

  /** The mean of the unknowns, each in its deviations, where the figures shift so much from what a healthy guitar shows. */
  leaning(figures: readonly Figure[], shifts: ArrayLike<number>): Float64Array {
    const h = new Float64Array(this.deviations.length);
    figures.forEach((figure, at) => {
      const shift = shifts[at] as number;
      if (shift !== 0) addScaled(h, this.tOf(figure), shift / figure.noise);
    });
    const l = this.factor();
    return backward(l, h.length, forward(l, h.length, h));
  }

  tOf({ slopes }: Figure): Float64Array {
    return this.deviations.map((deviation, k) => deviation * (slopes[k] as number));
  }

  private count(figure: Figure, seen: number, sign: 1 | -1): void {
    if (!(figure.noise > 0))
      throw new Error('A reading without any noise of its own has no density.');
    const t = this.tOf(figure);
    const n = t.length;
    for (let i = 0; i < n; i += 1) {
      const scaled = (sign * (t[i] as number)) / figure.noise;
      if (scaled === 0) continue;
      for (let j = 0; j < n; j += 1)
        this.m[i * n + j] = (this.m[i * n + j] as number) + scaled * (t[j] as number);
    }
    addScaled(this.h, t, (sign * (seen - figure.mean)) / figure.noise);
    this.l = undefined;
  }

  private factor(): Float64Array {
    this.l ??= cholesky(this.m, this.h.length) ?? undefined;
    if (!this.l) throw new Error('What figures tell of the unknowns is not positive definite.');
    return this.l;
  }
}

/** Figures of a healthy guitar taken together: each foretells the others. */
export class Joint {
  private readonly figures: readonly Figure[];
  private readonly shared: Shared;
  private readonly t: readonly Float64Array[];
  /** For each figure its variance given all the others. */
  private readonly variances: readonly number[];

  constructor(figures: readonly Figure[], deviations: Float64Array) {
    this.figures = figures;
    this.shared = Shared.of(figures, deviations);
    this.t = figures.map((figure) => this.shared.tOf(figure));
    // Given all, the figure's own included, the unknowns leave it a variance v; without its own: noise / (1 - v / noise).
    this.variances = figures.map((figure) => {
      const v = this.shared.foretell(figure).deviation ** 2 - figure.noise;
      return figure.noise / (1 - v / figure.noise);
    });
  }

  /**
   * Each figure given all the others: what is left of its shift, and its deviation.
   * @param shifts of each figure from the mean of a healthy guitar
   */
  givenOthers(
    shifts: ArrayLike<number>,
  ): readonly { readonly shift: number; readonly deviation: number }[] {
    const u = this.shared.leaning(this.figures, shifts);
    return this.figures.map(({ noise }, at) => {
      const variance = this.variances[at] as number;
      const left = (shifts[at] as number) - dot(this.t[at] as Float64Array, u);
      return { shift: (left * variance) / noise, deviation: Math.sqrt(variance) };
    });
  }
}

export function dot(x: Float64Array, y: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < x.length; k += 1) sum += (x[k] as number) * (y[k] as number);
  return sum;
}

function addScaled(sum: Float64Array, x: Float64Array, factor: number): void {
  for (let k = 0; k < x.length; k += 1) sum[k] = (sum[k] as number) + factor * (x[k] as number);
}
