import { describe, expect, it } from 'vitest';
import { nearestPreferred, seriesOf } from './preferred.ts';

describe('preferred values', () => {
  // Source: IEC 60063, tables of E6, E12 and E24, written out by hand (from memory).
  it('are the tables of the standard', () => {
    expect(seriesOf('E6')).toEqual([10, 15, 22, 33, 47, 68]);
    expect(seriesOf('E12')).toEqual([10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]);
    expect(seriesOf('E24')).toHaveLength(24);
  });

  it('lie within 8 % of the powers of ten that they stand for', () => {
    seriesOf('E24').forEach((number, at) => {
      expect(Math.abs(number / 10 ** (1 + at / 24) - 1)).toBeLessThan(0.08);
    });
  });

  it.each([
    [4600, 'E12', [4700, 3900]],
    [4600, 'E24', [4700, 4300]],
    [1e-9, 'E12', [1e-9]],
    [20e-9, 'E12', [22e-9, 18e-9]],
    [100e3, 'E24', [100e3]],
    [99e3, 'E24', [100e3, 91e3]],
    [0.95, 'E24', [0.91, 1]],
    [680e-12, 'E6', [680e-12]],
    [1.5e-9, 'E6', [1.5e-9]],
  ] as const)('nearest to %d in %s: %j', (value, series, expected) => {
    const found = nearestPreferred(value, series);
    expect(found).toHaveLength(expected.length);
    found.forEach((one, at) => {
      expect(one / expected[at]!).toBeCloseTo(1, 9);
    });
  });

  it('of any value lie on both sides of it, no further than a step', () => {
    for (let at = 0; at < 500; at += 1) {
      const value = 10 ** (-12 + at / 27.3);
      const [near, far] = nearestPreferred(value, 'E12');
      if (far === undefined) continue;
      expect((near! - value) * (far - value)).toBeLessThan(0);
      expect(Math.max(near!, far) / Math.min(near!, far)).toBeLessThan(1.26);
    }
  });
});
