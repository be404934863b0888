import { describe, expect, it } from 'vitest';
import { Dice } from './dice.ts';

describe('dice', () => {
  it('throw evenly, without a run or a bias between neighbouring seeds', () => {
    const dice = new Dice('even');
    const bins = new Array<number>(16).fill(0);
    for (let thrown = 0; thrown < 16_000; thrown++) bins[Math.floor(dice.throw() * 16)]! += 1;
    // Chi-square, 15 degrees of freedom: 37.7 is passed once in a thousand (standard table, from memory).
    expect(bins.reduce((sum, bin) => sum + (bin - 1000) ** 2 / 1000, 0)).toBeLessThan(37.7);
    const first = Array.from({ length: 2000 }, (_, seed) => new Dice(seed).throw());
    expect(first.reduce((a, b) => a + b) / 2000).toBeCloseTo(0.5, 1);
    const mean =
      first.slice(1).reduce((sum, x, at) => sum + (x - 0.5) * (first[at]! - 0.5), 0) / 2000;
    expect(Math.abs(mean * 12)).toBeLessThan(0.08);
  });

  it('follow the normal law', () => {
    const dice = new Dice('normal');
    const thrown = Array.from({ length: 20_000 }, () => dice.normal());
    const mean = thrown.reduce((a, b) => a + b) / thrown.length;
    expect(Math.abs(mean)).toBeLessThan(0.03);
    expect(thrown.reduce((sum, x) => sum + x * x, 0) / thrown.length).toBeCloseTo(1, 1);
    expect(thrown.filter((x) => Math.abs(x) < 1.96).length / thrown.length).toBeCloseTo(0.95, 2);
  });
});
