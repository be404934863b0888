import { askKey } from '../diagnosis/ask-key.ts';
import { learnedBy } from '../diagnosis/belief.ts';
import type { Learned } from '../diagnosis/levels.ts';
import { entropyOf, expectedEntropy, type Foreseen } from '../diagnosis/worth.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { effortOf } from './asks.ts';
import type { Candidate } from './candidates.ts';
import type { PickupPredictor } from './foretelling.ts';
import { type Played, readingsWith, seenOf } from './rollout.ts';

/** One candidate with its share of the belief and the number of the answer it stands for. */
export interface Standing {
  readonly candidate: Candidate;
  readonly probability: number;
  readonly answer: number;
}

export interface Worth {
  readonly ask: Ask;
  readonly bits: number;
  readonly seconds: number;
  readonly score: number;
}

/** Readings are what is counted; seconds part readings of like worth. */
const PER_SECOND = 0.0012;
/** Asks weighed again with what is known of the coils' sizes. */
const FINALISTS = 14;
/**
 * While more than this is open (bits), a tap is weighed by what it tells when it goes well: what went wrong shows later, and is asked
 * again only then. Weighed with its errors from the start, a tap would come after readings that leave more questions.
 */
const SEARCHING = 1;
/** Above this many candidates sizes tell them apart less than which leads conduct at all. */
const FEW = 250;

/** Readings that tell within so many bits of the best are played to the end; so many of them, by so many candidates. */
const ALIKE = 0.1;
const PLAYED = { asks: 16, candidates: 200 };

/** The readings most worth taking now, best first: bits about which lead does what. */
export function worthOf(
  predictor: PickupPredictor,
  all: readonly Standing[],
  asks: readonly Ask[],
  readings: readonly Reading[],
): readonly Worth[] {
  // Of the answers only those that are still in play are counted through.
  const numbers = new Map<number, number>();
  const standings = all.map(({ candidate, probability, answer }): Standing => {
    const number = numbers.get(answer) ?? numbers.size;
    numbers.set(answer, number);
    return { candidate, probability, answer: number };
  });
  const answers = numbers.size;
  const mass = new Array<number>(answers).fill(0);
  for (const { probability, answer } of standings)
    mass[answer] = (mass[answer] as number) + probability;
  const entropy = entropyOf(mass);
  const searching = entropy / Math.LN2 > SEARCHING;
  const weighed = (prediction: Prediction): Prediction =>
    searching ? withoutErrors(prediction) : prediction;
  const last = readings.at(-1)?.ask;
  const worth = (ask: Ask, foreseen: readonly Foreseen[]): Worth => {
    const bits = Math.max(0, entropy - expectedEntropy(foreseen, answers)) / Math.LN2;
    const seconds = effortOf(ask, last);
    return { ask, bits, seconds, score: bits - PER_SECOND * seconds };
  };
  const keys = asks.map(askKey);
  // One pickup is solved once and asked everything.
  const rows = standings.map(({ candidate }) =>
    asks.map((ask, at) => predictor.foretell(candidate, ask, keys[at])),
  );
  const probabilityOf = (row: number) => (standings[row] as Standing).probability;
  type Row = (typeof rows)[number];
  const foretold = (row: number, at: number) => (rows[row] as Row)[at] as Row[number];
  const rough = asks.map((ask, at) => {
    const merged = new Map<number, { weight: number; group: number; parts: Foreseen['parts'] }>();
    standings.forEach(({ probability, answer }, row) => {
      const { id, predictions, variances } = foretold(row, at);
      const name = id * answers + answer;
      const known = merged.get(name);
      if (known) known.weight += probability;
      else
        merged.set(name, {
          weight: probability,
          group: answer,
          parts: predictions.map((prediction, part) => ({
            prediction: weighed(prediction),
            shift: 0,
            variance: variances[part] as number,
          })),
        });
    });
    return { at, worth: worth(ask, [...merged.values()]) };
  });
  rough.sort((x, y) => y.worth.score - x.worth.score);
  if (standings.length > FEW || !readings.some(({ seen }) => seen.kind === 'ohms'))
    return playedOut(rough.map(({ worth: one }) => one));
  const learned = standings.map(({ candidate }) => learnedBy(predictor, candidate, readings));
  const refined = rough
    .slice(0, FINALISTS)
    .map(({ at }) =>
      worth(
        asks[at] as Ask,
        standings.map(({ probability, answer }, row): Foreseen => {
          const { predictions } = foretold(row, at);
          return {
            weight: probability,
            group: answer,
            parts: predictions.map((prediction) => {
              if (prediction.type !== 'level')
                return { prediction: weighed(prediction), shift: 0, variance: 0 };
              const { shift, variance } = (learned[row] as Learned).along(prediction.slopes);
              return { prediction, shift, variance: variance + prediction.noise ** 2 };
            }),
          };
        }),
      ),
    )
    .sort((x, y) => y.score - x.score);
  return playedOut(refined);

  /** Those that tell about as much as the best, by the readings that each leaves to the end. */
  function playedOut(ranked: readonly Worth[]): readonly Worth[] {
    const [best] = ranked;
    if (!searching || !best) return ranked;
    const close = ranked.filter(({ bits }) => bits >= best.bits - ALIKE).slice(0, PLAYED.asks);
    if (close.length < 2) return ranked;
    const played = [...standings.keys()]
      .sort((x, y) => probabilityOf(y) - probabilityOf(x))
      .slice(0, PLAYED.candidates)
      .map((row): Played => {
        const { probability, answer } = standings[row] as Standing;
        const seen = Uint8Array.from(asks, (_, at) => seenOf(foretold(row, at).predictions[0]));
        return { weight: probability, answer, seen };
      });
    const cost = new Map(
      close.map((one) => [
        one,
        readingsWith(asks.indexOf(one.ask), played, asks.length) + PER_SECOND * one.seconds,
      ]),
    );
    const costOf = (one: Worth): number => cost.get(one) ?? Number.POSITIVE_INFINITY;
    return [...ranked].sort((x, y) => costOf(x) - costOf(y) || 0);
  }
}

/** The likeliest word alone. */
function withoutErrors(prediction: Prediction): Prediction {
  if (prediction.type !== 'choice') return prediction;
  const [word] = Object.entries(prediction.chances).reduce((x, y) => (y[1] > x[1] ? y : x));
  return { type: 'choice', chances: { [word]: 1 } };
}
