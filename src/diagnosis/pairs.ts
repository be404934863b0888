import { type Hypothesis, pair } from './hypothesis.ts';
import type { Rests } from './rests.ts';
import type { Scorer } from './scorer.ts';

/** How many pairs of faults are weighed in full; the rest weigh less than the least of these by the bound below. */
const PAIRS = 400;
const UNPAIRED = new Set(['strays', 'elsewhere']);
/** Faults of which pairs are made. */
const PARTNERS = 160;

/** A fault shows in a reading that it explains so much better than a sound guitar does, nats; and plainly, where nearly nothing else would. */
const SHOWS = 1.5;
const PLAINLY = 3;
const showing =
  (base: readonly number[], by: number) =>
  ({ apart }: Pick<Partner, 'apart'>): boolean =>
    apart.some((value, at) => value > (base[at] as number) + by);

/** A single fault, and how well it explains each reading by itself. */
interface Partner {
  readonly hypothesis: Hypothesis;
  readonly apart: readonly number[];
}

const apartOf = (scorer: Scorer, hypothesis: Hypothesis, count: number): number[] =>
  Array.from({ length: count }, (_, at) => scorer.alone(hypothesis, at));

/** Faults of the list that show in some reading, the likeliest first. What is rare by itself beside a fault is left to `something else`. */
function partnersOf(
  scorer: Scorer,
  singles: readonly Hypothesis[],
  scores: readonly number[],
  count: number,
): readonly Partner[] {
  const base = apartOf(scorer, singles[0] as Hypothesis, count);
  return singles
    .slice(1)
    .filter(isListed)
    .map((hypothesis) => ({
      hypothesis,
      score: scores[hypothesis.index] as number,
      apart: apartOf(scorer, hypothesis, count),
    }))
    .filter(showing(base, SHOWS))
    .sort((x, y) => falling(x.score, y.score) || x.hypothesis.index - y.hypothesis.index);
}

/** Whether a hypothesis is one fault of the list, or none. */
export const isListed = ({ faults }: Hypothesis): boolean =>
  faults.length < 2 && !UNPAIRED.has(faults[0]?.family ?? '');

/** A fault in one of its sizes: the first in a list. */
function isFirstOfFault<T>(of: (one: T) => Hypothesis): (one: T) => boolean {
  const met = new Set<string | undefined>();
  return (one) => {
    const id = of(one).faults[0]?.id;
    return !met.has(id) && met.add(id) !== undefined;
  };
}

/** Largest first; what differs by rounding alone is equal, so that the order of the readings does not matter. */
const falling = (one: number, other: number): number =>
  Math.round(1e7 * other) - Math.round(1e7 * one);

interface Ranked {
  readonly x: Partner;
  readonly y: Partner;
  readonly rank: number;
}

/** The `most` best pairs by their priors and what `worth` says of each reading that one explains so well and the other so well. */
function rankedPairs(
  partners: readonly Partner[],
  worth: (one: number, other: number, at: number) => number,
  most: number,
): readonly Ranked[] {
  const pairs: Ranked[] = [];
  partners.forEach((x, i) => {
    for (const y of partners.slice(0, i)) {
      if (x.hypothesis.faults[0]?.remedy.key === y.hypothesis.faults[0]?.remedy.key) continue;
      let rank = x.hypothesis.logPrior + y.hypothesis.logPrior;
      for (let at = 0; at < x.apart.length; at += 1)
        rank += worth(x.apart[at] as number, y.apart[at] as number, at);
      pairs.push({ x, y, rank });
    }
  });
  return pairs
    .sort(
      (one, other) =>
        falling(one.rank, other.rank) ||
        one.x.hypothesis.index - other.x.hypothesis.index ||
        one.y.hypothesis.index - other.y.hypothesis.index,
    )
    .slice(0, most);
}

const both = ({ x, y }: Ranked, count: number): Hypothesis =>
  x.hypothesis.index < y.hypothesis.index
    ? pair(x.hypothesis, y.hypothesis, count)
    : pair(y.hypothesis, x.hypothesis, count);

/** The same where more is looked through, each by few solved guitars. */
const MORE_PARTNERS = 400;
const MORE_PAIRS = 1500;
/** ln of what is taken for granted short of the best explanation of a reading, until the pair itself is solved. */
const GRANTED = 2;
/** Pairs that come out so much below the best explanation known, in nats, are dropped. */
const BELOW = 6;

/** The same for a fault that shows plainly in no reading by itself: how many of the best partners it is put beside, and how many such faults, each in one size. */
const HIDING = 30;
const HIDDEN = 100;

export interface Pairs {
  /**
   * Pairs that may explain together what neither does alone: each fault is scored reading by reading, and a pair is ranked as if every
   * reading followed whichever of the two explains it better. Pairs of which one fault shows in no reading add nothing but their prior
   * and are left out: they would not change which repair comes first.
   */
  readonly likely: readonly Hypothesis[];
  /** How much worse the readings are explained by the likeliest single fault of the list than each by the one that does it best, nats. */
  readonly unexplained: number;
  /** How badly that fault explains the one reading that it explains worst: ln of its likelihood. */
  readonly worst: number;
  /**
   * Pairs that show together what neither shows alone: two paths in parallel, each cut, or one fault that hides another. A reading
   * that neither explains is first taken for explained; then the pair's own guitar is solved for those readings, the one most taken for
   * granted first, until the pair is out of the running against `rival`, the best explanation known, with each reading by itself.
   * Faults that show plainly in no reading by themselves, as a broken wire behind a switch that another fault has led elsewhere, are
   * put beside those that explain most.
   */
  joint(rival: Hypothesis): Rests<readonly Hypothesis[]>;
  /** Those of a list that are not out of the running against `rival`, with each reading by itself: the one hardest to explain first. */
  inTheRunning(list: readonly Hypothesis[], rival: Hypothesis): Rests<readonly Hypothesis[]>;
}

/** Pairs of single faults; `scores` are ln of the singles' weights, `count` is how many readings there are. */
export function pairsOf(
  scorer: Scorer,
  singles: readonly Hypothesis[],
  scores: readonly number[],
  count: number,
): Pairs {
  const partners = partnersOf(scorer, singles, scores, count);
  const best = Array.from({ length: count }, (_, at) =>
    partners.reduce(
      (most, { apart }) => Math.max(most, apart[at] as number),
      scorer.alone(singles[0] as Hypothesis, at),
    ),
  );
  const lead = singles
    .filter(isListed)
    .reduce((x, y) => ((scores[y.index] as number) > (scores[x.index] as number) ? y : x));
  const knownOf = (rival: Hypothesis): number =>
    apartOf(scorer, rival, count).reduce((sum, value) => sum + value, rival.logPrior);
  const explained = (scores[lead.index] as number) - lead.logPrior;
  return {
    likely: rankedPairs(
      partners.slice(0, PARTNERS),
      (one, other) => Math.max(one, other),
      PAIRS,
    ).map((one) => both(one, singles.length)),
    unexplained: best.reduce((sum, value) => sum + value, 0) - explained,
    worst: Math.min(0, ...apartOf(scorer, lead, count)),
    joint: (rival) => {
      const few = partners.slice(0, MORE_PARTNERS);
      const healthy = apartOf(scorer, singles[0] as Hypothesis, count);
      const isPlain = showing(healthy, PLAINLY);
      const apart = new Map(partners.map((one) => [one.hypothesis, one.apart]));
      const hidden = singles
        .slice(1)
        .filter(isListed)
        .map((hypothesis) => ({ hypothesis, apart: apart.get(hypothesis) ?? healthy }))
        .filter((one) => !isPlain(one))
        .sort(
          ({ hypothesis: x }, { hypothesis: y }) =>
            falling(x.logPrior, y.logPrior) || x.index - y.index,
        )
        .filter(isFirstOfFault(({ hypothesis }) => hypothesis))
        .slice(0, HIDDEN);
      return jointOf(scorer, few, hidden, best, singles.length, knownOf(rival));
    },
    inTheRunning: (list, rival) => inTheRunning(scorer, best, list, knownOf(rival)),
  };
}

function* jointOf(
  scorer: Scorer,
  partners: readonly Partner[],
  hidden: readonly Partner[],
  best: readonly number[],
  count: number,
  known: number,
): Rests<readonly Hypothesis[]> {
  const granted = best.map((value) => value - GRANTED);
  const worth = (one: number, other: number, at: number) =>
    Math.max(one, other, granted[at] as number);
  const alone = ({ hypothesis, apart }: Partner): number =>
    apart.reduce((sum, value, at) => sum + worth(value, value, at), hypothesis.logPrior);
  const hiding = partners
    .map((x) => ({ x, rank: alone(x) }))
    .sort(
      (one, other) =>
        falling(one.rank, other.rank) || one.x.hypothesis.index - other.x.hypothesis.index,
    )
    .filter(isFirstOfFault(({ x }) => x.hypothesis))
    .slice(0, HIDING)
    .flatMap(({ x, rank }) =>
      hidden
        .filter((y) => x.hypothesis.faults[0]?.remedy.key !== y.hypothesis.faults[0]?.remedy.key)
        .map((y): Ranked => ({ x, y, rank: rank + y.hypothesis.logPrior })),
    );
  const found: Hypothesis[] = [];
  const met = new Set<number>();
  for (const one of [...rankedPairs(partners, worth, MORE_PAIRS), ...hiding]) {
    const joined = both(one, count);
    if (met.has(joined.index)) continue;
    met.add(joined.index);
    if (isStillIn(scorer, granted, one, joined, known)) found.push(joined);
    yield;
  }
  return found;
}

function* inTheRunning(
  scorer: Scorer,
  best: readonly number[],
  list: readonly Hypothesis[],
  known: number,
): Rests<readonly Hypothesis[]> {
  const hardestFirst = [...best.entries()].sort((one, other) => falling(other[1], one[1]));
  const found: Hypothesis[] = [];
  for (const one of list) {
    let rank = best.reduce((sum, value) => sum + value, one.logPrior);
    const holds = hardestFirst.every(([at, most]) => {
      rank += scorer.alone(one, at) - most;
      return rank > known - BELOW;
    });
    if (holds) found.push(one);
    yield;
  }
  return found;
}

/** Whether the pair does not fall behind `known`, the best explanation, while the readings that neither of the two explains are solved for. */
function isStillIn(
  scorer: Scorer,
  granted: readonly number[],
  one: Ranked,
  joined: Hypothesis,
  known: number,
): boolean {
  const credit = granted
    .map((least, at) => ({
      at,
      least,
      gap: least - Math.max(one.x.apart[at] as number, one.y.apart[at] as number),
    }))
    .filter(({ gap }) => gap > 0)
    .sort((x, y) => y.gap - x.gap);
  if (credit.length === 0) return false;
  let rank = joined.logPrior + one.rank - one.x.hypothesis.logPrior - one.y.hypothesis.logPrior;
  for (const [place, { at, least }] of credit.entries()) {
    rank += scorer.alone(joined, at) - least;
    // What is left may yet be explained better than was granted.
    const left = credit.length - 1 - place;
    if (rank + left * GRANTED < known - BELOW) return false;
  }
  return true;
}
