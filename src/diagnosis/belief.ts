import { observe } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { logSum } from './gauss.ts';
import { type Hypothesis, PRIOR, pair } from './hypothesis.ts';
import { Learned } from './levels.ts';
import { levelsOf, logAnything, logLikelihood, type Scored } from './likelihood.ts';
import type { Predictor } from './predictor.ts';
import { sharesOf } from './repeats.ts';

/** Weights that sum to 1 from logarithms of anything proportional to them. */
export function normalise(logs: readonly number[]): number[] {
  const total = logSum(logs);
  return logs.map((value) => Math.exp(value - total));
}

/** Bayes' rule: prior weights times likelihoods, normalised. */
export const posterior = (prior: readonly number[], likelihoods: readonly number[]): number[] =>
  normalise(prior.map((weight, at) => Math.log(weight) + Math.log(likelihoods[at] as number)));

export interface Weighed {
  readonly hypothesis: Hypothesis;
  readonly probability: number;
}

export interface Belief {
  /** Healthy, single faults in each size, and the pairs worth weighing; with `somethingElse` they sum to 1. Largest first. */
  readonly weighed: readonly Weighed[];
  readonly somethingElse: number;
}

/** How many pairs of faults are weighed in full; the rest weigh less than the least of these by the bound below. */
const PAIRS = 400;

/** Readings ready to be scored: a repeat that agrees counts once, as it would share a slip of the first. A wire moved again is moved anew. */
export function distinct(readings: readonly Reading[]): readonly Reading[] {
  const kept: Reading[] = [];
  for (const reading of readings) {
    const key = askKey(reading.ask);
    const same =
      reading.ask.kind === 'flex'
        ? -1
        : kept.findIndex((other) => askKey(other.ask) === key && agrees(other, reading));
    if (same < 0) kept.push(reading);
  }
  return kept;
}

function agrees(one: Reading, other: Reading): boolean {
  const [a, b] = [observe(one.seen), observe(other.seen)];
  return a.every((x, at) => {
    const y = b[at];
    if (x?.type === 'level' && y?.type === 'level') return Math.abs(x.value - y.value) < 0.03;
    return JSON.stringify(x) === JSON.stringify(y);
  });
}

export function scoredBy(
  predictor: Predictor,
  hypothesis: Hypothesis,
  readings: readonly Reading[],
): Scored[] {
  const shares = sharesOf(readings);
  return readings.map((reading, at) => ({
    predictions: predictor.predict(hypothesis, reading.ask),
    observations: observe(reading.seen),
    share: shares[at] as number,
  }));
}

export const learnedBy = (
  predictor: Predictor,
  hypothesis: Hypothesis,
  readings: readonly Reading[],
): Learned =>
  new Learned(
    levelsOf(scoredBy(predictor, hypothesis, readings), predictor.deviations(hypothesis)),
  );

/** Scores hypotheses on a list of readings; those that predict the same are scored once. */
class Scorer {
  private readonly predictor: Predictor;
  private readonly readings: readonly {
    readonly ask: Ask;
    readonly key: string;
    readonly observations: Scored['observations'];
    readonly share: number;
  }[];
  private readonly known = new Map<number, number>();
  /** Branches by node; the first nodes are roots, one for each reading that a score may begin with. */
  private readonly tree: Map<string | number, number>[] = [];
  private nodes: number;
  /** By reading and what is foretold, for readings in words: these depend on nothing else. */
  private readonly words: readonly Map<number, number>[];

  constructor(predictor: Predictor, readings: readonly Reading[]) {
    this.predictor = predictor;
    const shares = sharesOf(readings);
    this.readings = readings.map(({ ask, seen }, at) => ({
      ask,
      key: askKey(ask),
      observations: observe(seen),
      share: shares[at] as number,
    }));
    this.words = readings.map(() => new Map<number, number>());
    this.nodes = readings.length;
  }

  /** ln of the likelihood of one reading by itself. */
  alone(hypothesis: Hypothesis, at: number): number {
    const { ask, key, ...seen } = this.readings[at] as (typeof this.readings)[number];
    const { id, predictions } = this.predictor.foretell(hypothesis, ask, key);
    const words = this.words[at] as Map<number, number>;
    const known = words.get(id);
    if (known !== undefined) return known;
    if (predictions.some(({ type }) => type === 'level')) return this.score(hypothesis, at, at + 1);
    const value = logLikelihood([{ predictions, ...seen }], new Float64Array(0));
    words.set(id, value);
    return value;
  }

  /** ln of the likelihood of readings `from` to `to`. */
  score(hypothesis: Hypothesis, from = 0, to = this.readings.length): number {
    let node = this.step(from, `${hypothesis.loose?.deviation ?? 0}`);
    for (let at = from; at < to; at += 1) {
      const { ask, key } = this.readings[at] as (typeof this.readings)[number];
      node = this.step(node, this.predictor.foretell(hypothesis, ask, key).id);
    }
    const known = this.known.get(node);
    if (known !== undefined) return known;
    const scored = this.readings.slice(from, to).map(({ ask, key, ...seen }): Scored => {
      const { predictions } = this.predictor.foretell(hypothesis, ask, key);
      return { predictions, ...seen };
    });
    const value = logLikelihood(scored, this.predictor.deviations(hypothesis));
    this.known.set(node, value);
    return value;
  }

  /** The next node of the tree of what is foretold, one level a reading: equal for all that foretell the same so far. */
  private step(node: number, name: string | number): number {
    let branches = this.tree[node];
    if (!branches) {
      branches = new Map();
      this.tree[node] = branches;
    }
    const known = branches.get(name);
    if (known !== undefined) return known;
    this.nodes += 1;
    branches.set(name, this.nodes);
    return this.nodes;
  }
}

/** What is believed after these readings, in whatever order they came. */
export function believe(
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Reading[],
): Belief {
  const scorer = new Scorer(predictor, readings);
  const scores = singles.map((hypothesis) => hypothesis.logPrior + scorer.score(hypothesis));
  // Ways to be that are no faults, as those of a pickup's leads, do not come in pairs.
  const doubles = singles.some(({ faults }) => faults.length > 0)
    ? likelyPairs(scorer, singles, scores, readings.length)
    : [];
  const hypotheses = [...singles, ...doubles];
  const logs = [...scores, ...doubles.map((double) => double.logPrior + scorer.score(double))];
  const healthy = singles[0] as Hypothesis;
  logs.push(
    Math.log(PRIOR.somethingElse) +
      logAnything(scoredBy(predictor, healthy, readings), usualWords(predictor, singles, readings)),
  );
  const weights = normalise(logs);
  const weighed = hypotheses
    .map((hypothesis, at) => ({ hypothesis, probability: weights[at] as number }))
    .sort((x, y) => y.probability - x.probability);
  return { weighed, somethingElse: weights[hypotheses.length] as number };
}

/** What was found for one list of hypotheses, by ask, part and word. */
const usual = new WeakMap<readonly Hypothesis[], Map<string, number>>();

/** How frequent a word is over all single faults by their priors, at least one in a hundred. */
function usualWords(
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Reading[],
): (reading: number, part: number, word: string) => number {
  const known = usual.get(singles) ?? new Map<string, number>();
  usual.set(singles, known);
  return (reading, part, word) => {
    const { ask } = readings[reading] as Reading;
    const key = askKey(ask);
    const name = `${key} ${part} ${word}`;
    const before = known.get(name);
    if (before !== undefined) return before;
    let [sum, total] = [0, 0];
    for (const hypothesis of singles) {
      const weight = Math.exp(hypothesis.logPrior);
      const prediction = predictor.foretell(hypothesis, ask, key).predictions[part];
      if (prediction?.type !== 'choice') continue;
      const mirrored = (prediction.mirrored ?? prediction.chances)[word] ?? 0;
      sum += (weight * ((prediction.chances[word] ?? 0) + mirrored)) / 2;
      total += weight;
    }
    const found = total > 0 ? Math.max(0.01, sum / total) : 0.5;
    known.set(name, found);
    return found;
  };
}

const UNPAIRED = new Set(['strays', 'elsewhere']);
/** Faults of which pairs are made. */
const PARTNERS = 160;

/**
 * Pairs that may explain together what neither does alone. Each fault is scored reading by reading; a pair is ranked as if every
 * reading followed whichever of the two explains it better. Pairs of which one fault shows in no reading add nothing but their prior
 * and are left out: they would not change which repair comes first.
 */
function likelyPairs(
  scorer: Scorer,
  singles: readonly Hypothesis[],
  scores: readonly number[],
  count: number,
): readonly Hypothesis[] {
  const apart = (hypothesis: Hypothesis): number[] =>
    Array.from({ length: count }, (_, at) => scorer.alone(hypothesis, at));
  const base = apart(singles[0] as Hypothesis);
  const top = singles
    .slice(1)
    // What is rare by itself beside a fault is left to `something else`.
    .filter(({ faults }) => !UNPAIRED.has(faults[0]?.family ?? ''))
    .map((hypothesis) => ({
      hypothesis,
      score: scores[hypothesis.index] as number,
      apart: apart(hypothesis),
    }))
    .filter(({ apart: own }) => own.some((value, at) => value > (base[at] as number) + 1.5))
    .sort((x, y) => y.score - x.score)
    .slice(0, PARTNERS);
  const pairs: { first: Hypothesis; second: Hypothesis; rank: number }[] = [];
  top.forEach((x, i) => {
    for (const y of top.slice(0, i)) {
      if (x.hypothesis.faults[0]?.remedy.key === y.hypothesis.faults[0]?.remedy.key) continue;
      let rank = x.hypothesis.logPrior + y.hypothesis.logPrior;
      for (let at = 0; at < count; at += 1)
        rank += Math.max(x.apart[at] as number, y.apart[at] as number);
      const [first, second] =
        x.hypothesis.index < y.hypothesis.index
          ? [x.hypothesis, y.hypothesis]
          : [y.hypothesis, x.hypothesis];
      pairs.push({ first, second, rank });
    }
  });
  pairs.sort((x, y) => y.rank - x.rank);
  return pairs.slice(0, PAIRS).map(({ first, second }) => pair(first, second, singles.length));
}
