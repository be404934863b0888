import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { ControlsStrip } from '../drawings/index.ts';
import { useGrowing } from '../growing.ts';
import { lieOf } from '../lie.ts';
import { useAfterPaint } from './after-paint.ts';

interface LateControlsProps {
  /** Another one for every question. */
  readonly question: string;
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly previous: Setting | null;
  /** Frames to come after. */
  readonly after: number;
}

/** How the controls must stand, a frame after words and keys: the drawing below gives it its room, so that no word moves. */
export function LateControls({ question, after, ...shown }: LateControlsProps) {
  if (!useAfterPaint(question, after)) return null;
  return <GrowingControls {...shown} />;
}

/** Their words first, and then their figures, some in each frame. */
function GrowingControls(props: Pick<LateControlsProps, 'circuit' | 'setting' | 'previous'>) {
  const times = useGrowing(3) - 1;
  return (
    <ControlsStrip
      {...props}
      leftHanded={lieOf(props.circuit).leftHanded}
      figures={times === 2 ? Number.POSITIVE_INFINITY : times * AT_ONCE}
    />
  );
}

/** Figures of controls that are drawn in one frame, where more follow. */
const AT_ONCE = 3;
