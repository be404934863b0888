import { partTitle } from '../circuit/names.ts';
import { believe, learnedBy } from '../diagnosis/belief.ts';
import type { Weighed } from '../diagnosis/hypothesis.ts';
import { askText, observe, seenText } from '../readings/index.ts';
import type { Reading } from '../readings/reading.ts';
import { probesText } from '../readings/words.ts';
import { sorterWords } from '../words/en/sorter.ts';
import type { PickupPredictor } from './foretelling.ts';

/** Two readings that cannot both be right. */
export interface Contradiction {
  /** Ids of the two; the one to repeat comes first. */
  readonly readings: readonly [string, string];
  /** The two in words, in the same order: what was read where, and what was seen. */
  readonly texts: readonly [string, string];
  /** The act to repeat, in words. */
  readonly repeatText: string;
}

/** A reading that the likeliest candidate gives less than this chance is in doubt. */
const DOUBTED = 0.08;
/** Candidates that are asked for it. */
const HEAVIEST = 120;
/** What holds without one reading is not far behind with it: so many of the likeliest. */
const NEAR = 300;
/** Without the other reading it must be at home. */
const AT_HOME = 0.5;

/**
 * Leaves out one reading after another. The reading that fits worst with the likeliest candidate is one of the two; the other is the one
 * without which it would fit best. A tap is repeated before a figure, as it goes wrong more often.
 */
export function contradictionIn(
  predictor: PickupPredictor,
  readings: readonly Reading[],
  live: readonly Weighed[],
): Contradiction | null {
  if (readings.length < 2) return null;
  const chances = readings.map((reading) =>
    chanceOf(predictor, live.slice(0, 1), reading, without(readings, reading)),
  );
  const least = Math.min(...chances);
  if (least >= DOUBTED) return null;
  const doubted = readings[chances.indexOf(least)] as Reading;
  const near = live.slice(0, NEAR).map(({ hypothesis }) => hypothesis);
  let [other, fits]: [Reading | null, number] = [null, 0];
  for (const left of readings) {
    if (left === doubted) continue;
    const rest = without(readings, left);
    const belief = believe(predictor, near, rest).weighed;
    const chance = chanceOf(predictor, belief, doubted, without(rest, doubted));
    if (chance > fits) [other, fits] = [left, chance];
  }
  if (!other || fits < AT_HOME) return null;
  const repeatOther = other.seen.kind === 'tap' && doubted.seen.kind !== 'tap';
  const [repeat, kept] = repeatOther ? [other, doubted] : [doubted, other];
  return {
    readings: [repeat.id, kept.id],
    texts: [wordsOf(predictor, repeat), wordsOf(predictor, kept)],
    repeatText: askText(predictor.layout, repeat.ask),
  };
}

/** "Ohms, R on the red lead, B on the green lead: 4.20 kΩ". */
function wordsOf({ layout }: PickupPredictor, { ask, seen }: Reading): string {
  const say = sorterWords();
  const act =
    ask.kind === 'tap'
      ? say.tapOnThePart(partTitle(layout, ask.coil))
      : ask.kind === 'beep'
        ? say.beep
        : say.ohms;
  return 'red' in ask
    ? say.readAt(act, probesText(layout, ask.red, ask.black), seenText(seen))
    : say.read(act, seenText(seen));
}

const without = (readings: readonly Reading[], one: Reading): readonly Reading[] =>
  readings.filter((reading) => reading !== one);

/** Chance of what was seen under the weighed candidates: of a word as it is, of a figure that it lies as near as it does or farther. */
function chanceOf(
  predictor: PickupPredictor,
  weighed: readonly Weighed[],
  { ask, seen }: Reading,
  others: readonly Reading[],
): number {
  const [observed] = observe(seen);
  let [sum, total] = [0, 0];
  for (const { hypothesis, probability } of weighed.slice(0, HEAVIEST)) {
    if (total > 0.999) break;
    total += probability;
    const [prediction] = predictor.predict(hypothesis, ask);
    if (!prediction || !observed) continue;
    let chance = 0;
    if (prediction.type === 'choice' && observed.type === 'choice')
      chance = prediction.chances[observed.word] ?? 0;
    else if (prediction.type === 'threshold' && observed.type === 'threshold')
      chance = prediction.ohms < 60 === observed.beeps ? 1 : 0.02;
    else if (prediction.type === 'over' && observed.type === 'over') chance = 1;
    else if (prediction.type === 'level' && observed.type === 'level') {
      const { shift, variance } = learnedBy(predictor, hypothesis, others).along(prediction.slopes);
      const z =
        (observed.value - prediction.mean - shift) / Math.sqrt(variance + prediction.noise ** 2);
      chance = Math.abs(z) < 4 ? 1 : 0;
    }
    sum += probability * chance;
  }
  return total > 0 ? sum / total : 0;
}
