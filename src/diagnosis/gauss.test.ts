import fc from 'fast-check';
import { multiply, lusolve as solve, transpose } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { backward, cholesky, forward, logNormal, logSum } from './gauss.ts';

const size = 4;
/** Any B gives a positive definite B B' + I. */
const matrices = fc
  .array(fc.double({ min: -3, max: 3, noNaN: true }), {
    minLength: size * size,
    maxLength: size * size,
  })
  .map((b) => {
    const rows = Array.from({ length: size }, (_, i) => b.slice(i * size, (i + 1) * size));
    const product = multiply(rows, transpose(rows));
    return product.map((row, i) => row.map((x, j) => x + (i === j ? 1 : 0)));
  });
const rightSides = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), {
  minLength: size,
  maxLength: size,
});
const rowsOf = (flat: Float64Array) =>
  Array.from({ length: size }, (_, i) => [...flat.slice(i * size, (i + 1) * size)]);

describe('the Cholesky factor', () => {
  it('is lower, and times its transpose is the matrix', () => {
    fc.assert(
      fc.property(matrices, (a) => {
        const l = rowsOf(cholesky(Float64Array.from(a.flat()), size)!);
        const back = multiply(l, transpose(l));
        a.forEach((row, i) => {
          row.forEach((x, j) => {
            expect(back[i]![j]).toBeCloseTo(x, 9);
            if (j > i) expect(l[i]![j]).toBe(0);
          });
        });
      }),
      { numRuns: 50, seed: 1 },
    );
  });

  it('solves what a general solver solves, forward and back', () => {
    fc.assert(
      fc.property(matrices, rightSides, (a, b) => {
        const l = cholesky(Float64Array.from(a.flat()), size)!;
        const x = backward(l, size, forward(l, size, Float64Array.from(b)));
        const oracle = (solve(a, b) as number[][]).flat();
        oracle.forEach((value, i) => {
          expect(x[i]).toBeCloseTo(value, 7);
        });
      }),
      { numRuns: 50, seed: 2 },
    );
  });

  it('is none where the matrix is not positive definite', () => {
    expect(cholesky(Float64Array.from([1, 2, 2, 1]), 2)).toBeNull();
    expect(cholesky(Float64Array.from([0]), 1)).toBeNull();
    expect(cholesky(Float64Array.from([Number.NaN]), 1)).toBeNull();
  });
});

describe('logarithms of densities', () => {
  it('a normal density integrates to 1 and has its peak where it should', () => {
    let total = 0;
    for (let x = -20; x <= 20; x += 0.001) total += Math.exp(logNormal(x, 2.5)) * 0.001;
    expect(total).toBeCloseTo(1, 9);
    // 1/sqrt(2 pi): the standard normal density at 0 (textbook).
    expect(Math.exp(logNormal(0, 1))).toBeCloseTo(0.3989422804, 9);
  });

  it('sums far below and far above what a double can hold', () => {
    expect(logSum([-1000, -1000])).toBeCloseTo(-1000 + Math.LN2, 12);
    expect(logSum([1000, 1000, 1000])).toBeCloseTo(1000 + Math.log(3), 12);
    expect(logSum([0, Number.NEGATIVE_INFINITY])).toBe(0);
    expect(logSum([])).toBe(Number.NEGATIVE_INFINITY);
  });
});
