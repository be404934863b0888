import { HEALTHY, type Hypothesis, type Weighed } from './hypothesis.ts';

/** Hypotheses by the repair to make first. Order is by mass, largest first. */
export interface Group {
  readonly repair: string;
  readonly probability: number;
  readonly members: readonly Weighed[];
}

/** A repair with less of the belief is not named beside others. */
export const NAMED = 0.05;

const remediesOf = (hypothesis: Hypothesis): readonly string[] => [
  ...new Set(hypothesis.faults.map((fault) => fault.remedy.key)),
];

/**
 * A single fault belongs to its own repair. Two faults ask for two repairs, of which the one that stands in more of the belief
 * comes first: repairs are taken by mass, and each takes every pair it is part of that no earlier one took.
 */
export function groupsOf(weighed: readonly Weighed[]): readonly Group[] {
  const mass = new Map<string, number>();
  for (const { hypothesis, probability } of weighed)
    for (const key of hypothesis.faults.length === 0 ? [HEALTHY] : remediesOf(hypothesis))
      mass.set(key, (mass.get(key) ?? 0) + probability);
  const order = new Map([...mass].sort((x, y) => y[1] - x[1]).map(([key], at) => [key, at]));
  const members = new Map<string, Weighed[]>();
  for (const one of weighed) {
    const keys = one.hypothesis.faults.length === 0 ? [HEALTHY] : remediesOf(one.hypothesis);
    const first = keys.reduce((x, y) =>
      (order.get(x) as number) <= (order.get(y) as number) ? x : y,
    );
    const list = members.get(first);
    if (list) list.push(one);
    else members.set(first, [one]);
  }
  return [...members]
    .map(([repair, list]) => ({
      repair,
      members: list,
      probability: list.reduce((sum, { probability }) => sum + probability, 0),
    }))
    .sort((x, y) => y.probability - x.probability);
}
