import type { Closing, ClosingItem } from '../closing/closing.ts';
import { proofWords } from '../words/en/proof.ts';
import { held } from './words.ts';

/** What came of the answer before: it fits, or the same is asked once more, and why. */
export function saidBefore(
  item: ClosingItem,
  answered: ClosingItem | null,
  closing: Closing | null,
): { readonly mark: 'again' | 'fits'; readonly words: string } | null {
  if (item.mark === 'again')
    return {
      mark: 'again',
      words: proofWords().atDoesNotFitLookAtThe(held(item.answers.at(-1) ?? '')),
    };
  const before =
    answered &&
    closing?.items.find(({ ask }) => JSON.stringify(ask) === JSON.stringify(answered.ask));
  return before && before !== item && before.mark === 'fits'
    ? { mark: 'fits', words: held(before.answers.at(-1) ?? '') }
    : null;
}

/** Movements are done as often as asked in one go and answered once; taps are answered one by one. */
export function timesWords({ ask, mark, times, taken }: ClosingItem): string {
  const left = times - taken;
  const movement = ask.kind === 'flex' || ask.kind === 'turn';
  if (movement && mark === 'open' && left > 1) return proofWords().doItTimes(left);
  return proofWords().times(Math.min(taken + 1, times), times);
}
