import { playingOf } from '../../flows/together.ts';
import type { TogetherSheet } from '../../notebook/index.ts';
import { heardOf, together } from '../../sorter/together.ts';
import { coilAskWords, phaseWords } from '../screens/together-words.ts';
import type { TogetherSnapshot } from '../together-actor.ts';
import { type Narration, nothingSaid } from './narration.ts';

/** What the bench says where the taps and poles of pickups that play together stand. */
export function togetherNarration(snapshot: TogetherSnapshot, sheet: TogetherSheet): Narration {
  const { work, ask } = snapshot.context;
  const taken = work.readings.length;
  if (snapshot.matches({ asking: 'entry' }) && ask) {
    const { act, where } = coilAskWords(sheet, ask);
    return {
      key: `ask ${taken} ${JSON.stringify(ask)}`,
      text: where === null ? act : `${where} ${act}`,
    };
  }
  if (snapshot.matches('known'))
    return {
      key: `known ${taken}`,
      text: `${phaseWords(sheet, together(playingOf(work).map(heardOf)).pairs)}.`,
    };
  return nothingSaid;
}
