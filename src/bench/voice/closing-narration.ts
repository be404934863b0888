import { proofWords } from '../../words/en/proof.ts';
import { voiceWords } from '../../words/en/voice.ts';
import type { ClosingSnapshot } from '../closing-actor.ts';
import { saidBefore, timesWords } from '../closing-said.ts';
import { passWords } from '../words.ts';
import { movesFor } from './moves.ts';
import { type Narration, nothingSaid } from './narration.ts';

/** What the bench says where a closing check stands: what came of the answer before, then the next line of the list. */
export function closingNarration(snapshot: ClosingSnapshot): Narration {
  const { work, item, closing, answered, doubt } = snapshot.context;
  const taken = work.readings.length;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return { key: `doubt ${taken}`, text: doubt.sentence };
  if (snapshot.matches({ asking: 'entry' }) && item) {
    const before = saidBefore(item, answered, closing);
    return {
      key: `ask ${taken} ${JSON.stringify(item.ask)}`,
      text: [
        before?.mark === 'fits' ? `${before.words}: ${voiceWords().asItShouldBe}.` : before?.words,
        item.ask.setting.plug === 'in' ? proofWords().probesOffAndTheAmplifiers : '',
        movesFor(work, item.ask),
        item.askText,
        item.times > 1 ? `${timesWords(item).replace(/^[·\s]+/, '')}.` : '',
        `${proofWords().passes} ${passWords(item)}.`,
      ]
        .filter(Boolean)
        .join(' '),
    };
  }
  if (snapshot.matches('passed'))
    return { key: `passed ${taken}`, text: `${proofWords().allOfItPassed}.` };
  if (snapshot.matches('halfway'))
    return { key: `halfway ${taken}`, text: `${proofWords().soFarAllIsWell}.` };
  if (snapshot.matches('failed'))
    return { key: `failed ${taken}`, text: `${proofWords().somethingIsNotAsItShouldBe}.` };
  return nothingSaid;
}
