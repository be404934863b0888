import { playingOf } from '../../flows/together.ts';
import type { TogetherSheet } from '../../notebook/index.ts';
import { heardOf } from '../../sorter/together.ts';
import { called } from '../../words/called.ts';
import { togetherWords } from '../../words/en/together.ts';
import { NoSheet, useSheet } from '../pieces/kept-sheet.tsx';
import { SaveFile } from '../pieces/save-file.tsx';
import { Screen } from '../pieces/screen.tsx';
import { hrefOf } from '../route.ts';
import { type TogetherRoom, useTogether } from '../together-actor.ts';
import { useNarration } from '../voice/narration.ts';
import { togetherNarration } from '../voice/together-narration.ts';
import { SortHelp } from './sort-help.tsx';
import { TogetherAsking } from './together-asking.tsx';
import { TogetherResult } from './together-result.tsx';
import { TogetherTelling } from './together-telling.tsx';

/** Pickups that play together: to be told of, or from the notebook. */
export function TogetherPage({
  id,
  beside,
}: {
  id?: string | undefined;
  beside?: string | undefined;
}) {
  const found = useSheet(id ?? beside);
  if (id === undefined && beside === undefined) return <TogetherTelling beside={null} />;
  if (found.is !== 'found') return <NoSheet found={found} />;
  const { sheet } = found;
  if (id === undefined)
    return <TogetherTelling beside={sheet.format === 'lugwise-pickup' ? sheet : null} />;
  if (sheet.format !== 'lugwise-together')
    return (
      <NoSheet found={{ is: 'missing', sentence: togetherWords().theseAreNoPickupsThatPlay }} />
    );
  return <OpenTogether sheet={sheet} />;
}

function OpenTogether({ sheet }: { sheet: TogetherSheet }) {
  const room = useTogether(sheet);
  const now = room.snapshot.value;
  const { say } = room;
  useNarration(togetherNarration(now, room.sheet()));
  const strip = <TogetherStrip room={room} />;
  const { context } = now;
  if (now.matches('cautions')) return <Cautions onRead={() => say({ type: 'CAUTIONS_READ' })} />;
  if (now.matches({ asking: 'help' }) && context.ask)
    return <SortHelp strip={strip} kind={context.ask.kind} say={() => say({ type: 'BACK' })} />;
  if (now.matches('asking') && context.ask)
    return (
      <TogetherAsking
        strip={strip}
        sheet={room.sheet()}
        ask={context.ask}
        onHelp={() => say({ type: 'HELP' })}
        onNoCompass={() => say({ type: 'COMPASS', is: false })}
        onSeen={(seen) => {
          if (seen.kind === 'tap' || seen.kind === 'pole') say({ type: 'ENTER', seen });
        }}
      />
    );
  if (now.matches('known'))
    return (
      <TogetherResult
        strip={strip}
        sheet={room.sheet()}
        heard={playingOf(context.work).map(heardOf)}
        onMeant={(meant) => say({ type: 'MEANT', meant })}
        onCompass={() => say({ type: 'COMPASS', is: true })}
        onAgain={(pickup) => say({ type: 'ASK_AGAIN', pickup })}
      />
    );
  if (now.matches('storageFailed'))
    return (
      <Screen
        name="storage-failed"
        title={togetherWords().itCouldNotBeStored}
        strip={strip}
        acts={
          <button type="button" class="main" onClick={() => say({ type: 'RETRY' })}>
            {togetherWords().tryAgain}
          </button>
        }
      >
        <p role="alert" class="sentence">
          {context.failure}
        </p>
        <SaveFile job={room.sheet()} />
      </Screen>
    );
  return <Screen name="waiting" title={togetherWords().oneMoment} strip={strip} />;
}

function TogetherStrip({ room }: { room: TogetherRoom }) {
  const { context } = room.snapshot.value;
  return (
    <header class="strip">
      <a class="strip-home" href={hrefOf({ at: 'home' })}>
        <span class="unseen">{togetherWords().home}</span>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
      </a>
      <span class="strip-job">
        <span class="strip-title">{called(room.sheet().title)}</span>
      </span>
      {context.takenBack && (
        <button type="button" class="quiet" onClick={() => room.say({ type: 'PUT_BACK' })}>
          {togetherWords().putBack}
        </button>
      )}
      <button
        type="button"
        class="quiet"
        disabled={context.work.readings.length === 0}
        onClick={() => room.say({ type: 'UNDO' })}
      >
        {togetherWords().undo}
      </button>
    </header>
  );
}

const Cautions = ({ onRead }: { onRead(): void }) => (
  <Screen
    name="together-cautions"
    title={togetherWords().beforeYouMeasure}
    acts={
      <button type="button" class="main" onClick={onRead}>
        {togetherWords().itIsUnplugged}
      </button>
    }
  >
    <ul class="cautions">
      <li>
        <strong>{togetherWords().pullTheCableOutOfTheAmplifier}</strong>{' '}
        {togetherWords().neverMeasureInsideAnAmplifier}
      </li>
      <li>
        <strong>{togetherWords().aBatteryInsideTakeItOutFirst}</strong>
      </li>
      <li>
        <strong>{togetherWords().volumeAndToneAt10}</strong>
        {togetherWords().orTheSwingIsTooSmallTo}
      </li>
    </ul>
    <p class="soft">{togetherWords().localCodesComeBeforeAnything}</p>
  </Screen>
);
