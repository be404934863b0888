import type { SiteId } from '../circuit/edit.ts';
import type { Closing, ClosingItem } from '../closing/closing.ts';
import type { Stage } from '../closing/stage.ts';
import type { Seen } from '../readings/reading.ts';
import { type Answer, sameAsk, withAnswers } from './acts.ts';
import { type Doubt, doubtIn } from './doubt.ts';
import type { Work } from './work.ts';

/** The closing check as a conversation: where it stands follows from the work alone. */
export interface ClosingContext {
  readonly work: Work;
  readonly closing: Closing | null;
  /** What is asked now. */
  readonly item: ClosingItem | null;
  readonly typed: string;
  readonly doubt: Doubt | null;
  /** The item answered last, as it stood before, until something else is asked. */
  readonly answered: ClosingItem | null;
  /** The person looks at the list and not at one reading. */
  readonly listing: boolean;
  /** The head of the list has passed, and the person wants the rest of it, too. */
  readonly further: boolean;
  readonly failure: string | null;
}

export type ClosingEvent =
  | { readonly type: 'START'; readonly stage: Stage; readonly at: string }
  | { readonly type: 'CAUTIONS_READ'; readonly at: string }
  | { readonly type: 'LIST' }
  | { readonly type: 'GO_ON' }
  /** No more readings, though the list is not through. */
  | { readonly type: 'ENOUGH' }
  | { readonly type: 'CHOOSE'; readonly item: ClosingItem }
  | { readonly type: 'TYPE'; readonly text: string }
  | { readonly type: 'ENTER'; readonly seen: Seen; readonly at: string }
  | { readonly type: 'ENTERED_RIGHT'; readonly at: string }
  | { readonly type: 'TAKE_BETTER'; readonly at: string }
  | { readonly type: 'BACK' }
  | { readonly type: 'CANNOT_REACH'; readonly at: string }
  | { readonly type: 'JUMPS' }
  | { readonly type: 'HELP' }
  | { readonly type: 'JUMPS_AT'; readonly site: SiteId; readonly at: string }
  /** All of the list is through, or enough of it for the person: the check ends, with the room's temperature if it was told. */
  | { readonly type: 'END'; readonly celsius?: number; readonly at: string }
  | { readonly type: 'CHANGED_ELSEWHERE'; readonly work: Work }
  | { readonly type: 'RETRY' }
  | { readonly type: 'GO_ON_UNSAVED' }
  | { readonly type: 'UNDO'; readonly at: string };

/** What is asked next: once more what was off, then the next of the list after the one answered last, then what was passed over. */
export function nextItem(closing: Closing, after: ClosingItem | null): ClosingItem | null {
  const again = closing.items.find(({ mark }) => mark === 'again');
  if (again) return again;
  const at = after ? closing.items.findIndex(({ ask }) => sameAsk(ask, after.ask)) : -1;
  const open = ({ mark }: ClosingItem) => mark === 'open';
  return closing.items.slice(Math.max(0, at)).find(open) ?? closing.items.find(open) ?? null;
}

/** The head of the list has passed, nothing of the rest was begun, and the person has not asked for it yet. */
export const isHalfway = ({ closing, further }: Pick<ClosingContext, 'closing' | 'further'>) =>
  !further &&
  closing?.first.passed === true &&
  closing.items.length > closing.first.items &&
  closing.items.slice(closing.first.items).every(({ taken }) => taken === 0);

/**
 * How often one answer counts: the hands do all repeats of a movement in one go and tell once that nothing happened. The highest
 * figure of a turn is noted once.
 */
export function repeatsOf({ ask, mark, times, taken }: ClosingItem, seen: Seen): number {
  const quiet =
    (ask.kind === 'flex' && seen.kind === 'flex' && seen.how === 'steady') ||
    (ask.kind === 'turn' && seen.kind === 'turn' && seen.how === 'smooth');
  return quiet && mark === 'open' ? Math.max(1, times - taken) : 1;
}

function repeated(item: ClosingItem, seen: Seen): readonly Answer[] {
  const { ask } = item;
  const more: Seen = seen.kind === 'turn' ? { kind: 'turn', how: seen.how } : seen;
  return Array.from({ length: repeatsOf(item, seen) }, (_, time) => ({
    ask,
    seen: time === 0 ? seen : more,
  }));
}

/** An act changes the work; what was doubted or failed before it is past. */
export const acted = (work: Work): Partial<ClosingContext> => ({
  work,
  doubt: null,
  failure: null,
});

/** Stores what was seen for the item on the screen, as often as one answer counts. */
export function answered(
  { work, item }: ClosingContext,
  seen: Seen,
  at: string,
): Partial<ClosingContext> {
  if (!item) return {};
  return {
    ...acted(withAnswers(work, repeated(item, seen), at)),
    typed: '',
    answered: item,
    listing: false,
  };
}

export const doubtOf = ({ item }: ClosingContext, seen: Seen): Doubt | null =>
  doubtIn(item && { purpose: 'own', why: '', ...item }, seen);

/** A check at its beginning, or taken up again: all but the work is unknown. */
export const checkOn = (work: Work): ClosingContext => ({
  work,
  closing: null,
  item: null,
  typed: '',
  doubt: null,
  answered: null,
  listing: true,
  further: false,
  failure: null,
});
