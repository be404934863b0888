import type { Prediction } from '../readings/prediction.ts';

/** One candidate played to the end: its weight, its answer, and by ask what would be seen if nothing goes wrong, as a small number. */
export interface Played {
  readonly weight: number;
  readonly answer: number;
  readonly seen: Uint8Array;
}

/** Below this a threshold sounds, ohm. */
const BEEPS = 55;
/** Figures this far apart, in ln ohm, are told apart: half a coil from a whole one. */
const APART = 0.5;

/** What would be seen, as a number below 256. */
export function seenOf(prediction: Prediction | undefined): number {
  switch (prediction?.type) {
    case 'level':
      return 10 + Math.max(0, Math.round((prediction.mean + 3) / APART));
    case 'threshold':
      return prediction.ohms < BEEPS ? 1 : 2;
    case 'choice': {
      const [word] = Object.entries(prediction.chances).reduce((x, y) => (y[1] > x[1] ? y : x));
      return word === 'plus' ? 3 : word === 'minus' ? 4 : 5;
    }
    default:
      return 0;
  }
}

/**
 * Readings expected from here to the end, where `first` comes next and every reading after it is the one that tells most. The rule
 * that looks one reading ahead is so improved by playing it to the end (policy rollout: D. Bertsekas, Dynamic Programming and
 * Optimal Control, chapter on approximate dynamic programming; cited from memory).
 */
export function readingsWith(first: number, all: readonly Played[], asks: number): number {
  const total = weightOf(all);
  return 1 + split(all, first).reduce((sum, part) => sum + play(part, asks), 0) / total;
}

/** Expected readings times weight of these candidates, by the reading that tells most each time. */
function play(set: readonly Played[], asks: number): number {
  if (set.every(({ answer }) => answer === set[0]?.answer)) return 0;
  let [least, parts]: [number, Played[][] | null] = [Number.POSITIVE_INFINITY, null];
  for (let ask = 0; ask < asks; ask += 1) {
    if (set.every(({ seen }) => seen[ask] === set[0]?.seen[ask])) continue;
    const these = split(set, ask);
    const left = these.reduce((sum, part) => sum + openness(part), 0);
    if (left < least - 1e-12) [least, parts] = [left, these];
  }
  // No reading parts them: they count as known as well as they can be.
  if (!parts) return 0;
  return weightOf(set) + parts.reduce((sum, part) => sum + play(part, asks), 0);
}

function split(set: readonly Played[], ask: number): Played[][] {
  const parts = new Map<number, Played[]>();
  for (const one of set) {
    const seen = one.seen[ask] as number;
    const part = parts.get(seen);
    if (part) part.push(one);
    else parts.set(seen, [one]);
  }
  return [...parts.values()];
}

const weightOf = (set: readonly Played[]): number =>
  set.reduce((sum, { weight }) => sum + weight, 0);

/** Entropy of the answers times weight, nats. */
function openness(set: readonly Played[]): number {
  const mass = new Map<number, number>();
  for (const { weight, answer } of set) mass.set(answer, (mass.get(answer) ?? 0) + weight);
  const total = weightOf(set);
  let sum = total * Math.log(total);
  for (const one of mass.values()) sum -= one * Math.log(one);
  return sum;
}
