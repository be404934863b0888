import { useMemo } from 'preact/hooks';
import { type Question, tellsLittle } from '../../flows/index.ts';
import type { Job } from '../../notebook/job.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { HumPad } from '../entry/hum-pad.tsx';
import type { HuntSnapshot, Say } from '../hunt-actor.ts';
import { Answering } from '../pieces/answering.tsx';
import { AskWords, IronWork } from '../pieces/ask-words.tsx';
import { AskingRoom } from '../pieces/asking-room.tsx';
import { Expected } from '../pieces/expected.tsx';
import { KeysRoom, useWordsAndKeys } from '../pieces/keys-room.tsx';
import { LateControls } from '../pieces/late-controls.tsx';
import { PhotoButton } from '../pieces/photo-button.tsx';
import { ProbeView } from '../pieces/probe-view.tsx';
import { useHeadingFocus } from '../pieces/screen.tsx';
import { Strip } from '../pieces/strip.tsx';
import { Why } from '../pieces/why.tsx';
import { PracticeMeter } from '../practice/practice-meter.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { capital, placeWords, questionWords } from '../words.ts';

interface AskingProps {
  readonly job: Job;
  readonly snapshot: HuntSnapshot;
  readonly question: Question;
  readonly say: Say;
}

const purposes = {
  hunt: null,
  get recheck() {
    return huntWords().checkAgainThisDidNotFitBefore;
  },
  get own() {
    return huntWords().yourOwnReading;
  },
} as const;

/** Two bare ends, each told by its lead and its joint, take more characters than this. */
const longWords = 130;

/** One reading: where, how the controls stand, what a healthy guitar shows, why, and the keys. Nothing scrolls at normal text size. */
export function Asking({ job, snapshot, question, say }: AskingProps) {
  const { work, typed } = snapshot.context;
  const { ask, expected, why } = question;
  const key = JSON.stringify(ask) + work.readings.length;
  const there = useWordsAndKeys(key, ask.kind);
  const heading = useHeadingFocus(there.words ? key : '');
  const words = questionWords(work.circuit, question);
  const probes = 'red' in ask;
  const lead = purposes[question.purpose];
  const previous = work.readings.at(-1)?.ask.setting ?? null;
  useWakeLock();
  // A key that is pressed changes the display and nothing here.
  const see = useMemo(
    () => (
      <div class="asking-see">
        <LateControls
          question={key}
          circuit={work.circuit}
          setting={ask.setting}
          previous={previous}
          after={1 + there.after}
        />
        <ProbeView circuit={work.circuit} ask={ask} after={2 + there.after} />
        {there.words && (
          <>
            <h1
              ref={heading}
              tabIndex={-1}
              class={words.length > longWords ? 'asking-words asking-words-long' : 'asking-words'}
            >
              <AskWords words={words} />
            </h1>
            <IronWork circuit={work.circuit} setting={ask.setting} previous={previous} />
          </>
        )}
      </div>
    ),
    [work.circuit, ask, previous, words, key, there.words, there.after],
  );
  return (
    <AskingRoom name="asking" kind={ask.kind} question={key}>
      <Strip job={job} snapshot={snapshot} say={say} />
      {see}
      {there.words && (
        <div class="asking-why">
          <p class="expected">
            <span class="soft">{huntWords().healthy}</span>{' '}
            <strong>
              <Expected expected={expected} />
            </strong>
          </p>
          {(lead || why) && <Why>{lead ?? why}</Why>}
          {work.access === 'closed' && tellsLittle(question) && (
            <p class="open-offer">
              {huntWords().insideAReadingWouldTellMore}{' '}
              <button type="button" class="quiet" onClick={() => say({ type: 'OPENED' })}>
                {huntWords().itIsOpenNow}
              </button>
            </p>
          )}
        </div>
      )}
      <KeysRoom there={there.keys} kind={ask.kind}>
        {job.practice && (
          <PracticeMeter
            key={key}
            job={job}
            practice={job.practice}
            ask={ask}
            onSeen={(seen) => say({ type: 'ENTER', seen })}
          />
        )}
        {ask.kind === 'hum' ? (
          <HumPad
            key={JSON.stringify(ask)}
            circuit={work.circuit}
            ask={ask}
            onSeen={(seen) => say({ type: 'ENTER', seen })}
          />
        ) : (
          <Answering
            ask={ask}
            question={JSON.stringify(ask)}
            typed={typed}
            onType={(text) => say({ type: 'TYPE', text })}
            onSeen={(seen) => say({ type: 'ENTER', seen })}
          />
        )}
        <div class="ways-out">
          <button type="button" class="quiet" onClick={() => say({ type: 'CANNOT_REACH' })}>
            {probes ? huntWords().cantReachIt : huntWords().cantDoIt}
          </button>
          {probes && (
            <button type="button" class="quiet" onClick={() => say({ type: 'JUMPS' })}>
              {huntWords().jumpsAbout}
            </button>
          )}
          <button type="button" class="quiet" onClick={() => say({ type: 'VOLUNTEER' })}>
            {huntWords().myOwnReading}
          </button>
          <button type="button" class="quiet" onClick={() => say({ type: 'HELP' })}>
            {ask.kind === 'ohms' || ask.kind === 'turn' ? huntWords().olHelp : huntWords().help}
          </button>
          {ask.kind === 'look' && !job.practice && (
            <PhotoButton
              job={job.id}
              words={capital(placeWords(work.circuit, ask))}
              label={huntWords().photo}
            />
          )}
        </div>
      </KeysRoom>
    </AskingRoom>
  );
}
