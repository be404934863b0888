import { describe, expect, it } from 'vitest';
import { ALARM, ENOUGH, separation } from './apart.ts';

/** Two normal densities of deviation 1 that lie `apart` apart, as the shares of fine bins: words without end. */
function bins(mean: number): Record<string, number> {
  const found: Record<string, number> = {};
  for (let x = -12; x < 18; x += 0.01)
    found[x.toFixed(2)] = (0.01 * Math.exp(-0.5 * (x - mean) ** 2)) / Math.sqrt(2 * Math.PI);
  return found;
}

describe('words as a separation', () => {
  it.each([0.5, 2, ALARM, 6])('are what figures %s deviations apart would be', (distance) => {
    expect(separation(bins(0), bins(distance))).toBeCloseTo(distance ** 2, 4);
  });

  it('add up over independent readings', () => {
    const [p, q] = [
      { yes: 0.9, no: 0.1 },
      { yes: 0.2, no: 0.8 },
    ];
    const both = (one: Record<string, number>) =>
      Object.fromEntries(
        Object.entries(one).flatMap(([a, x]) =>
          Object.entries(one).map(([b, y]) => [`${a} ${b}`, x * y]),
        ),
      );
    expect(separation(both(p), both(q))).toBeCloseTo(2 * separation(p, q), 9);
  });

  it('of a tap that swings the other way need a third reading to reach four deviations', () => {
    const right = { plus: 0.93, minus: 0.03, nothing: 0.04 };
    const wrong = { plus: 0.03, minus: 0.93, nothing: 0.04 };
    const one = separation(right, wrong);
    expect(2 * one).toBeLessThan(ENOUGH);
    expect(3 * one).toBeGreaterThan(ENOUGH);
  });
});
