import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { ohms } from '../../src/circuit/units.ts';
import { askKey } from '../../src/diagnosis/ask-key.ts';
import { candidates } from '../../src/diagnosis/candidates.ts';
import { effortOf } from '../../src/diagnosis/effort.ts';
import { HEALTHY, singleHypotheses } from '../../src/diagnosis/hypothesis.ts';
import { isEndgame, playedOut, secondsWith } from '../../src/diagnosis/play-out.ts';
import { Predictor } from '../../src/diagnosis/predictor.ts';
import { perEffort, type Rule } from '../../src/diagnosis/rule.ts';
import { entropyOf, expectedEntropy, type Foreseen } from '../../src/diagnosis/worth.ts';
import { likeliest } from '../../src/readings/likeliest.ts';
import type { Ask } from '../../src/readings/reading.ts';
import { Dice } from '../simulated/index.ts';

/** Which of a few suspects it is, by asks that are answered without error. Costs are seconds. */
export interface SmallCase {
  readonly weights: readonly number[];
  /** The answer that each suspect stands for, numbered from 0. */
  readonly groups: readonly number[];
  readonly asks: readonly {
    readonly kind: Ask['kind'];
    /** Outcome by suspect. */
    readonly outcomes: readonly number[];
  }[];
  /** Of an ask after another one, or at the start (-1). */
  cost(last: number, ask: number): number;
}

/** Least expected cost to know the answer, by exhaustive search over every set of suspects and every ask before it. */
export function optimalCost(small: SmallCase): number {
  const known = new Map<string, number>();
  const best = (set: readonly number[], last: number): number => {
    if (settled(small, set)) return 0;
    const key = `${set} ${last}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const total = massOf(small, set);
    let least = Number.POSITIVE_INFINITY;
    small.asks.forEach((_, ask) => {
      const parts = split(small, ask, set);
      if (parts.length < 2) return;
      let cost = small.cost(last, ask);
      for (const part of parts) {
        if (cost >= least) return;
        cost += (massOf(small, part) / total) * best(part, ask);
      }
      least = Math.min(least, cost);
    });
    const found = Number.isFinite(least) ? least : 0;
    known.set(key, found);
    return found;
  };
  return best(
    small.weights.map((_, at) => at),
    -1,
  );
}

/** Expected cost of always asking what a rule likes best. */
export function costBy(small: SmallCase, rule: Rule): number {
  const groups = Math.max(...small.groups) + 1;
  const from = (set: readonly number[], last: number): number => {
    if (settled(small, set)) return 0;
    const total = massOf(small, set);
    const mass = new Array<number>(groups).fill(0);
    for (const at of set)
      mass[small.groups[at] as number]! += (small.weights[at] as number) / total;
    const before = entropyOf(mass);
    const ranked: { readonly ask: number; readonly rank: number }[] = [];
    small.asks.forEach(({ kind, outcomes }, ask) => {
      if (split(small, ask, set).length < 2) return;
      const foreseen = set.map(
        (at): Foreseen => ({
          weight: (small.weights[at] as number) / total,
          group: small.groups[at] as number,
          parts: [
            {
              prediction: { type: 'choice', chances: { [`${outcomes[at]}`]: 1 } },
              shift: 0,
              variance: 0,
            },
          ],
        }),
      );
      const bits = Math.max(0, before - expectedEntropy(foreseen, groups)) / Math.LN2;
      const seconds = small.cost(last, ask) - THINKING;
      ranked.push({ ask, rank: rule.rank({ kind, bits, seconds, foreseen, groups }) });
    });
    ranked.sort((x, y) => y.rank - x.rank);
    const play = {
      suspects: set.map((at) => ({
        weight: small.weights[at] as number,
        group: small.groups[at] as number,
        seen: small.asks.map(({ outcomes }) => outcomes[at] as number),
      })),
      asks: small.asks.length,
      cost: small.cost,
    };
    const [first] =
      rule.cost && isEndgame(mass)
        ? playedOut(ranked, (one) => secondsWith(play, one.ask, last))
        : ranked;
    if (!first) return 0;
    return split(small, first.ask, set).reduce(
      (cost, part) => cost + (massOf(small, part) / total) * from(part, first.ask),
      small.cost(last, first.ask),
    );
  };
  return from(
    small.weights.map((_, at) => at),
    -1,
  );
}

/** Seconds of reading off, entering and thinking that every act takes beside its effort. */
const THINKING = 30;
const SUSPECTS = 9;
const ASKS = 18;

/** Nine suspects of a starting wiring drawn by their priors, and eighteen asks that part them, each answered as foretold. */
export function drawnCase(seed: number): SmallCase {
  const dice = new Dice(`small case ${seed}`);
  const layout = layoutOf(dice.pick(startingWirings).build());
  const predictor = new Predictor(layout, { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) });
  const singles = singleHypotheses(layout);
  const drawn = [...singles]
    .map((one) => ({ one, key: Math.log(dice.throw()) / Math.exp(one.logPrior) }))
    .sort((x, y) => y.key - x.key)
    .slice(0, SUSPECTS)
    .map(({ one }) => one);
  const repairs = drawn.map(({ faults }) => faults[0]?.remedy.key ?? HEALTHY);
  const offered = candidates(layout, 'open');
  const telling = offered
    .map((ask) => {
      const key = askKey(ask);
      const ids = new Map<string, number>();
      const outcomes = drawn.map((one) => {
        const name = predictor
          .foretell(one, ask, key)
          .predictions.map((prediction) => {
            const seen = likeliest(prediction);
            return seen.type === 'level' ? `${Math.round(seen.value * 5)}` : JSON.stringify(seen);
          })
          .join();
        const id = ids.get(name) ?? ids.size;
        ids.set(name, id);
        return id;
      });
      return { ask, outcomes, order: dice.throw() };
    })
    .filter(({ outcomes }) => new Set(outcomes).size > 1)
    .sort((x, y) => x.order - y.order)
    .slice(0, ASKS);
  const costs = telling.map(({ ask }, at) =>
    [null, ...telling.map((other) => other.ask)].map(
      (last) => THINKING + effortOf(layout, telling[at]?.ask ?? ask, last),
    ),
  );
  return {
    weights: drawn.map(({ logPrior }) => Math.exp(logPrior)),
    groups: repairs.map((repair) => repairs.indexOf(repair)),
    asks: telling.map(({ ask: { kind }, outcomes }) => ({ kind, outcomes })),
    cost: (last, ask) => costs[ask]?.[last + 1] as number,
  };
}

export interface OverOptimum {
  readonly cases: number;
  readonly mean: number;
  readonly worst: number;
}

/** How much more a rule costs than the best policy there is, over cases drawn. */
export function overOptimum(cases: readonly SmallCase[], rule: Rule = perEffort): OverOptimum {
  const ratios = cases
    .map((small) => ({ best: optimalCost(small), own: costBy(small, rule) }))
    .filter(({ best }) => best > 0)
    .map(({ best, own }) => own / best);
  return {
    cases: ratios.length,
    mean: ratios.reduce((sum, one) => sum + one, 0) / ratios.length,
    worst: Math.max(...ratios),
  };
}

const settled = ({ groups }: SmallCase, set: readonly number[]): boolean =>
  set.every((at) => groups[at] === groups[set[0] as number]);

const massOf = ({ weights }: SmallCase, set: readonly number[]): number =>
  set.reduce((sum, at) => sum + (weights[at] as number), 0);

function split({ asks }: SmallCase, ask: number, set: readonly number[]): number[][] {
  const parts = new Map<number, number[]>();
  for (const at of set) {
    const outcome = asks[ask]?.outcomes[at] as number;
    const part = parts.get(outcome);
    if (part) part.push(at);
    else parts.set(outcome, [at]);
  }
  return [...parts.values()];
}
