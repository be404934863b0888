import type { Edit } from '../circuit/edit.ts';
import { observe } from '../readings/index.ts';
import { askKey } from './ask-key.ts';
import { logSum } from './gauss.ts';
import { groupsOf, NAMED } from './groups.ts';
import { HEALTHY, type Hypothesis, PRIOR, type Weighed } from './hypothesis.ts';
import { Learned } from './levels.ts';
import { levelsOf, logAnything, type Scored } from './likelihood.ts';
import { isListed, pairsOf } from './pairs.ts';
import type { Predictor } from './predictor.ts';
import { type Counted, sharesOf } from './repeats.ts';
import { ended, type Rests } from './rests.ts';
import { Scorer } from './scorer.ts';

/** Weights that sum to 1 from logarithms of anything proportional to them. */
export function normalise(logs: readonly number[]): number[] {
  const total = logSum(logs);
  return logs.map((value) => Math.exp(value - total));
}

/** Bayes' rule: prior weights times likelihoods, normalised. */
export const posterior = (prior: readonly number[], likelihoods: readonly number[]): number[] =>
  normalise(prior.map((weight, at) => Math.log(weight) + Math.log(likelihoods[at] as number)));

export interface Belief {
  /** Healthy, single faults in each size, and the pairs worth weighing; with `somethingElse` they sum to 1. Largest first. */
  readonly weighed: readonly Weighed[];
  readonly somethingElse: number;
}

export function scoredBy(
  predictor: Predictor,
  hypothesis: Hypothesis,
  readings: readonly Counted[],
): Scored[] {
  const shares = sharesOf(readings);
  return readings.map((reading, at) => ({
    predictions: predictor.predict(hypothesis, reading.ask),
    observations: observe(reading.seen),
    share: shares[at] as number,
    times: reading.times ?? 1,
  }));
}

export const learnedBy = (
  predictor: Predictor,
  hypothesis: Hypothesis,
  readings: readonly Counted[],
): Learned =>
  new Learned(
    levelsOf(scoredBy(predictor, hypothesis, readings), predictor.deviations(hypothesis)),
  );

/**
 * Pairs are looked through more widely where less than half of the belief is in single faults of the list, or where the likeliest of them
 * leaves so much of the readings unexplained, in nats: ten thousand to one, which a sound reading or two in a hundred entered wrong do not make.
 */
const UNEXPLAINED = 9;
/** The same where it explains one reading by nothing but a slip. */
const SLIPPED = -6;

/** Where a lead in a wrong place is likeliest, two leads may be. */
const MOVED = new Set<Edit['op']>(['land', 'exchange']);

/** Where the few repairs that a verdict would name have this much of the belief: two leads may tell the readings as well or better. */
const NEARLY_SURE = 0.9;

/** Whether a verdict is near that something is to be mended. */
function isNearlyNamed(weighed: readonly Weighed[]): boolean {
  const named = groupsOf(weighed).filter(({ probability }) => probability > NAMED);
  return (
    named[0] !== undefined &&
    named[0].repair !== HEALTHY &&
    named.reduce((sum, { probability }) => sum + probability, 0) >= NEARLY_SURE
  );
}

const largest = (values: readonly number[]): number =>
  values.reduce((x, value, at) => (value > (values[x] as number) ? at : x), 0);

/** What is believed after these readings, in whatever order they came. */
export const believe = (
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Counted[],
): Belief => ended(believing(predictor, singles, readings));

/** Hypotheses scored between one rest and the next: a millisecond or two on a phone. */
const AT_A_TIME = 50;

/** The same in pieces. `rare` ways to be, which are no single faults, are asked for only where they may matter. */
export function* believing(
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Counted[],
  rare: () => readonly Hypothesis[] = () => [],
): Rests<Belief> {
  const scorer = new Scorer(predictor, readings);
  function* scored(list: readonly Hypothesis[]): Rests<number[]> {
    const found: number[] = [];
    for (const hypothesis of list) {
      found.push(hypothesis.logPrior + scorer.score(hypothesis));
      if (found.length % AT_A_TIME === 0) yield;
    }
    return found;
  }
  const scores = yield* scored(singles);
  const healthy = singles[0] as Hypothesis;
  const other =
    Math.log(PRIOR.somethingElse) +
    logAnything(scoredBy(predictor, healthy, readings), usualWords(predictor, singles, readings));
  const hypotheses = [...singles];
  const logs = [...scores];
  const weighed = (): readonly Weighed[] => {
    const weights = normalise([...logs, other]);
    return hypotheses.map((hypothesis, at) => ({ hypothesis, probability: weights[at] as number }));
  };
  // Ways to be that are no faults, as those of a pickup's leads, do not come in pairs.
  if (singles.some(({ faults }) => faults.length > 0)) {
    function* add(pairs: readonly Hypothesis[]): Rests<void> {
      hypotheses.push(...pairs);
      logs.push(...(yield* scored(pairs)));
    }
    yield;
    const pairs = pairsOf(scorer, singles, scores, readings.length);
    yield* add(pairs.likely);
    const listed = logSum(scores.filter((_, at) => isListed(singles[at] as Hypothesis)));
    const isOdd =
      pairs.unexplained > UNEXPLAINED ||
      pairs.worst < SLIPPED ||
      listed < logSum([...logs, other]) - Math.LN2;
    const rival = hypotheses[largest(logs)] as Hypothesis;
    if (isOdd) {
      const known = new Set(pairs.likely.map(({ index }) => index));
      const more = yield* pairs.joint(rival);
      yield* add(more.filter(({ index }) => !known.has(index)));
    }
    if (isOdd || rival.edits.some(({ op }) => MOVED.has(op)) || isNearlyNamed(weighed()))
      yield* add(yield* pairs.inTheRunning(rare(), rival));
  }
  return {
    weighed: [...weighed()].sort((x, y) => y.probability - x.probability),
    somethingElse: Math.exp(other - logSum([...logs, other])),
  };
}

/** What was found for one list of hypotheses, by ask, part and word. */
const usual = new WeakMap<readonly Hypothesis[], Map<string, number>>();

/** How frequent a word is over all single faults by their priors, at least one in a hundred. */
function usualWords(
  predictor: Predictor,
  singles: readonly Hypothesis[],
  readings: readonly Counted[],
): (reading: number, part: number, word: string) => number {
  const known = usual.get(singles) ?? new Map<string, number>();
  usual.set(singles, known);
  return (reading, part, word) => {
    const { ask } = readings[reading] as Counted;
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
