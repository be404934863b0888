import type { Circuit } from '../circuit/circuit.ts';
import type { Assessment } from '../diagnosis/assessment.ts';
import type { Ask, Meter, Seen } from '../readings/reading.ts';
import { type Answer, withAnswers } from './acts.ts';
import type { Change } from './change.ts';
import type { Doubt } from './doubt.ts';
import type { Question } from './question.ts';
import type { Work } from './work.ts';

/**
 * The hunt as a conversation. Where it stands follows from the work alone, so a hunt that was cut off
 * goes on from what is stored; the rest of the context is lost without harm.
 */
export interface HuntContext {
  readonly work: Work;
  readonly assessment: Assessment | null;
  /** Of `assessment` what is believed is there; what to read next, the verdict and all that hangs on them are not yet. */
  readonly halfAssessed: boolean;
  /** The belief before the newest reading, and that reading, until its effect was shown. */
  readonly newest: { readonly id: string; readonly before: Assessment } | null;
  readonly change: Change | null;
  /** What the person wants next, said while the newest reading was still being stored. */
  readonly wish: Wish | null;
  readonly question: Question | null;
  /** What stands in the display of the keypad. */
  readonly typed: string;
  readonly doubt: Doubt | null;
  /** The ask of the person's own reading while its expectation is worked out. */
  readonly ownAsk: Ask | null;
  /** The sentence of the last failure, fit to show. */
  readonly failure: string | null;
  /** The work before the last undo, until the next act. */
  readonly takenBack: Work | null;
  /** The person was told that opening the guitar would tell more, and goes on from outside. */
  readonly staysClosed: boolean;
}

/** The next reading, or one of the person's own. */
export type Wish = 'next' | 'own';

/** What the person does. `at` is the moment, ISO 8601, wherever something is kept. */
export type HuntEvent =
  | { readonly type: 'HEARD'; readonly answers: readonly Answer[]; readonly at: string }
  /** Seen beside the questions, as on the drawing of the wiring: kept wherever the hunt stands. */
  | { readonly type: 'SAW'; readonly answers: readonly Answer[]; readonly at: string }
  | { readonly type: 'SKIP' }
  | { readonly type: 'CAUTIONS_READ'; readonly at: string }
  | { readonly type: 'TYPE'; readonly text: string }
  | { readonly type: 'ENTER'; readonly seen: Seen; readonly at: string }
  | { readonly type: 'ENTERED_RIGHT'; readonly at: string }
  | { readonly type: 'TAKE_BETTER'; readonly at: string }
  | { readonly type: 'CANNOT_REACH'; readonly at: string }
  | { readonly type: 'JUMPS' }
  | { readonly type: 'JUMPS_AT'; readonly site: string; readonly at: string }
  | { readonly type: 'HELP' }
  | { readonly type: 'BACK' }
  | { readonly type: 'VOLUNTEER' }
  | { readonly type: 'OWN_ASK'; readonly ask: Ask }
  | { readonly type: 'OPENED'; readonly at: string }
  | { readonly type: 'STAY_CLOSED' }
  | { readonly type: 'ON' }
  | { readonly type: 'TO_REPAIR' }
  | {
      readonly type: 'REPAIRED';
      readonly repair: string;
      readonly title: string;
      readonly at: string;
    }
  | { readonly type: 'CLOSE'; readonly at: string }
  | {
      readonly type: 'CORRECT';
      readonly circuit: Circuit;
      readonly meter: Meter;
      readonly at: string;
    }
  | { readonly type: 'REOPEN'; readonly at: string }
  /** Another tab wrote to this job: the work as it stands on the disk. */
  | { readonly type: 'CHANGED_ELSEWHERE'; readonly work: Work }
  | { readonly type: 'RETRY' }
  | { readonly type: 'GO_ON_UNSAVED' }
  | { readonly type: 'UNDO'; readonly at: string }
  | { readonly type: 'PUT_BACK' };

/** An act changes the work; what was thought of the old work is dropped, save the question on the screen. */
export const acted = (work: Work): Partial<HuntContext> => ({
  work,
  takenBack: null,
  doubt: null,
  newest: null,
  change: null,
  wish: null,
  ownAsk: null,
  failure: null,
});

/** Stores answers to the question on the screen, and remembers the belief before them. */
export function answered(context: HuntContext, answer: Answer, at: string): Partial<HuntContext> {
  const work = withAnswers(context.work, [answer], at);
  const id = work.readings.at(-1)?.id;
  const newest = id && context.assessment ? { id, before: context.assessment } : null;
  return { ...acted(work), newest, typed: '' };
}

/** A conversation at its beginning, or taken up again: all but the work is unknown. */
export const conversationOn = (work: Work): HuntContext => ({
  work,
  assessment: null,
  halfAssessed: false,
  newest: null,
  change: null,
  wish: null,
  question: null,
  typed: '',
  doubt: null,
  ownAsk: null,
  failure: null,
  takenBack: null,
  staysClosed: false,
});
