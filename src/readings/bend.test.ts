import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bentSlope, chord, shareOf } from './bend.ts';

/** The ends of a track: ln 10 / 2. */
const DEVIATION = Math.log(10) / 2;

/** Standard deviation of ln(1 + s (e^u - 1)) over u ~ N(0, deviation^2), by the midpoint rule over eight deviations. */
function deviationOf(share: number, deviation: number): number {
  let [weight, sum, squares] = [0, 0, 0];
  for (let z = -8; z <= 8; z += 1e-3) {
    const density = Math.exp(-0.5 * z * z);
    const y = Math.log1p(share * Math.expm1(z * deviation));
    weight += density;
    sum += density * y;
    squares += density * y * y;
  }
  return Math.sqrt(squares / weight - (sum / weight) ** 2);
}

describe('the chord of a bent figure', () => {
  it.each([0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 0.6, 1])(
    'is at most a fifth narrower than the curve and two fifths wider, where the tangent has a third of it: a share of %d',
    (share) => {
      const curve = deviationOf(share, DEVIATION);
      const ratio = (bentSlope(share, DEVIATION) * DEVIATION) / curve;
      expect(ratio).toBeGreaterThan(0.8);
      expect(ratio).toBeLessThan(1.4);
      if (share < 0.02) expect((share * DEVIATION) / curve).toBeLessThan(0.5);
    },
  );

  it('foretells an end of six times its middle in a coil of 8 k, once the end was read alone', () => {
    const share = 10 / 8010;
    const risen = Math.log((8000 + 60) / 8010);
    expect(bentSlope(share, DEVIATION) * Math.log(6)).toBeCloseTo(risen, 3);
    expect(Math.abs(share * Math.log(6) - risen)).toBeGreaterThan(0.003);
  });

  it('is the tangent where little is unknown, and the figure itself where it is all of it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        expect(bentSlope(share, 1e-6)).toBeCloseTo(share, 5);
        expect(chord(1, 2)).toBeCloseTo(1, 12);
        expect(chord(0, 2)).toBe(0);
      }),
    );
  });

  it('gives its share back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: 2, noNaN: true }),
        (share, deviation) => {
          expect(shareOf(bentSlope(share, deviation), deviation)).toBeCloseTo(share, 10);
        },
      ),
    );
  });
});
