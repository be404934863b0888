import { expect, it } from 'vitest';
import { posterior } from '../../src/diagnosis/belief.ts';

/**
 * Whether to drill, and whether to pay for a sounding first: the oil example of decision analysis with Bayesian networks
 * (textbooks since Raiffa, 1968). Numbers from memory, results recomputed by hand.
 */
it('values a sounding at 12.5 and perfect information at 35, by the same Bayes rule that weighs faults', () => {
  const prior = [0.5, 0.3, 0.2];
  const payoff = [-70, 50, 200];
  const cost = 10;
  const sounding = { closed: [0.1, 0.3, 0.5], open: [0.3, 0.4, 0.4], diffuse: [0.6, 0.3, 0.1] };
  const mean = (weights: readonly number[]) =>
    weights.reduce((sum, weight, at) => sum + weight * payoff[at]!, 0);

  const without = Math.max(0, mean(prior));
  const tested = Object.values(sounding).reduce((sum, likelihood) => {
    const chance = likelihood.reduce((total, one, at) => total + one * prior[at]!, 0);
    return sum + chance * Math.max(0, mean(posterior(prior, likelihood)));
  }, 0);
  const foreknown = prior.reduce((sum, weight, at) => sum + weight * Math.max(0, payoff[at]!), 0);

  expect(without).toBeCloseTo(20, 10);
  expect(tested - cost).toBeCloseTo(22.5, 10);
  expect(tested - without).toBeCloseTo(12.5, 10);
  expect(foreknown - without).toBeCloseTo(35, 10);
  // A diffuse sounding says: do not drill.
  expect(mean(posterior(prior, sounding.diffuse))).toBeLessThan(0);
});
