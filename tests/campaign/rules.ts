import { perEffort, type Rule, type Weighing } from '../../src/diagnosis/rule.ts';
import { expectedEdges } from '../../src/diagnosis/worth.ts';
import { likeliest } from '../../src/readings/likeliest.ts';
import type { Prediction } from '../../src/readings/prediction.ts';
import type { Dice } from '../simulated/index.ts';

/**
 * Ways to choose the next reading that are compared on the same guitars, all with the same belief and the same end:
 * - `ours`: bits per second of effort, those nearly alike played to the end
 * - `entropy`: bits alone
 * - `edges`: cut edges between answers per second (a rule of adaptive submodular learning, with noise)
 * - `half`: the reading that parts what is still suspected into halves by count, as a bench is taught to
 * - `nearest`: the least trouble among readings that tell something
 * - `random`: any reading that tells something
 */
export const RULES = ['ours', 'entropy', 'edges', 'half', 'nearest', 'random'] as const;
export type RuleName = (typeof RULES)[number];

/** Readings worth less, in bits, tell nothing. */
const TELLING = 0.02;

export function ruleOf(name: RuleName, dice: Dice): Rule {
  const telling = (score: Rule['rank']): Rule => ({
    rank: (one) => (one.bits < TELLING ? one.bits * 1e-6 : score(one)),
  });
  switch (name) {
    case 'ours':
      return perEffort;
    case 'entropy':
      return { rank: ({ bits }) => bits };
    case 'edges':
      return {
        rank: ({ foreseen, groups, seconds }) =>
          (edgesBefore(foreseen, groups) - expectedEdges(foreseen, groups)) / (seconds + 30),
      };
    case 'half':
      return telling(halving);
    case 'nearest':
      return telling(({ seconds }) => 1 / (1 + seconds));
    case 'random':
      return telling(() => dice.between(0.1, 1));
  }
}

function edgesBefore(foreseen: Weighing['foreseen'], groups: number): number {
  const mass = new Array<number>(groups).fill(0);
  for (const { weight, group } of foreseen) mass[group] = (mass[group] as number) + weight;
  const sum = mass.reduce((total, one) => total + one, 0);
  return sum > 0 ? 1 - mass.reduce((total, one) => total + (one / sum) ** 2, 0) : 0;
}

/** 1 where the commonest answer comes from half of what is suspected, 0 where all answer alike or none do. */
function halving({ foreseen }: Weighing): number {
  const answers = new Map<string, number>();
  for (const { parts } of foreseen) {
    const key = parts.map(({ prediction }) => answerOf(prediction)).join();
    answers.set(key, (answers.get(key) ?? 0) + 1);
  }
  const most = Math.max(0, ...answers.values()) / foreseen.length;
  return 1 - 2 * Math.abs(0.5 - most);
}

/** Answers that a person would call the same have the same words. */
function answerOf(prediction: Prediction): string {
  const seen = likeliest(prediction);
  switch (seen.type) {
    case 'level':
      return `${Math.round(seen.value * 5)}`;
    case 'over':
      return 'over';
    case 'threshold':
      return seen.beeps ? 'beeps' : 'silent';
    case 'choice':
      return seen.word;
  }
}
