import { ohms } from '../circuit/units.ts';
import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import type { Ask, Reading, Seen } from '../readings/reading.ts';
import type { ClosingBench } from './plan.ts';

/** What a guitar shows without any noise: the middle of each figure and the likeliest word. */
export function answerOf(
  { predictor, healthy }: ClosingBench,
  ask: Ask,
  guitar: Hypothesis = healthy,
): Seen {
  const found = predictor.foretell(guitar, ask).predictions;
  const words = found.flatMap((one) => (one.type === 'choice' ? [one.chances] : []));
  const word = Object.entries(words[0] ?? {}).toSorted(([, x], [, y]) => y - x)[0]?.[0];
  const level = found.find((one) => one.type === 'level');
  const figure = level ? ohms(Math.exp(level.mean)) : 'open';
  switch (ask.kind) {
    case 'ohms':
      return { kind: 'ohms', ohms: figure };
    case 'turn':
      return { kind: 'turn', how: word as 'smooth', peak: figure };
    case 'flex':
      return { kind: 'flex', how: word as 'steady' };
    case 'tap':
      return { kind: 'tap', swing: word as 'plus' };
    case 'touch':
      return { kind: 'touch', hum: word as 'down' };
    case 'listen':
      return { kind: 'listen', heard: word as 'normal' };
    default:
      throw new Error(`No closing check asks for ${ask.kind}.`);
  }
}

/** Readings in the order given, each a second after the one before. */
export const readingsOf = (answers: readonly { ask: Ask; seen: Seen }[]): readonly Reading[] =>
  answers.map(({ ask, seen }, at) => ({
    id: `r${at + 1}`,
    ask,
    seen,
    at: new Date(Date.UTC(2030, 0, 1, 12, 0, at)).toISOString(),
    round: 0,
  }));
