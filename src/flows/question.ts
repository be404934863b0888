import { type Bits, bits } from '../circuit/units.ts';
import type { Assessment, Expectation, NextReading } from '../diagnosis/assessment.ts';
import type { Ask } from '../readings/reading.ts';
import { sameAsk } from './acts.ts';
import type { Work } from './work.ts';

/** What the screen asks now, and on whose account: the hunt's, a repair's, or the person's own. */
export interface Question {
  readonly purpose: 'hunt' | 'recheck' | 'own';
  readonly ask: Ask;
  /** Empty for the person's own reading: the screen words it. */
  readonly askText: string;
  readonly why: string;
  readonly expected: Expectation;
  /** What the answer is expected to tell. None for the person's own reading. */
  readonly worthBits?: Bits;
}

/** Below this an answer hardly moves the belief: a seventh of a yes or no. */
const LITTLE: Bits = bits(0.15);

/** True where the hunt itself asks, and its best reading is worth little. */
export const tellsLittle = ({ purpose, worthBits }: Question): boolean =>
  purpose === 'hunt' && worthBits !== undefined && worthBits < LITTLE;

/** What failed before a repair is asked again before anything new. Null when the engine asks for nothing. */
export function questionFrom(work: Work, assessment: Assessment): Question | null {
  const recheck = work.repairs.length > 0 ? firstOpen(work, assessment.recheck) : undefined;
  if (recheck) return { purpose: 'recheck', ...asked(recheck) };
  const next = assessment.verdict ? undefined : firstOpen(work, assessment.next);
  return next ? { purpose: 'hunt', ...asked(next) } : null;
}

const firstOpen = (work: Work, asks: readonly NextReading[]): NextReading | undefined =>
  asks.find(({ ask }) => !work.refused.some((refused) => sameAsk(refused, ask)));

const asked = ({ ask, askText, why, expected, worthBits }: NextReading) => ({
  ask,
  askText,
  why,
  expected,
  worthBits,
});
