import { describe, expect, it } from 'vitest';
import { perEffort } from '../../src/diagnosis/rule.ts';
import { costBy, drawnCase, optimalCost, overOptimum, type SmallCase } from './hunt-optimum.ts';

/** Every two-way question about these suspects, at one cost. */
const allQuestions = (weights: readonly number[]): SmallCase => ({
  weights,
  groups: weights.map((_, at) => at),
  asks: Array.from({ length: 2 ** (weights.length - 1) - 1 }, (_, at) => ({
    kind: 'ohms',
    outcomes: weights.map((__, bit) => ((at + 1) >> bit) & 1),
  })),
  cost: () => 31,
});

describe('the exact optimum of small cases', () => {
  // D. A. Huffman, "A Method for the Construction of Minimum-Redundancy Codes", Proc. IRE 40 (1952): with every question allowed,
  // the best policy asks as many as the code has digits.
  it.each([
    [[8, 4, 2, 1, 1], 30 / 16],
    [[1, 1, 1, 1], 2],
    // Merges 2+3, 4+5, 5+6 and 9+11 weigh 5 + 9 + 11 + 20.
    [[2, 3, 4, 5, 6], 45 / 20],
  ])('is the length of a minimum-redundancy code for %j', (weights, questions) => {
    expect(optimalCost(allQuestions(weights)) / 31).toBeCloseTo(questions, 9);
  });

  it('counts what it takes to get from one ask to the next', () => {
    // Two asks are needed either way; the second costs 5 after the first, and 50 the other way round.
    const small: SmallCase = {
      weights: [1, 1, 1, 1],
      groups: [0, 1, 2, 3],
      asks: [
        { kind: 'ohms', outcomes: [0, 0, 1, 1] },
        { kind: 'ohms', outcomes: [0, 1, 0, 1] },
      ],
      cost: (last, ask) => (last < 0 ? 40 : ask === 1 ? 35 : 80),
    };
    expect(optimalCost(small)).toBe(75);
    expect(costBy(small, perEffort)).toBe(75);
  });

  it('is no dearer than our rule on guitars, and our rule little dearer than it', () => {
    const cases = Array.from({ length: 12 }, (_, at) => drawnCase(at));
    for (const small of cases)
      expect(costBy(small, perEffort)).toBeGreaterThanOrEqual(optimalCost(small) - 1e-9);
    // Looking one reading ahead was 1.037 and 1.33 on a hundred of them, and played to the end 1.008 and 1.18.
    const found = overOptimum(cases);
    expect(found.mean).toBeLessThan(1.05);
    expect(found.worst).toBeLessThan(1.3);
    expect(found.mean).toBeLessThanOrEqual(overOptimum(cases, { rank: perEffort.rank }).mean);
  }, 60_000);
});
