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

/** How readings are ranked. A campaign compares several ways. */
export interface Rule {
  /** The higher, the sooner it is asked. */
  rank(one: Weighing): number;
  /**
   * What one costs in all, seconds of effort and what every act takes: readings of like rank are played to the end by it. Where it is
   * absent nobody looks further than one reading.
   */
  cost?(one: Pick<Weighing, 'kind' | 'seconds'>): number;
}

/** Seconds of reading off, entering and thinking that are added to each act. */
const PER_ACT = 30;

/** Bits per second, so that one telling reading beats three cheap ones. */
const by = (cost: NonNullable<Rule['cost']>): Rule => ({
  rank: ({ bits, kind, seconds }) => bits / cost({ kind, seconds }),
  cost,
});
export const perEffort: Rule = by(({ seconds }) => seconds + PER_ACT);

/** The same where the phone hears the beep: reading off and entering fall away, two thirds of what is added. */
export const byEarEffort: Rule = by(
  ({ kind, seconds }) => seconds + (kind === 'beep' ? PER_ACT / 3 : PER_ACT),
);
