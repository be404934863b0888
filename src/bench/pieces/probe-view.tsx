import type { Circuit } from '../../circuit/circuit.ts';
import type { Ask } from '../../readings/reading.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { LAYERS, type Panel, SceneDrawing, sceneInSteps } from '../drawings/index.ts';
import { useGrowing } from '../growing.ts';
import { lieOf } from '../lie.ts';
import { prefer, preferences } from '../preferences.ts';
import { useAside } from './after-paint.ts';
import { announce } from './announce.tsx';

interface ProbeViewProps {
  readonly circuit: Circuit;
  readonly ask: Ask;
  /** Frames to come after. */
  readonly after: number;
}

/** Where the probes go, as the guitar lies on the bench, and a key that turns the drawing round. */
export function ProbeView({ circuit, ask, after }: ProbeViewProps) {
  const { turned } = preferences.value;
  const lie = lieOf(circuit);
  const key = JSON.stringify(ask);
  const rows = useAside(
    key,
    `${turned} ${lie.leftHanded}`,
    () => sceneInSteps(circuit, ask, lie),
    after,
  );
  const turn = () => {
    prefer({ turned: !turned });
    announce(turned ? pieceWords().drawnTheUsualWayRound : pieceWords().drawnTurnedByHalfATurn);
  };
  return (
    // Words and keys first; its place is kept.
    <div class="asking-drawing" style={{ visibility: rows ? 'visible' : 'hidden' }}>
      {rows && <GrowingScene key={key} circuit={circuit} ask={ask} rows={rows} />}
      <button
        type="button"
        class="quiet turn-key"
        aria-label={pieceWords().turnTheDrawingRound}
        aria-pressed={turned}
        onClick={turn}
      >
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M5 10a7.500 7.500 0 0 1 13.500 -3M19 3v4.500h-4.500M19 14a7.500 7.500 0 0 1 -13.500 3M5 21v-4.500h4.500" />
        </svg>
      </button>
    </div>
  );
}

interface GrowingSceneProps {
  readonly circuit: Circuit;
  readonly ask: Ask;
  readonly rows: readonly (readonly Panel[])[];
}

/** Layer by layer, each in its place. */
function GrowingScene(props: GrowingSceneProps) {
  const layers = useGrowing(LAYERS * props.rows.flat().length);
  return <SceneDrawing {...props} layers={layers} />;
}
