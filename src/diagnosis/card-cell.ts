import type { Circuit } from '../circuit/circuit.ts';
import type { Ask } from '../readings/reading.ts';
import type { Expectation } from './assessment.ts';
import { healthy } from './card-basis.ts';
import type { Settings } from './card-stands.ts';
import { expectationOf, type Spread } from './expect.ts';
import { THRESHOLDS } from './likelihood.ts';
import type { Predictor } from './predictor.ts';

/** One figure of the card: what to read, and what a guitar as intended shows. */
export interface CardCell {
  readonly ask: Ask;
  readonly expected: Expectation;
  /** Whether a continuity tester sounds: with every meter of the trade, with some, or with none. */
  readonly beeps: 'yes' | 'some' | 'no';
}

/** What all parts of a card are worked out from. */
export interface CardBench {
  readonly circuit: Circuit;
  readonly predictor: Predictor;
  readonly spread: Spread;
  readonly settings: Settings;
}

export function cellOf({ predictor, spread }: CardBench, ask: Ask): CardCell {
  const expected = expectationOf(predictor.predict(healthy, ask), ask, spread);
  const [least, most] = [THRESHOLDS[0] as number, THRESHOLDS.at(-1) as number];
  const { low, high } = expected;
  const beeps =
    low === undefined || high === undefined || low > most ? 'no' : high < least ? 'yes' : 'some';
  return { ask, expected, beeps };
}
