import { expect, it } from 'vitest';
import { wilson } from './wilson.ts';

// None of 100: z^2 / (n + z^2). Half of 100: 0.5 +- z sqrt(n/4 + z^2/4) / (n + z^2), both by hand from the formula.
it('is the 95 % interval of a share', () => {
  expect(wilson(0, 100)).toEqual([0, 0.037]);
  expect(wilson(100, 100)).toEqual([0.963, 1]);
  expect(wilson(50, 100)).toEqual([0.4038, 0.5962]);
  // 8 of 10 as statistics texts print it, from memory.
  expect(wilson(8, 10)[0]).toBeCloseTo(0.49, 3);
  expect(wilson(8, 10)[1]).toBeCloseTo(0.943, 3);
});
