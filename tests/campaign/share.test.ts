import { expect, it } from 'vitest';
import { shareOf } from './share.ts';

const list = (n: number, count: number) => Array.from({ length: n }, (_, at) => at < count);

it('gives a share with the interval of a score test', () => {
  // Both ends solve (p - share)^2 = z^2 p (1 - p) / n, whatever the way they were found.
  for (const [n, count] of [
    [10, 3],
    [40, 40],
    [300, 1],
  ] as const) {
    const { share, from, to } = shareOf(list(n, count));
    for (const p of [from!, to!])
      if (p > 0 && p < 1) expect((p - share!) ** 2 * n).toBeCloseTo(1.959964 ** 2 * p * (1 - p), 1);
  }
  // None of 100: up to 3.7 % (z^2 / (n + z^2)).
  expect(shareOf(list(100, 0))).toEqual({ of: 100, count: 0, share: 0, from: 0, to: 0.037 });
  expect(shareOf([])).toMatchObject({ of: 0, share: null });
});
