import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import type { Belief } from './belief.ts';
import type { Predictor } from './predictor.ts';
import type { Counted } from './repeats.ts';
import { scoresOf } from './rivals.ts';

/** ln of the likelihood below which a figure is likelier a slip, or taken with fingers on the tips, than sound. */
const LIKELIER_A_SLIP = -3;
/** So many figures are read again before a guitar is called another one than was drawn. */
const AT_MOST = 2;

/**
 * The figure to read again before it is said that nothing drawn explains them all: of those that were read once, the one that fits the
 * likeliest suspect worst. Null where there is none that fits badly, and where enough were read again.
 */
export function doubtedFigure(
  predictor: Predictor,
  { weighed }: Belief,
  readings: readonly Counted[],
  refused: readonly Ask[],
): Ask | null {
  const lead = weighed[0]?.hypothesis;
  if (!lead) return null;
  const figures = readings.filter(({ ask }) => ask.kind === 'ohms');
  const times = new Map<string, number>();
  for (const { ask, times: more = 1 } of figures)
    times.set(askKey(ask), (times.get(askKey(ask)) ?? 0) + more);
  if ([...times.values()].filter((one) => one > 1).length >= AT_MOST) return null;
  const closed = new Set(refused.map(askKey));
  const scores = scoresOf({ predictor, readings: figures }, lead);
  const [worst] = figures
    .map(({ ask }, at) => ({ ask, key: askKey(ask), score: scores[at] as number }))
    .filter(({ key, score }) => times.get(key) === 1 && !closed.has(key) && score < LIKELIER_A_SLIP)
    .sort((x, y) => x.score - y.score);
  return worst?.ask ?? null;
}
