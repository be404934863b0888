import { matWords } from '../../words/en/mat.ts';
import { leadNames, roleWords } from '../screens/sort-words.ts';
import type { SortSnapshot } from '../sort-actor.ts';
import { capital } from '../words.ts';
import { type Narration, nothingSaid } from './narration.ts';

/** What the bench says where the sorting of a pickup's leads stands. */
export function sortNarration(snapshot: SortSnapshot): Narration {
  const { work, question, doubt, sorting } = snapshot.context;
  const taken = work.readings.length;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return { key: `doubt ${taken}`, text: doubt.sentence };
  if (snapshot.matches({ asking: 'unclear' }))
    return { key: `unclear ${taken}`, text: `${matWords().doTheSameTapAgain}.` };
  if (snapshot.matches({ asking: 'entry' }) && question)
    return { key: `ask ${taken} ${question.askText}`, text: question.askText };
  if (snapshot.matches('sorted') && sorting)
    return {
      key: `sorted ${taken}`,
      text: sorting.leads
        .map(
          ({ lead, role }) =>
            `${capital(leadNames(work.seen, [lead]))}: ${roleWords(work.seen, role)}.`,
        )
        .join(' '),
    };
  return nothingSaid;
}
