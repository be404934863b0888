import { describe, expect, it } from 'vitest';
import { ohms } from '../units.ts';
import { checkValue, expectedValue, relativeDeviation } from './value.ts';

describe('a value', () => {
  it('is what was measured, else what is printed', () => {
    expect(expectedValue({ nominal: ohms(500e3), tolerance: 0.2 })).toBe(500e3);
    expect(expectedValue({ nominal: ohms(500e3), tolerance: 0.2, measured: ohms(462e3) })).toBe(
      462e3,
    );
  });

  it('has two deviations in its tolerance, and about 1 % once measured', () => {
    expect(relativeDeviation({ nominal: 500e3, tolerance: 0.2 })).toBe(0.1);
    expect(relativeDeviation({ nominal: 500e3, tolerance: 0.2, measured: 462e3 })).toBe(0.01);
  });

  it('that is missing is named', () => {
    expect(() => checkValue('volume', 'ohm', undefined as never)).toThrow(
      'volume: its value should be a value in ohm, got undefined',
    );
  });
});
