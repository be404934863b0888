import { voiceWords } from '../../words/en/voice.ts';
import type { HuntSnapshot } from '../hunt-actor.ts';
import { questionWords } from '../words.ts';
import { movesFor } from './moves.ts';
import { type Narration, nothingSaid } from './narration.ts';

const fits = {
  get fits() {
    return voiceWords().asItShouldBe;
  },
  get off() {
    return voiceWords().notAsItShouldBe;
  },
  get doubtful() {
    return voiceWords().onTheEdge;
  },
};

/** What the bench says where a hunt stands. */
export function huntNarration(snapshot: HuntSnapshot): Narration {
  const { work, question, change, doubt, assessment } = snapshot.context;
  const taken = work.readings.length;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return { key: `doubt ${taken}`, text: doubt.sentence };
  if (snapshot.matches('opening'))
    return { key: 'opening', text: voiceWords().openTheGuitarTheNextReading };
  if (snapshot.matches({ asking: 'entry' }) && question)
    return {
      key: `ask ${taken} ${JSON.stringify(question.ask)}`,
      get text() {
        return [
          movesFor(work, question.ask),
          voiceWords().questionHealthyExpected(
            questionWords(work.circuit, question),
            question.expected.text,
          ),
        ].join(' ');
      },
    };
  if (snapshot.matches('changed') && change?.report)
    return {
      key: `changed ${change.report.id}`,
      text: `${change.report.measuredText}: ${fits[change.report.fits]}.`,
    };
  const verdict = assessment?.verdict;
  if (snapshot.matches('verdict') && verdict)
    return { key: `verdict ${taken}`, text: verdict.sentence };
  return nothingSaid;
}
