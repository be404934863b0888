import { erf, lusolve, type Matrix, matrix, multiply, transpose } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { ALARM } from './apart.ts';
import type { Figure } from './figure.ts';
import { Joint, Shared } from './shared.ts';

const deviations = Float64Array.from([0.1, 0.04, 0.02]);
const figure = (mean: number, slopes: number[], noise: number): Figure => ({
  mean,
  slopes: Float64Array.from(slopes),
  noise,
  variance: slopes.reduce((sum, slope, k) => sum + (slope * deviations[k]!) ** 2, noise),
});
/** One figure once `before` were read as `seen`. */
function foretold(one: Figure, before: readonly Figure[], seen: readonly number[]) {
  const shared = new Shared(deviations);
  before.forEach((other, at) => {
    shared.add(other, seen[at]!);
  });
  return shared.foretell(one);
}
const figures = [
  figure(5, [1, 0, 0.2], 1e-4),
  figure(4, [0.9, 0.1, 0], 2e-4),
  figure(8, [0.3, 0.7, 1], 1e-4),
  figure(2, [0, 1, 1], 3e-4),
];
/** Covariance written out anew: J S J' + R. */
const full = figures.map((x, i) =>
  figures.map(
    (y, j) =>
      x.slopes.reduce((sum, slope, k) => sum + slope * y.slopes[k]! * deviations[k]! ** 2, 0) +
      (i === j ? x.noise : 0),
  ),
);

describe('figures that share unknowns', () => {
  it('are foretold as by the conditional normal distribution worked out with a general library', () => {
    const seen = [5.2, 4.1, 8.05, 2.1];
    for (const at of figures.keys()) {
      const rest = [...Array(at).keys()];
      const { mean, deviation } = foretold(
        figures[at]!,
        rest.map((i) => figures[i]!),
        rest.map((i) => seen[i]!),
      );
      let [expected, variance] = [figures[at]!.mean, full[at]![at]!];
      if (rest.length > 0) {
        const inner = rest.map((i) => rest.map((j) => full[i]![j]!));
        const cross = rest.map((i) => full[at]![i]!);
        const weights = (lusolve(inner, cross) as number[][]).map(([x]) => x!);
        weights.forEach((weight, k) => {
          expected += weight * (seen[rest[k]!]! - figures[rest[k]!]!.mean);
          variance -= weight * cross[k]!;
        });
      }
      expect(mean).toBeCloseTo(expected, 10);
      expect(deviation).toBeCloseTo(Math.sqrt(variance), 10);
    }
  });

  it('leave independent standard normals behind, so that false alarms follow the normal tail', () => {
    // y = mean + L z with any lower triangular L of which L L' is the covariance: its z are the deviations in the order taken.
    const n = figures.length;
    const l = figures.map(() => Array<number>(n).fill(0));
    for (let i = 0; i < n; i += 1)
      for (let j = 0; j <= i; j += 1) {
        const sum = l[i]!.slice(0, j).reduce((part, x, k) => part + x * l[j]![k]!, 0);
        l[i]![j] = i === j ? Math.sqrt(full[i]![i]! - sum) : (full[i]![j]! - sum) / l[j]![j]!;
      }
    const back = multiply(matrix(l), transpose(matrix(l))) as Matrix;
    expect(back.get([3, 0])).toBeCloseTo(full[3]![0]!, 12);
    const z = [1.3, -0.4, 2.2, -3.1];
    const y = figures.map((one, i) => one.mean + l[i]!.reduce((sum, x, k) => sum + x * z[k]!, 0));
    for (const at of figures.keys()) {
      const { mean, deviation } = foretold(figures[at]!, figures.slice(0, at), y.slice(0, at));
      expect((y[at]! - mean) / deviation).toBeCloseTo(z[at]!, 8);
    }
    // Both tails beyond four deviations, 25 times: 0.16 % (normal distribution function from mathjs).
    const tail = 1 - erf(ALARM / Math.SQRT2);
    expect(1 - (1 - tail) ** 25).toBeCloseTo(0.0016, 4);
  });

  it('are each given all the others as they would be if taken last', () => {
    const shifts = [0.2, 0.1, 0.05, 0.1];
    const shared = new Joint(figures, deviations).givenOthers(shifts);
    for (const at of figures.keys()) {
      const rest = [...figures.keys()].filter((i) => i !== at);
      const last = foretold(
        figures[at]!,
        rest.map((i) => figures[i]!),
        rest.map((i) => figures[i]!.mean + shifts[i]!),
      );
      expect(shared[at]!.shift).toBeCloseTo(figures[at]!.mean + shifts[at]! - last.mean, 9);
      expect(shared[at]!.deviation).toBeCloseTo(last.deviation, 9);
    }
  });

  it('are forgotten as if they had never been read', () => {
    const [a, b, c] = figures as [Figure, Figure, Figure];
    const shared = new Shared(deviations);
    for (const one of [a, b, c]) shared.add(one, one.mean + 0.1);
    shared.drop(b, b.mean + 0.1);
    const { mean, deviation } = foretold(b, [a, c], [a.mean + 0.1, c.mean + 0.1]);
    expect(shared.foretell(b).mean).toBeCloseTo(mean, 10);
    expect(shared.foretell(b).deviation).toBeCloseTo(deviation, 10);
  });
});
