import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { learnedBy } from './belief.ts';
import { effortOf } from './effort.ts';
import { clarity, hasSign, type SignAsk, secondSigns } from './first-sign.ts';
import type { Group } from './groups.ts';
import { mixed, type Signs, signsOf } from './known-signs.ts';
import type { Learned } from './levels.ts';
import { readBefore } from './measured-again.ts';
import { again, massOf, panelOf, roughly, signed, together } from './panel.ts';
import { isEndgame, playedOut, secondsWith } from './play-out.ts';
import { type Member, playOf } from './players.ts';
import type { Predictor } from './predictor.ts';
import type { Counted } from './repeats.ts';
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
/** Bits below which a figure is not read again: nobody measures twice for nothing. */
const WORTH_DOUBTING = 0.1;
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
  readings: readonly Counted[],
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
  const known = readBefore(asks, readings);
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
  const beforeLearning = (ask: Ask, members: readonly Member[]): readonly Foreseen[] => {
    const figures = known.get(ask);
    if (figures) return again(predictor, members, ask, figures);
    return ask.kind === 'tap' || ask.kind === 'pole'
      ? signed(predictor, members, signs, ask)
      : roughly(predictor, members, groups.length, ask);
  };
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
    const figures = known.get(ask);
    if (figures) return again(predictor, panel, ask, figures);
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
    const one = needsSecond(ask) ? rankFirst(ask, panel, entropy) : ranked(ask, asLearned(ask));
    if (!known.has(ask) || one.bits >= WORTH_DOUBTING) finalists.push(one);
    yield;
  }
  finalists.sort((x, y) => y.rank - x.rank);
  const { cost } = rule;
  // What a first sign tells shows with the second one alone, and a figure read again tells nothing where nothing goes wrong.
  const isPlayed = (ask: Ask) => !needsSecond(ask) && !known.has(ask);
  const looksFurther = cost && isEndgame(massOf(panel, groups.length));
  if (!looksFurther || !finalists.slice(0, 2).every(({ ask }) => isPlayed(ask))) return finalists;
  yield;
  const left = wide.filter((ask) => !known.has(ask));
  const play = playOf({ predictor, panel, signs, asks: left, last, cost });
  return playedOut(finalists, ({ ask }) =>
    known.has(ask) ? Number.POSITIVE_INFINITY : secondsWith(play, left.indexOf(ask), -1),
  );
}
