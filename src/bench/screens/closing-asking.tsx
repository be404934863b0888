import type { ClosingItem } from '../../closing/closing.ts';
import { huntWords } from '../../words/en/hunt.ts';
import { proofWords } from '../../words/en/proof.ts';
import type { ClosingSay, ClosingSnapshot } from '../closing-actor.ts';
import { saidBefore, timesWords } from '../closing-said.ts';
import { Answering } from '../pieces/answering.tsx';
import { AskWords } from '../pieces/ask-words.tsx';
import { AskingRoom } from '../pieces/asking-room.tsx';
import { ItemMark } from '../pieces/item-mark.tsx';
import { LateControls } from '../pieces/late-controls.tsx';
import { ProbeView } from '../pieces/probe-view.tsx';
import { useHeadingFocus } from '../pieces/screen.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { held, passWords } from '../words.ts';

interface AskingProps {
  readonly snapshot: ClosingSnapshot;
  readonly item: ClosingItem;
  readonly strip: preact.ComponentChildren;
  readonly say: ClosingSay;
}

/** Two bare ends, each told by its lead and its joint, take more characters than this. */
const longWords = 130;

/** One reading of the list: where, how the controls stand, what passes, and the keys. */
export function ClosingAsking({ snapshot, item, strip, say }: AskingProps) {
  const { work, typed, closing, answered } = snapshot.context;
  const { ask, askText } = item;
  const key = JSON.stringify(ask) + work.readings.length;
  const heading = useHeadingFocus(key);
  const previous = work.readings.at(-1)?.ask.setting ?? null;
  useWakeLock();
  const said = saidBefore(item, answered, closing);
  return (
    <AskingRoom
      name="closing-asking"
      kind={ask.kind}
      question={key}
      readings={work.readings.length}
    >
      {strip}
      <div class="asking-see">
        <LateControls
          question={key}
          circuit={work.circuit}
          setting={ask.setting}
          previous={previous}
          after={1}
        />
        <ProbeView circuit={work.circuit} ask={ask} after={2} />
        <h1
          ref={heading}
          tabIndex={-1}
          class={askText.length > longWords ? 'asking-words asking-words-long' : 'asking-words'}
        >
          <AskWords words={askText} />
        </h1>
      </div>
      <div class="asking-why">
        <p class="expected">
          <span class="soft">{proofWords().passes}</span> <strong>{held(passWords(item))}</strong>
          {item.times > 1 && <span class="soft"> {timesWords(item)}</span>}
        </p>
        {ask.setting.plug === 'in' && (
          <p class="caution">{proofWords().probesOffAndTheAmplifiers}</p>
        )}
        {said && (
          <p role="status">
            <ItemMark mark={said.mark} />{' '}
            {said.mark === 'fits' ? proofWords().theReadingBefore(said.words) : said.words}
          </p>
        )}
      </div>
      <div class="asking-enter">
        <Answering
          ask={ask}
          question={`${work.readings.length} ${JSON.stringify(ask)}`}
          typed={typed}
          onType={(text) => say({ type: 'TYPE', text })}
          onSeen={(seen) => say({ type: 'ENTER', seen })}
        />
        <div class="ways-out">
          <button type="button" class="quiet" onClick={() => say({ type: 'CANNOT_REACH' })}>
            {'red' in ask ? proofWords().cantReachIt : proofWords().cantDoIt}
          </button>
          {'red' in ask && ask.kind !== 'flex' && (
            <button type="button" class="quiet" onClick={() => say({ type: 'JUMPS' })}>
              {proofWords().jumpsAbout}
            </button>
          )}
          <button type="button" class="quiet" onClick={() => say({ type: 'HELP' })}>
            {ask.kind === 'ohms' || ask.kind === 'turn' ? huntWords().olHelp : huntWords().help}
          </button>
          <button type="button" class="quiet" onClick={() => say({ type: 'LIST' })}>
            {proofWords().later}
          </button>
        </div>
      </div>
    </AskingRoom>
  );
}
