import { doubt } from '../readings/entry.ts';
import type { Seen } from '../readings/reading.ts';
import type { Question } from './question.ts';

/** An entry that is far from what was expected and would be near it with another unit. */
export interface Doubt {
  readonly sentence: string;
  readonly entered: Seen;
  readonly better: Seen;
}

/** The doubt about an entry, in ohms or at the peak of a turn. Null where there is none. */
export function doubtIn(question: Question | null, seen: Seen): Doubt | null {
  if (!question) return null;
  if (seen.kind === 'ohms') {
    const found = doubt(seen.ohms, question.expected);
    return (
      found && { sentence: found.sentence, entered: seen, better: { ...seen, ohms: found.better } }
    );
  }
  if (seen.kind === 'turn' && seen.peak !== undefined) {
    const found = doubt(seen.peak, question.expected);
    return (
      found && { sentence: found.sentence, entered: seen, better: { ...seen, peak: found.better } }
    );
  }
  return null;
}
