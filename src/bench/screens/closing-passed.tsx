import { useState } from 'preact/hooks';
import type { Closing } from '../../closing/closing.ts';
import type { Job } from '../../notebook/job.ts';
import { proofWords } from '../../words/en/proof.ts';
import type { ClosingSay } from '../closing-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { go } from '../route.ts';
import { minutes } from '../words.ts';

interface PassedProps {
  readonly job: Job;
  readonly closing: Closing;
  readonly strip: preact.ComponentChildren;
  readonly say: ClosingSay;
}

/** Degrees that a job file takes. */
const [COLDEST, HOTTEST] = [-30, 60];

/** Everything passed, or the head of the list: one last question, and the page is kept with the job. */
export function ClosingPassed({ job, closing, strip, say }: PassedProps) {
  const [typed, setTyped] = useState('');
  const celsius = typed.trim() === '' ? undefined : Number(typed.replace(',', '.'));
  const bad = celsius !== undefined && !(celsius >= COLDEST && celsius <= HOTTEST);
  const whole = closing.state === 'passed';
  const end = () => {
    say({ type: 'END', ...(celsius === undefined ? {} : { celsius }) });
    go({ at: 'job', id: job.id, view: 'proof' });
  };
  return (
    <Screen
      name={whole ? 'closing-passed' : 'closing-halfway'}
      title={whole ? proofWords().allOfItPassed : proofWords().soFarAllIsWell}
      strip={strip}
      acts={
        <>
          <button
            type="button"
            class="plain"
            onClick={() => say({ type: whole ? 'LIST' : 'GO_ON' })}
          >
            {whole ? proofWords().theList : proofWords().goOn}
          </button>
          <button type="button" class="main" disabled={bad} onClick={end}>
            {whole ? proofWords().keepTheRecord : proofWords().stopAndKeepIt}
          </button>
        </>
      }
    >
      {whole ? (
        <p>{proofWords().readingsReadingsAndEveryOne(closing.readings)}</p>
      ) : (
        <>
          <p>{proofWords().whatYouHaveReadShows(Math.floor(10 * closing.first.share))}</p>
          <p>{proofWords().theRestTakes(minutes(closing.left))}</p>
        </>
      )}
      <label class="field-tall">
        <span>{proofWords().howWarmIsTheRoomInC}</span>
        <input
          inputMode="decimal"
          value={typed}
          placeholder="20"
          aria-invalid={bad}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
        />
      </label>
      {bad && (
        <p role="alert">{proofWords().typedIsNoTemperatureOfARoom(typed, COLDEST, HOTTEST)}</p>
      )}
      <p class="soft">{proofWords().aCoilReads4MoreInA}</p>
    </Screen>
  );
}
