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
 * Seconds added to each act. Half a minute goes into reading off, entering and thinking; the rest stands for the further act that an
 * answer leaves to be taken which tells only a part, as a ratio looks no further than one act. On 600 small cases that were searched for
 * the best policy there is, the rule then costs 1.037 times the best on average, with half a minute alone 1.042. With more, wires are
 * taken off in whole hunts that need not be.
 */
const PER_ACT = 60;

/** Bits per second, so that one telling reading beats three cheap ones. */
export const perEffort: Rule = ({ bits, seconds }) => bits / (seconds + PER_ACT);

/** The same where the phone hears the beep: reading off and entering fall away, two thirds of each act and of the act that may follow. */
export const byEarEffort: Rule = (one) =>
  perEffort(one.kind === 'beep' ? { ...one, seconds: one.seconds - (2 / 3) * PER_ACT } : one);
