import type { ComponentChildren } from 'preact';
import type { TogetherSheet } from '../../notebook/index.ts';
import type { Seen } from '../../readings/reading.ts';
import type { CoilAsk } from '../../sorter/together.ts';
import { togetherWords } from '../../words/en/together.ts';
import { Choices, choicesFor } from '../entry/choices.tsx';
import { useHeadingFocus } from '../pieces/screen.tsx';
import { useWakeLock } from '../wake-lock.ts';
import { theTitled } from './pickup-names.ts';
import { RowDrawing } from './row-drawing.tsx';

interface TogetherAskingProps {
  readonly strip: ComponentChildren;
  readonly sheet: TogetherSheet;
  readonly ask: CoilAsk;
  onSeen(seen: Seen): void;
  onHelp(): void;
}

/** One tap or one pole of one pickup that plays alone. */
export function TogetherAsking({ strip, sheet, ask, onSeen, onHelp }: TogetherAskingProps) {
  const heading = useHeadingFocus(`${sheet.readings.length}`);
  useWakeLock();
  const pickup = sheet.pickups.find(({ id }) => id === ask.pickup);
  if (!pickup) return null;
  const coil =
    pickup.coils === 1
      ? theTitled(pickup.title)
      : togetherWords()[ask.coil === 'a' ? 'screwCoilOf' : 'slugCoilOf'](theTitled(pickup.title));
  const where =
    pickup.at === 'jack'
      ? togetherWords().letTheTitledPlayAloneKnobs(theTitled(pickup.title))
      : togetherWords().rOnItsHotLeadBOn;
  return (
    <main class="screen asking" data-screen="together-asking" data-kind={ask.kind}>
      {strip}
      <div class="asking-see">
        <div class="asking-drawing">
          <RowDrawing pickups={sheet.pickups} lit={ask} />
        </div>
        <h1 ref={heading} tabIndex={-1} class="asking-words">
          {ask.kind === 'tap'
            ? togetherWords()[ask.again ? 'pullOnceMore' : 'pullSteelOff'](coil)
            : togetherWords().holdACompassOverCoilWhich(coil)}
        </h1>
      </div>
      <div class="asking-why">
        {ask.kind === 'tap' ? (
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
          <button type="button" class="quiet" onClick={onHelp}>
            {togetherWords().help}
          </button>
        </div>
      </div>
    </main>
  );
}
