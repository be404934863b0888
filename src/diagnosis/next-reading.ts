import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { learnedBy } from './belief.ts';
import { effortOf } from './effort.ts';
import { agreement, clarity, hasSign, type SignAsk, secondSigns } from './first-sign.ts';
import type { Group } from './groups.ts';
import { mixed, type Signs, signsOf } from './known-signs.ts';
import type { Learned } from './levels.ts';
import { isEndgame, playedOut, secondsWith } from './play-out.ts';
import { type Member, playOf } from './players.ts';
import type { Foretold, Predictor } from './predictor.ts';
import { isDoneAnew } from './repeats.ts';
import type { Rests } from './rests.ts';
import { perEffort, type Rule } from './rule.ts';
import { entropyOf, expectedEntropy, type Foreseen } from './worth.ts';

export interface Ranked {
  readonly ask: Ask;
  readonly bits: number;
  readonly seconds: number;
  readonly rank: number;
}

/** Hypotheses whose predictions are weighed. */
const PANEL = 300;
/**
 * Rounds of weighing: the few heaviest hypotheses weigh every ask, more of them the asks that these like best. The last are weighed once
 * more with the learned part values. Each: how many hypotheses, and how many asks stay.
 */
const ROUNDS = [
  { by: 30, stay: 50 },
  { by: 100, stay: 24 },
  { by: PANEL, stay: 10 },
] as const;

/** The readings most worth asking now, best first. Rests after each that it has weighed. */
export function* rankReadings(
  predictor: Predictor,
  groups: readonly Group[],
  asks: readonly Ask[],
  readings: readonly Reading[],
  rule: Rule = perEffort,
): Rests<readonly Ranked[]> {
  if (asks.length === 0) return [];
  const last = readings.at(-1)?.ask ?? null;
  const panel = panelOf(groups, PANEL);
  const entropy = entropyOf(massOf(panel, groups.length));
  if (entropy < 1e-6) return [];
  const signs: Signs[] = [];
  for (const { weighed } of panel) {
    signs.push(signsOf(predictor, weighed, readings));
    yield;
  }
  const tapped = hasSign(readings, 'tap');
  const poled = hasSign(readings, 'pole');
  const scored = (
    ask: Ask,
    foreseen: readonly Foreseen[],
    seconds: number,
    before: number,
  ): Ranked => {
    const bits = Math.max(0, before - expectedEntropy(foreseen, groups.length)) / Math.LN2;
    const { kind } = ask;
    const rank = rule.rank({ kind, bits, seconds, foreseen, groups: groups.length });
    return { ask, bits, seconds, rank };
  };
  const ranked = (ask: Ask, foreseen: readonly Foreseen[], before = entropy): Ranked =>
    scored(ask, foreseen, effortOf(predictor.layout, ask, last), before);
  const needsSecond = (ask: Ask): ask is SignAsk =>
    (ask.kind === 'tap' && !tapped) || (ask.kind === 'pole' && !poled);
  const lead = panel[0]?.weighed.hypothesis;
  const clarityOf = (ask: SignAsk): number =>
    lead ? clarity(predictor.foretell(lead, ask).predictions[0]) : 0;
  /** A first sign is worth what it tells together with the second one, and takes the trouble of both. */
  const rankFirst = (ask: SignAsk, members: readonly Member[], before: number): Ranked =>
    secondSigns(ask, asks, clarityOf)
      .map((second) =>
        scored(
          ask,
          together(predictor, members, ask, second),
          effortOf(predictor.layout, ask, last) + effortOf(predictor.layout, second, ask),
          before,
        ),
      )
      .reduce((x, y) => (y.rank > x.rank ? y : x), { ask, bits: 0, seconds: 0, rank: 0 });
  const beforeLearning = (ask: Ask, members: readonly Member[]): readonly Foreseen[] =>
    ask.kind === 'tap' || ask.kind === 'pole'
      ? signed(predictor, members, signs, ask)
      : roughly(predictor, members, groups.length, ask);
  function* best(
    list: readonly Ask[],
    members: readonly Member[],
    count: number,
  ): Rests<readonly Ask[]> {
    const before = entropyOf(massOf(members, groups.length));
    const all: Ranked[] = [];
    for (const ask of list) {
      all.push(
        needsSecond(ask)
          ? rankFirst(ask, members, before)
          : ranked(ask, beforeLearning(ask, members), before),
      );
      yield;
    }
    return all
      .sort((x, y) => y.rank - x.rank)
      .slice(0, count)
      .map(({ ask }) => ask);
  }
  let rough = asks;
  let wide = asks;
  for (const { by, stay } of ROUNDS) {
    [wide, rough] = [rough, yield* best(rough, panel.slice(0, by), stay)];
  }
  const learned: Learned[] = [];
  for (const { weighed } of panel) {
    learned.push(learnedBy(predictor, weighed.hypothesis, readings));
    yield;
  }
  const asLearned = (ask: Ask): readonly Foreseen[] => {
    const key = askKey(ask);
    return panel.map(({ weighed, group }, at): Foreseen => {
      const { predictions } = predictor.foretell(weighed.hypothesis, ask, key);
      return {
        weight: weighed.probability,
        group,
        parts: predictions.map((prediction) => {
          if (prediction.type !== 'level')
            return { prediction: mixed(prediction, signs[at] as Signs), shift: 0, variance: 0 };
          const { shift, variance } = (learned[at] as Learned).along(prediction.slopes);
          return { prediction, shift, variance: variance + prediction.noise ** 2 };
        }),
      };
    });
  };
  const finalists: Ranked[] = [];
  for (const ask of rough) {
    finalists.push(needsSecond(ask) ? rankFirst(ask, panel, entropy) : ranked(ask, asLearned(ask)));
    yield;
  }
  finalists.sort((x, y) => y.rank - x.rank);
  const { cost } = rule;
  // What a first sign tells shows with the second one alone.
  const looksFurther = cost && isEndgame(massOf(panel, groups.length));
  if (!looksFurther || finalists.slice(0, 2).some(({ ask }) => needsSecond(ask))) return finalists;
  yield;
  const play = playOf({ predictor, panel, signs, asks: wide, last, cost });
  return playedOut(finalists, ({ ask }) => secondsWith(play, wide.indexOf(ask), -1));
}

/** The heaviest hypotheses, each with its group's place. */
function panelOf(groups: readonly Group[], count: number): readonly Member[] {
  const all = groups.flatMap(({ members }, group) =>
    members.map((weighed) => ({ weighed, group })),
  );
  all.sort((x, y) => y.weighed.probability - x.weighed.probability);
  let mass = 0;
  const total = all.reduce((sum, one) => sum + one.weighed.probability, 0);
  const panel: Member[] = [];
  for (const one of all) {
    if (panel.length >= count || mass > 0.998 * total) break;
    panel.push(one);
    mass += one.weighed.probability;
  }
  return panel;
}

function massOf(panel: readonly Member[], groups: number): number[] {
  const mass = new Array<number>(groups).fill(0);
  for (const { weighed, group } of panel)
    mass[group] = (mass[group] as number) + weighed.probability;
  return mass;
}

/** The panel's predictions before what was learned is taken into account: members that predict the same and want the same repair are one. */
function roughly(
  predictor: Predictor,
  panel: readonly Member[],
  groups: number,
  ask: Ask,
): readonly Foreseen[] {
  const key = askKey(ask);
  const merged = new Map<number, { weight: number; group: number; parts: Foreseen['parts'] }>();
  for (const { weighed, group } of panel) {
    const foretold = predictor.foretell(weighed.hypothesis, ask, key);
    const name = foretold.id * groups + group;
    const known = merged.get(name);
    if (known) known.weight += weighed.probability;
    else merged.set(name, { weight: weighed.probability, group, parts: partsOf(foretold) });
  }
  return [...merged.values()];
}

/** What a class of hypotheses foretells before any reading: the same objects each time, as their outcomes are laid out once. */
const parts = new WeakMap<Foretold, Foreseen['parts']>();

function partsOf(foretold: Foretold): Foreseen['parts'] {
  const known = parts.get(foretold);
  if (known) return known;
  const made = foretold.predictions.map((prediction, at) => ({
    prediction,
    shift: 0,
    variance: foretold.variances[at] as number,
  }));
  parts.set(foretold, made);
  return made;
}

/** What two readings of a sign foretell together. */
function together(
  predictor: Predictor,
  panel: readonly Member[],
  first: SignAsk,
  second: SignAsk,
): readonly Foreseen[] {
  const [one, other] = [askKey(first), askKey(second)];
  return panel.map(({ weighed: { hypothesis, probability }, group }) => ({
    weight: probability,
    group,
    parts: agreementOf(
      predictor.foretell(hypothesis, first, one),
      predictor.foretell(hypothesis, second, other),
    ),
  }));
}

const agreements = new WeakMap<Foretold, WeakMap<Foretold, Foreseen['parts']>>();

function agreementOf(first: Foretold, second: Foretold): Foreseen['parts'] {
  const beside = agreements.get(first) ?? new WeakMap<Foretold, Foreseen['parts']>();
  agreements.set(first, beside);
  const known = beside.get(second);
  if (known) return known;
  const prediction = agreement(first.predictions[0], second.predictions[0]);
  const made = [{ prediction, shift: 0, variance: 0 }];
  beside.set(second, made);
  return made;
}

/** What is foretold of one more sign by each of the panel, from where the earlier ones say that its guitar starts. */
function signed(
  predictor: Predictor,
  panel: readonly Member[],
  signs: readonly Signs[],
  ask: Ask,
): readonly Foreseen[] {
  const key = askKey(ask);
  return panel.map(({ weighed: { hypothesis, probability }, group }, at) => ({
    weight: probability,
    group,
    parts: predictor.foretell(hypothesis, ask, key).predictions.map((one) => ({
      prediction: mixed(one, signs[at] as Signs),
      shift: 0,
      variance: 0,
    })),
  }));
}

/**
 * How often the same is done under the same probes: a loose joint may hold once or twice, a swing is easily misjudged, and a probe
 * that slips looks like a worn track. */
const AT_MOST = 3;

/** Asks that were answered or refused are not asked again, but for a movement that showed nothing, a swing, and a knob that scratched. */
export function openAsks(
  asks: readonly Ask[],
  readings: readonly Reading[],
  refused: readonly Ask[],
): readonly Ask[] {
  const done = new Set(refused.map(askKey));
  const often = new Map<string, number>();
  for (const reading of readings) {
    const { ask, seen } = reading;
    const key = askKey(ask);
    const times = (often.get(key) ?? 0) + 1;
    const again = isDoneAnew(reading) && !(seen.kind === 'flex' && seen.how === 'jumps');
    if (!again || times >= AT_MOST) done.add(key);
    else often.set(key, times);
  }
  return asks.filter((ask) => !done.has(askKey(ask)));
}
