import { useComputed } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { pieceWords } from '../../words/en/pieces.ts';
import { type BeepAnswer, beepAnswer } from '../hearing/beep-answer.ts';
import { earClock, hearing, onTone, toneSounds } from '../hearing/hearing.ts';
import type { ToneChange } from '../hearing/tone-ear.ts';
import { preferences } from '../preferences.ts';
import { confirm } from '../voice/confirm.ts';
import { talking } from '../voice/voice.ts';
import { announce } from './announce.tsx';

/** How often the ear is asked, milliseconds. */
const lookEvery = 100;

interface ByEarProps {
  onAnswer(beeps: boolean): void;
}

/** Answers a beep question by the microphone. The keys stay: whoever presses one is not waited for. */
export function ByEar({ onAnswer }: ByEarProps) {
  const ready = useComputed(() => hearing.value.is === 'listening' && !talking.value);
  const [left, setLeft] = useState<number | null>(null);
  const [unsteady, setUnsteady] = useState(0);
  const { patience } = preferences.value;
  useEffect(() => {
    if (!ready.value) return;
    const listening = { soundsAtStart: toneSounds.value, from: earClock(), patience };
    const changes: ToneChange[] = [];
    const unhear = onTone((change) => changes.push(change));
    const timer = setInterval(() => {
      const now = earClock();
      setLeft(patience === null ? null : Math.max(0, patience - (now - listening.from)));
      act(beepAnswer(listening, changes, now));
    }, lookEvery);
    const act = (answer: BeepAnswer) => {
      if (answer === null) return;
      stop();
      confirm(answer);
      if (answer === 'unsteady') {
        announce(pieceWords().itCameAndWentHoldBothTips);
        setUnsteady((count) => count + 1);
      } else onAnswer(answer === 'beeps');
    };
    const stop = () => {
      clearInterval(timer);
      unhear();
    };
    return stop;
  }, [ready.value, unsteady]);
  return (
    <p class="by-ear" data-heard={toneSounds.value ? 'tone' : 'none'}>
      {words(left, unsteady > 0)}
      {left !== null && patience !== null && (
        <span class="bar" aria-hidden="true">
          <span class="bar-fill" style={{ width: `${((100 * left) / patience).toFixed(0)}%` }} />
        </span>
      )}
    </p>
  );
}

function words(left: number | null, unsteady: boolean): string {
  const now = hearing.value;
  switch (now.is) {
    case 'listening':
      if (toneSounds.value) return pieceWords().hearingTheBeep;
      if (talking.value) return pieceWords().listeningInAMoment;
      return [
        unsteady ? pieceWords().itCameAndWentHoldBothTips : pieceWords().listening,
        left === null
          ? pieceWords().noBeepPressSilent
          : pieceWords().silentInCeilS(Math.ceil(left)),
      ].join(' ');
    case 'waiting for a touch':
      return pieceWords().touchTheScreenOnceSoThatThe;
    case 'failed':
      return pieceWords().sentenceUseTheKeys(now.sentence);
    default:
      return pieceWords().openingTheMicrophone;
  }
}
