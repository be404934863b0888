import { useState } from 'preact/hooks';
import type { Job } from '../../notebook/job.ts';
import type { PracticeReading } from '../../practice/reading.ts';
import type { Ask, Seen } from '../../readings/reading.ts';
import { practiceWords } from '../../words/en/practice.ts';
import { choicesFor } from '../entry/choices.tsx';
import { hows } from '../entry/turn-pad.tsx';
import { announce } from '../pieces/announce.tsx';
import { usePorts } from '../ports.ts';
import { preferences } from '../preferences.ts';
import { soundMeter } from '../voice/confirm.ts';
import { seenWords } from '../words.ts';
import { readPractice } from './read.ts';

/** What the person does to the made-up guitar, by kind of reading. */
const acts: Record<Ask['kind'], string> = {
  get ohms() {
    return practiceWords().touchTheProbes;
  },
  get beep() {
    return practiceWords().touchTheProbes;
  },
  get turn() {
    return practiceWords().turnTheKnob;
  },
  get flex() {
    return practiceWords().moveTheWire;
  },
  get tap() {
    return practiceWords().pullTheSteelOff;
  },
  get farads() {
    return practiceWords().touchTheProbes;
  },
  get listen() {
    return practiceWords().playIt;
  },
  get hum() {
    return practiceWords().playIt;
  },
  get touch() {
    return practiceWords().touchTheMetal;
  },
  get look() {
    return practiceWords().lookClosely;
  },
  get pole() {
    return practiceWords().holdTheCompassOverIt;
  },
};

/** Where no tone was learned: what many meters have, hertz (common practice, no source). */
const USUAL_TONE = 2700;

interface PracticeMeterProps {
  readonly job: Job;
  readonly practice: NonNullable<Job['practice']>;
  readonly ask: Ask;
  onSeen(seen: Seen): void;
}

/** The meter of a practice guitar, and its ears and eyes: one key acts, and what shows is typed or taken over. */
export function PracticeMeter({ job, practice, ask, onSeen }: PracticeMeterProps) {
  const { engine } = usePorts();
  const [times, setTimes] = useState(0);
  const [shown, setShown] = useState<PracticeReading | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  const act = async () => {
    try {
      const reading = await readPractice(engine, practice, job, ask, times);
      setTimes(times + 1);
      setShown(reading);
      announce(words(reading));
      if (reading.seen.kind === 'beep' && reading.seen.beeps)
        soundMeter(preferences.value.tone?.hertz ?? USUAL_TONE);
    } catch (error) {
      setFailure(error instanceof Error ? error.message : practiceWords().itCouldNotBeRead);
    }
  };
  const number = ask.kind === 'ohms' || ask.kind === 'turn' || ask.kind === 'farads';
  return (
    <div class="practice-meter">
      {failure && <p role="alert">{failure}</p>}
      {shown && (
        <output class="practice-shown" data-shown={ask.kind}>
          {words(shown)}
        </output>
      )}
      <button type="button" class={shown ? 'plain' : 'main'} onClick={act}>
        {shown ? practiceWords().again : acts[ask.kind]}
      </button>
      {shown && number && (
        <button type="button" class="main" onClick={() => onSeen(shown.seen)}>
          {practiceWords().useIt}
        </button>
      )}
    </div>
  );
}

/** As it shows in the display, or in the words of the keys under it. */
function words({ seen, display }: PracticeReading): string {
  switch (seen.kind) {
    case 'ohms':
      return display ?? '';
    case 'farads':
      return (
        display ?? (seen.farads === 'open' ? practiceWords().noCapacitor : practiceWords().shorted)
      );
    case 'turn': {
      const how = hows.find((one) => one.how === seen.how)?.says ?? seen.how;
      return display === undefined ? how : practiceWords().howHighestDisplay(how, display);
    }
    case 'hum':
      return seenWords(seen);
    default: {
      const choice = choicesFor(seen.kind).find(
        (one) => JSON.stringify(one.seen) === JSON.stringify(seen),
      );
      return choice?.note && seen.kind !== 'look'
        ? `${choice.says}: ${choice.note}`
        : (choice?.says ?? '');
    }
  }
}
