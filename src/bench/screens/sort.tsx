import type { PickupSheet } from '../../notebook/index.ts';
import { called } from '../../words/called.ts';
import { matWords } from '../../words/en/mat.ts';
import { useEar } from '../hearing/use-ear.ts';
import { NoSheet, useSheet } from '../pieces/kept-sheet.tsx';
import { SaveFile } from '../pieces/save-file.tsx';
import { Screen } from '../pieces/screen.tsx';
import { hrefOf, type PickupView } from '../route.ts';
import { type SortRoom, type SortSay, useSort } from '../sort-actor.ts';
import { useNarration } from '../voice/narration.ts';
import { sortNarration } from '../voice/sort-narration.ts';
import { Doubtful } from './doubtful.tsx';
import { SortAsking } from './sort-asking.tsx';
import { SortHelp } from './sort-help.tsx';
import { SortIntoJob } from './sort-into-job.tsx';
import { SortResult } from './sort-result.tsx';
import { SortUnclear } from './sort-unclear.tsx';

/** Takes a pickup from the notebook and goes on with it where it stood. */
export function PickupPage({ id, view }: { id: string; view: PickupView }) {
  const found = useSheet(id);
  if (found.is !== 'found') return <NoSheet found={found} />;
  if (found.sheet.format !== 'lugwise-pickup')
    return <NoSheet found={{ is: 'missing', sentence: matWords().thisIsNoPickupOnTheMat }} />;
  return <OpenPickup sheet={found.sheet} view={view} />;
}

function OpenPickup({ sheet, view }: { sheet: PickupSheet; view: PickupView }) {
  const room = useSort(sheet);
  const now = room.snapshot.value;
  if (view === 'job' && now.context.sorting)
    return <SortIntoJob sheet={room.sheet()} sorting={now.context.sorting} />;
  return <SortScreen room={room} />;
}

/** The screen for where the sorting stands. */
function SortScreen({ room }: { room: SortRoom }) {
  const now = room.snapshot.value;
  const { say } = room;
  useEar();
  useNarration(sortNarration(now));
  const { context } = now;
  const strip = <SortStrip room={room} />;
  if (now.matches('cautions'))
    return <SortCautions onRead={() => say({ type: 'CAUTIONS_READ' })} />;
  if (now.matches({ asking: 'doubtful' }) && context.doubt)
    return <Doubtful strip={strip} doubt={context.doubt} say={say} />;
  if (now.matches({ asking: 'help' }) && context.question)
    return <SortHelp strip={strip} kind={context.question.ask.kind} say={say} />;
  if (now.matches({ asking: 'unclear' }))
    return <SortUnclear strip={strip} context={context} say={say} />;
  if (now.matches('asking')) return <SortAsking strip={strip} context={context} say={say} />;
  if (now.matches('sorted'))
    return <SortResult strip={strip} sheet={room.sheet()} context={context} say={say} />;
  if (now.matches('sortFailed') || now.matches('storageFailed'))
    return (
      <Screen
        name="sort-failed"
        title={
          now.matches('sortFailed') ? matWords().thatDidNotWork : matWords().itCouldNotBeStored
        }
        strip={strip}
        acts={
          <button type="button" class="main" onClick={() => say({ type: 'RETRY' })}>
            {matWords().tryAgain}
          </button>
        }
      >
        <p role="alert" class="sentence">
          {context.failure}
        </p>
        <SaveFile job={room.sheet()} />
      </Screen>
    );
  return <Screen name="waiting" title={matWords().workingItOut} strip={strip} />;
}

/** Above every screen: the way out, the pickup, how much is known, undo. */
function SortStrip({ room }: { room: SortRoom }) {
  const { context } = room.snapshot.value;
  const { work, takenBack, sorting } = context;
  const say: SortSay = room.say;
  return (
    <header class="strip">
      <a class="strip-home" href={hrefOf({ at: 'home' })}>
        <span class="unseen">{matWords().home}</span>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
      </a>
      <span class="strip-job">
        <span class="strip-title">{called(room.sheet().title)}</span>
        {sorting && (
          <span class="suspects-count">
            {matWords().countOfCount2LeadsKnown(
              sorting.leads.filter(({ probability }) => probability > 0.9).length,
              sorting.leads.length,
            )}
          </span>
        )}
      </span>
      {takenBack && (
        <button type="button" class="quiet" onClick={() => say({ type: 'PUT_BACK' })}>
          {matWords().putBack}
        </button>
      )}
      <button
        type="button"
        class="quiet"
        disabled={work.readings.length + work.refused.length === 0}
        onClick={() => say({ type: 'UNDO' })}
      >
        {matWords().undo}
      </button>
    </header>
  );
}

const SortCautions = ({ onRead }: { onRead(): void }) => (
  <Screen
    name="sort-cautions"
    title={matWords().beforeYouMeasure}
    acts={
      <button type="button" class="main" onClick={onRead}>
        {matWords().itLiesFreeOnTheMat}
      </button>
    }
  >
    <ul class="cautions">
      <li>
        <strong>{matWords().theGuitarIsUnplugged}</strong>
        {matWords().andThePickupsLeadsAreJoined}
      </li>
      <li>
        <strong>{matWords().theIronBurnsItsFumesHarm}</strong>{' '}
        {matWords().openAWindowWearGlassesWhen}
      </li>
      <li>
        <strong>{matWords().steelOnACoilGently}</strong> {matWords().layItFlatAndPullItStraight}
      </li>
    </ul>
    <p class="soft">{matWords().localCodesComeBeforeAnything}</p>
  </Screen>
);
