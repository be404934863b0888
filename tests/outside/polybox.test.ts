import { describe, expect, it } from 'vitest';
import { posterior } from '../../src/diagnosis/belief.ts';
import { entropyOf, expectedEntropy } from '../../src/diagnosis/worth.ts';
import { chancesAt, entropy, expectedEntropyByHand, faultSets, points } from './polybox.ts';

/** The polybox of de Kleer and Williams (1987), through the very code that weighs guitars. Figures recomputed by brute force. */
describe('the polybox', () => {
  const weights = posterior(
    faultSets.map(({ prior }) => prior),
    faultSets.map(({ consistent }) => (consistent ? 1 : 0)),
  );
  const ofSet = (...faults: string[]) =>
    weights[faultSets.findIndex((set) => set.faults.join() === faults.join())]!;

  it('leaves 27 of 32 sets of faults', () => {
    expect(faultSets.filter(({ consistent }) => consistent)).toHaveLength(27);
    expect(weights.filter((weight) => weight > 0)).toHaveLength(27);
    expect(weights.reduce((sum, weight) => sum + weight)).toBeCloseTo(1, 12);
  });

  it('blames the first adder and the first multiplier alike, at 0.4780 each', () => {
    expect(ofSet('A1')).toBeCloseTo(0.478, 4);
    expect(ofSet('M1')).toBeCloseTo(0.478, 4);
    expect(ofSet('M2', 'M3')).toBeCloseTo(0.00483, 5);
    expect(ofSet()).toBe(0);
    expect(ofSet('A2')).toBe(0);
  });

  it('expects an entropy of 0.2261 nat after X, 0.8860 after Y, 0.9097 after Z, so X is measured first', () => {
    const after = points.map((point) => {
      const list = faultSets.map((set, group) => ({
        weight: weights[group]!,
        group,
        parts: [
          {
            prediction: { type: 'choice' as const, chances: chancesAt(set, point) },
            shift: 0,
            variance: 0,
          },
        ],
      }));
      const expected = expectedEntropy(list, faultSets.length);
      expect(expected).toBeCloseTo(expectedEntropyByHand(weights, point), 10);
      return expected;
    });
    expect(after[0]).toBeCloseTo(0.2261, 4);
    expect(after[1]).toBeCloseTo(0.886, 4);
    expect(after[2]).toBeCloseTo(0.9097, 4);
    expect(Math.min(...after)).toBe(after[0]);
    expect(entropyOf(weights)).toBeCloseTo(entropy(weights), 12);
  });

  it('settles on the adder after X = 6 and on the multiplier after X = 4', () => {
    const given = (x: number) =>
      posterior(
        weights,
        faultSets.map((set) => chancesAt(set, 'X')[x]!),
      );
    const at = (name: string) => faultSets.findIndex((set) => set.faults.join() === name);
    expect(given(6)[at('A1')]).toBeGreaterThan(0.95);
    expect(given(4)[at('M1')]).toBeGreaterThan(0.95);
    expect(given(6)[at('M1')]).toBe(0);
  });
});
