import fc from 'fast-check';
import { det, diag, inv, multiply, transpose } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { Learned, type Levels, logLevels, SLIP } from './levels.ts';

/** Independent of levels.ts: full matrices by mathjs, every set of slips by enumeration. */
interface Case {
  readonly r: number[];
  readonly j: number[][];
  readonly noise: number[];
  readonly deviations: number[];
}
const UNKNOWNS = 3;
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const caseOf = (n: number, far: number): fc.Arbitrary<Case> =>
  fc.record({
    r: fc.array(number(-far, far), { minLength: n, maxLength: n }),
    j: fc.array(fc.array(number(-1, 1), { minLength: UNKNOWNS, maxLength: UNKNOWNS }), {
      minLength: n,
      maxLength: n,
    }),
    noise: fc.array(number(0.02, 0.3), { minLength: n, maxLength: n }),
    deviations: fc.array(number(0.01, 0.5), { minLength: UNKNOWNS, maxLength: UNKNOWNS }),
  });
const levelsOf = ({ r, j, noise, deviations }: Case): Levels => ({
  residuals: Float64Array.from(r),
  slopes: j.map((row) => Float64Array.from(row)),
  noises: Float64Array.from(noise),
  deviations: Float64Array.from(deviations),
});

const square = (values: number[]) => diag(values.map((x) => x * x)) as unknown as number[][];
function covariance({ j, noise, deviations }: Case): number[][] {
  const shared = multiply(multiply(j, square(deviations)), transpose(j)) as number[][];
  return shared.map((row, i) => row.map((x, k) => x + (i === k ? noise[i]! ** 2 : 0)));
}
const pick = (matrix: number[][], rows: number[], columns: number[]) =>
  rows.map((i) => columns.map((k) => matrix[i]![k]!));
const quadratic = (r: number[], sigma: number[][]) =>
  r.length === 0 ? 0 : (multiply(multiply(r, inv(sigma)), r) as unknown as number);
/** ln of a normal density. */
const normal = (r: number[], sigma: number[][]) =>
  r.length === 0
    ? 0
    : -0.5 * (quadratic(r, sigma) + Math.log((2 * Math.PI) ** r.length * det(sigma)));

/** A slip: half anywhere on 18 nats of range, 0.15 each three decades off, 0.1 each one decade off. */
function slipDensity(residual: number, variance: number): number {
  const at = (by: number, weight: number) =>
    weight * Math.exp(normal([residual - by], [[variance]]));
  return (
    0.5 / 18 +
    at(Math.log(1000), 0.15) +
    at(-Math.log(1000), 0.15) +
    at(Math.log(10), 0.1) +
    at(-Math.log(10), 0.1)
  );
}

function byEnumeration(one: Case, most: number): number {
  const n = one.r.length;
  const sigma = covariance(one);
  const terms: number[] = [];
  for (let mask = 0; mask < 2 ** n; mask += 1) {
    const slips = one.r.map((_, i) => i).filter((i) => mask & (1 << i));
    const kept = one.r.map((_, i) => i).filter((i) => !(mask & (1 << i)));
    if (slips.length > most) continue;
    const rk = kept.map((i) => one.r[i]!);
    let term =
      kept.length * Math.log(1 - SLIP) +
      slips.length * Math.log(SLIP) +
      normal(rk, pick(sigma, kept, kept));
    for (const i of slips) {
      // What the kept readings foretell for this one (conditional normal, textbook).
      let [mean, variance] = [0, sigma[i]![i]!];
      if (kept.length > 0) {
        const gain = multiply(pick(sigma, [i], kept), inv(pick(sigma, kept, kept)))[0]!;
        mean = gain.reduce((sum, g, k) => sum + g * rk[k]!, 0);
        variance -= gain.reduce((sum, g, k) => sum + g * sigma[i]![kept[k]!]!, 0);
      }
      term += Math.log(slipDensity(one.r[i]! - mean, variance));
    }
    terms.push(term);
  }
  const top = Math.max(...terms);
  return top + Math.log(terms.reduce((sum, term) => sum + Math.exp(term - top), 0));
}

describe('the joint density of level readings', () => {
  it.each([1, 2])('of %d equals the sum over which one slipped', (n) => {
    fc.assert(
      fc.property(caseOf(n, 4), (one) => {
        expect(logLevels(levelsOf(one))).toBeCloseTo(byEnumeration(one, 1), 8);
      }),
      { numRuns: 150, seed: n },
    );
  });

  it.each([3, 4])('of %d that disagree equals the sum over which up to two slipped', (n) => {
    fc.assert(
      fc.property(caseOf(n, 8), (one) => {
        fc.pre(quadratic(one.r, covariance(one)) > n + 6.1);
        expect(logLevels(levelsOf(one))).toBeCloseTo(byEnumeration(one, 2), 7);
      }),
      { numRuns: 150, seed: n },
    );
  });

  it.each([3, 4])('of %d that agree leaves two slips out, at a loss of under 0.1 nat', (n) => {
    fc.assert(
      fc.property(caseOf(n, 0.2), (one) => {
        fc.pre(quadratic(one.r, covariance(one)) < n + 5.9);
        const got = logLevels(levelsOf(one));
        expect(got).toBeCloseTo(byEnumeration(one, 1), 8);
        expect(byEnumeration(one, 2) - got).toBeLessThan(0.1);
      }),
      { numRuns: 150, seed: 10 + n },
    );
  });

  it('does not depend on the order of the readings', () => {
    fc.assert(
      fc.property(
        caseOf(4, 3),
        fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
        (one, order) => {
          const turned: Case = {
            ...one,
            r: order.map((i) => one.r[i]!),
            j: order.map((i) => one.j[i]!),
            noise: order.map((i) => one.noise[i]!),
          };
          expect(logLevels(levelsOf(turned))).toBeCloseTo(logLevels(levelsOf(one)), 9);
        },
      ),
      { numRuns: 150, seed: 3 },
    );
  });

  it('of none is certain, and never NaN however far a reading is off', () => {
    expect(logLevels(levelsOf({ r: [], j: [], noise: [], deviations: [1, 1, 1] }))).toBe(0);
    const far = levelsOf({
      r: [40, -30, 20],
      j: [
        [1, 0, 0],
        [1, 0, 0],
        [1, 0, 0],
      ],
      noise: [0.01, 0.01, 0.01],
      deviations: [0.1, 1, 1],
    });
    expect(Number.isFinite(logLevels(far))).toBe(true);
  });

  it('shares a tolerance: four equal readings of one part two deviations off weigh as one such reading', () => {
    // A pot of +-20 % (two deviations), meter noise 0.4 %: the design asks that this be no false alarm.
    const off = (n: number, residual: number): Case => ({
      r: Array(n).fill(residual),
      j: Array(n).fill([1, 0, 0]),
      noise: Array(n).fill(0.004),
      deviations: [0.1, 1, 1],
    });
    const loss = (n: number) => logLevels(levelsOf(off(n, 0))) - logLevels(levelsOf(off(n, 0.2)));
    expect(loss(4)).toBeCloseTo(loss(1), 1);
    // Two deviations cost 2 nats once; taken as independent they would cost 8.
    expect(loss(4)).toBeLessThan(2.1);
  });
});

describe('what the readings say about the unknowns', () => {
  it("is the Gaussian posterior: (D^-1 + J' N^-1 J)^-1 by general matrices", () => {
    fc.assert(
      fc.property(
        caseOf(3, 1),
        fc.array(number(-1, 1), { minLength: 3, maxLength: 3 }),
        (one, s) => {
          const weight = diag(one.noise.map((x) => 1 / x ** 2)) as unknown as number[][];
          const prior = diag(one.deviations.map((x) => 1 / x ** 2)) as unknown as number[][];
          const jt = transpose(one.j);
          const information = multiply(multiply(jt, weight), one.j) as number[][];
          const spread = inv(information.map((row, i) => row.map((x, k) => x + prior[i]![k]!)));
          const mean = multiply(
            spread,
            multiply(multiply(jt, weight), one.r),
          ) as unknown as number[];
          const learned = new Learned(levelsOf(one));
          mean.forEach((x, i) => {
            expect(learned.mean[i]).toBeCloseTo(x, 7);
          });
          const { shift, variance } = learned.along(Float64Array.from(s));
          expect(shift).toBeCloseTo(multiply(s, mean) as unknown as number, 7);
          expect(variance).toBeCloseTo(multiply(multiply(s, spread), s) as unknown as number, 7);
        },
      ),
      { numRuns: 100, seed: 4 },
    );
  });

  it('without readings is the prior', () => {
    const none = new Learned(levelsOf({ r: [], j: [], noise: [], deviations: [0.1, 0.2, 0.3] }));
    expect([...none.mean]).toEqual([0, 0, 0]);
    expect(none.along(Float64Array.from([1, 1, 0])).variance).toBeCloseTo(0.05, 12);
  });
});
