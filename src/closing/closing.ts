import type { Ohms, Seconds } from '../circuit/units.ts';
import type { Evidence, Expectation, LearnedValue } from '../diagnosis/assessment.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import type { Change } from './compare.ts';
import type { Stage } from './stage.ts';
import type { Hidden } from './unseen.ts';

/** All that the closing check is told: the evidence of the job, and how far the guitar is put together. */
export interface ClosingEvidence extends Omit<Evidence, 'access'> {
  readonly stage: Stage;
  /** The person has ended it: the record tells what the readings taken show, be it all of the list or not. */
  readonly ended?: boolean;
  /** Readings of the check before this one, to be compared with. */
  readonly before?: readonly Reading[];
}

/**
 * How one reading of the list stands: not taken often enough yet, as expected, off and to be taken once more, or off for good.
 */
export type Mark = 'open' | 'fits' | 'again' | 'failed';

export interface ClosingItem {
  readonly ask: Ask;
  readonly askText: string;
  /** What a healthy guitar shows, in words. */
  readonly expected: Expectation;
  /** What passes, in ohms, given all that was read so far: four deviations either way. Absent where the answer is no figure. */
  readonly passes?: { readonly low: Ohms; readonly high: Ohms };
  readonly times: number;
  /** How often it was taken since a repair could have changed it. */
  readonly taken: number;
  readonly mark: Mark;
  /** Each answer in words, oldest first. */
  readonly answers: readonly string[];
  /** Ids of the readings that answer it. */
  readonly readings: readonly string[];
}

export interface Closing {
  readonly items: readonly ClosingItem[];
  /** Readings in the list, each as often as it is taken, and how few any list needs that shows the same. */
  readonly readings: number;
  readonly atLeast: number;
  /** For all of the list, and for what is left of it. */
  readonly effort: Seconds;
  readonly left: Seconds;
  readonly state: 'checking' | 'failed' | 'passed';
  /** The head of the list: how many items, their readings, the share of what goes wrong that they show, and whether all of them fit. */
  readonly first: {
    readonly items: number;
    readonly readings: number;
    readonly share: number;
    readonly effort: Seconds;
    readonly passed: boolean;
  };
  /**
   * Faults of one kind that the list rules out once it is through, and what it cannot see, in words. Of a check that was ended
   * before, what the readings taken rule out.
   */
  readonly ruledOut: readonly string[];
  readonly cannotSee: readonly Hidden[];
  readonly learned: readonly LearnedValue[];
  /** What reads otherwise than at the check before. */
  readonly changes: readonly Change[];
}
