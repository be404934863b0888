import type { Ask } from '../readings/reading.ts';
import type { Foreseen } from './worth.ts';

/** What is known of a reading before it is taken. */
export interface Weighing {
  readonly kind: Ask['kind'];
  readonly bits: number;
  readonly seconds: number;
  readonly foreseen: readonly Foreseen[];
  /** How many answers there are to tell apart. */
  readonly groups: number;
}

/** How readings are ranked: the higher, the sooner it is asked. A campaign compares several. */
export type Rule = (one: Weighing) => number;

/**
 * Seconds of reading off, entering and thinking that are added to each act. A minute comes nearer to the best policy on small cases
 * (1.037 against 1.042 times its cost on 600 of them), but begins a hunt with a knob to turn where a reading at the jack does.
 */
const PER_ACT = 30;

/** Bits per second, so that one telling reading beats three cheap ones. */
export const perEffort: Rule = ({ bits, seconds }) => bits / (seconds + PER_ACT);

/** The same where the phone hears the beep: reading off and entering fall away, two thirds of what is added. */
export const byEarEffort: Rule = (one) =>
  perEffort(one.kind === 'beep' ? { ...one, seconds: one.seconds - (2 / 3) * PER_ACT } : one);
