import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { doubt, type ExpectedOhms } from './entry.ts';

const band = (text: string, low: number, high: number): ExpectedOhms => ({
  text,
  low: ohms(low),
  high: ohms(high),
});
const coil = band('7.4 kΩ', 6900, 7900);
const joint = band('below 1 Ω', 0, 1.5);
const open: ExpectedOhms = { text: 'OL (open)' };
const better = (entered: number | 'open', expected: ExpectedOhms) =>
  doubt(entered === 'open' ? entered : ohms(entered), expected)?.better ?? null;

describe('doubt about an entry', () => {
  it('asks about ohm where kilohm was meant', () => {
    expect(doubt(ohms(7.42), coil)).toEqual({
      sentence:
        'You entered 7.42 Ω. A healthy guitar shows 7.4 kΩ here, so 7.42 kΩ would be closer. Which does the display show?',
      better: 7420,
    });
  });

  it.each([
    // entered, meant
    [7.4, 7400],
    [7.4e6, 7400],
    [0.0074, 7400],
    [74000, 7400],
    [740, 7400],
    // A fault's reading without its k: 430 for 430 kΩ, 5.9 for 5.9 kΩ seen at another pickup's path.
    [430, 430e3],
    [250, 250e3],
    [4.3, 4300],
  ])('asks about %d where %d would fit', (entered, meant) => {
    expect(better(entered, coil)).toBeCloseTo(meant, 6);
  });

  it.each([7400, 6500, 9000, 430e3, 251e3, 12e3, 3700, 0.4, 1.2, 1500, 22e6, 'open'] as const)(
    'takes %s where a coil is expected: healthy, a fault or a short',
    (entered) => {
      expect(better(entered, coil)).toBeNull();
    },
  );

  it.each([0, 0.3, 4.7, 12, 300, 7400, 'open'] as const)(
    'takes %s at a joint, where a bad one reads anything',
    (entered) => {
      expect(better(entered, joint)).toBeNull();
    },
  );

  it('asks whether a zero is no number', () => {
    expect(better(0, coil)).toBe('open');
    expect(better(0, open)).toBe('open');
  });

  it('asks about a missing k where nothing was expected to be read', () => {
    expect(better(5.9, open)).toBeCloseTo(5900, 6);
    expect(better(5900, open)).toBeNull();
  });
});
