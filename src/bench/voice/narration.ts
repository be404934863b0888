import { useEffect } from 'preact/hooks';
import { voiceWords } from '../../words/en/voice.ts';
import type { HuntSnapshot, Say } from '../hunt-actor.ts';
import { preferences } from '../preferences.ts';
import { questionWords } from '../words.ts';
import { spokenOf } from './spoken.ts';
import { findVoice, hush, speak } from './voice.ts';

/** What the bench says where a hunt stands. A new key is said once. */
interface Narration {
  readonly key: string;
  readonly text: string;
}

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

function narrationOf(snapshot: HuntSnapshot): Narration {
  const { work, question, change, doubt, assessment } = snapshot.context;
  const taken = work.readings.length;
  if (snapshot.matches({ asking: 'doubtful' }) && doubt)
    return { key: `doubt ${taken}`, text: doubt.sentence };
  if (snapshot.matches('opening'))
    return { key: 'opening', text: voiceWords().openTheGuitarTheNextReading };
  if (snapshot.matches({ asking: 'entry' }) && question)
    return {
      key: `ask ${taken} ${JSON.stringify(question.ask)}`,
      text: voiceWords().questionHealthyExpected(
        questionWords(work.circuit, question),
        question.expected.text,
      ),
    };
  if (snapshot.matches('changed') && change?.report)
    return {
      key: `changed ${change.report.id}`,
      text: `${change.report.measuredText}: ${fits[change.report.fits]}.`,
    };
  const verdict = assessment?.verdict;
  if (snapshot.matches('verdict') && verdict)
    return { key: `verdict ${taken}`, text: verdict.sentence };
  return { key: '', text: '' };
}

/** After a reading that was heard or spoken the hunt goes on by itself, seconds after the result was said. */
const lookFor = 2.5;

/** Says where the hunt stands, and goes on from a result by itself while the phone hears. */
export function useNarration(snapshot: HuntSnapshot, say: Say): void {
  const { key, text } = narrationOf(snapshot);
  const { speaks, hears } = preferences.value;
  useEffect(() => {
    if (speaks) findVoice();
  }, [speaks]);
  useEffect(() => {
    let gone = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const onwards = key.startsWith('changed') && hears;
    void speak(spokenOf(text)).then(() => {
      if (!onwards || gone) return;
      timer = setTimeout(() => say({ type: 'ON' }), 1000 * lookFor);
    });
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [key]);
  useEffect(() => hush, []);
}
