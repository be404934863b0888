import type { ComponentChildren } from 'preact';
import { coilTitle, type SeenPickup } from '../../circuit/seen-pickup.ts';
import { sameAsk } from '../../flows/acts.ts';
import type { SortContext } from '../../flows/sort.ts';
import type { Ask } from '../../readings/reading.ts';
import { matWords } from '../../words/en/mat.ts';
import { Answering } from '../pieces/answering.tsx';
import { AskWords } from '../pieces/ask-words.tsx';
import { AskingRoom } from '../pieces/asking-room.tsx';
import { useHeadingFocus } from '../pieces/screen.tsx';
import type { SortSay } from '../sort-actor.ts';
import { useWakeLock } from '../wake-lock.ts';
import { SortAskDrawing } from './sort-drawing.tsx';

interface SortAskingProps {
  readonly strip: ComponentChildren;
  readonly context: SortContext;
  readonly say: SortSay;
}

const hints: Partial<Record<Ask['kind'], string>> = {
  get ohms() {
    return matWords().fixTheRangeAt20KHold;
  },
  get beep() {
    return matWords().aCoilNeverBeepsOnlyWireTo;
  },
  get tap() {
    return matWords().range200MVEnterThePullLaying;
  },
  get pole() {
    return matWords().theCompassNeedlesNorthEnd;
  },
};

/** Each coil stirs its neighbour: which swing counts is seen beside the other one. */
const compare = (seen: SeenPickup, ask: Extract<Ask, { kind: 'tap' }>): string =>
  matWords().tryTheCoilTooIfItSwings(coilTitle(seen, ask.coil === 'a' ? 'b' : 'a'));

/** One reading of the pickup on the mat. */
export function SortAsking({ strip, context, say }: SortAskingProps) {
  const { work, question, sorting, typed } = context;
  const heading = useHeadingFocus(`${work.readings.length} ${question?.askText}`);
  useWakeLock();
  if (!question) return null;
  const { ask } = question;
  const contradiction = sorting?.contradiction;
  /** The same words as before would look as if the answer had not been taken. */
  const again = work.readings.some((reading) => sameAsk(reading.ask, ask));
  return (
    <AskingRoom
      name="sort-asking"
      kind={ask.kind}
      question={`${work.readings.length} ${question.askText}`}
      readings={work.readings.length}
    >
      {strip}
      <div class="asking-see">
        <div class="asking-drawing">
          <SortAskDrawing seen={work.seen} ask={ask} />
        </div>
        <h1 ref={heading} tabIndex={-1} class="asking-words">
          <AskWords words={question.askText} />
        </h1>
      </div>
      <div class="asking-why">
        {contradiction && question.askText !== contradiction.repeatText ? (
          <p role="status" class="open-offer">
            {matWords().twoReadingsDisagree}{' '}
            <button
              type="button"
              class="quiet"
              onClick={() => say({ type: 'REPEAT', reading: contradiction.readings[0] })}
            >
              {matWords().repeatTheDoubtfulOne}
            </button>
          </p>
        ) : (
          <p class="soft">
            {again && <strong>{matWords().onceMoreToBeSure} </strong>}
            {hints[ask.kind]}
            {ask.kind === 'tap' && work.seen.coils === 2 && ` ${compare(work.seen, ask)}`}
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
            {matWords().cantDoIt}
          </button>
          {ask.kind === 'tap' && (
            <button type="button" class="quiet" onClick={() => say({ type: 'UNCLEAR' })}>
              {matWords().notSure}
            </button>
          )}
          <button type="button" class="quiet" onClick={() => say({ type: 'HELP' })}>
            {ask.kind === 'ohms' ? matWords().olHelp : matWords().help}
          </button>
        </div>
      </div>
    </AskingRoom>
  );
}
