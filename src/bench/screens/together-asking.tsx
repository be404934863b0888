import type { ComponentChildren } from 'preact';
import type { TogetherSheet } from '../../notebook/index.ts';
import type { Seen } from '../../readings/reading.ts';
import type { CoilAsk } from '../../sorter/together.ts';
import { togetherWords } from '../../words/en/together.ts';
import { Choices, choicesFor } from '../entry/choices.tsx';
import { AskingRoom } from '../pieces/asking-room.tsx';
import { useHeadingFocus } from '../pieces/screen.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { RowDrawing } from './row-drawing.tsx';
import { coilAskWords } from './together-words.ts';

interface TogetherAskingProps {
  readonly strip: ComponentChildren;
  readonly sheet: TogetherSheet;
  readonly ask: CoilAsk;
  onSeen(seen: Seen): void;
  onHelp(): void;
  onNoCompass(): void;
}

/** One tap or one pole of one pickup that plays alone. */
export function TogetherAsking({
  strip,
  sheet,
  ask,
  onSeen,
  onHelp,
  onNoCompass,
}: TogetherAskingProps) {
  const heading = useHeadingFocus(`${sheet.readings.length}`);
  useWakeLock();
  const { act, where } = coilAskWords(sheet, ask);
  return (
    <AskingRoom
      name="together-asking"
      kind={ask.kind}
      question={`${sheet.readings.length} ${act}`}
      readings={sheet.readings.length}
    >
      {strip}
      <div class="asking-see">
        <div class="asking-drawing">
          <RowDrawing pickups={sheet.pickups} lit={ask} />
        </div>
        <h1 ref={heading} tabIndex={-1} class="asking-words">
          {act}
        </h1>
      </div>
      <div class="asking-why">
        {where !== null ? (
          <>
            <p>{where}</p>
            <p class="soft">{togetherWords().dc200MVLayingOnSwingsThe}</p>
          </>
        ) : (
          <p class="soft">{togetherWords().theNeedlesNorthEndPointsAt}</p>
        )}
      </div>
      <div class="asking-enter">
        <Choices choices={choicesFor(ask.kind)} onSeen={onSeen} />
        <div class="ways-out">
          {ask.kind === 'pole' && (
            <button type="button" class="quiet" onClick={onNoCompass}>
              {togetherWords().noCompass}
            </button>
          )}
          <button type="button" class="quiet" onClick={onHelp}>
            {togetherWords().help}
          </button>
        </div>
      </div>
    </AskingRoom>
  );
}
