import type { Circuit, Setting } from '../../circuit/circuit.ts';
import { ControlsStrip } from '../drawings/index.ts';
import { lieOf } from '../lie.ts';
import { useAfterPaint } from './after-paint.ts';

interface LateControlsProps {
  /** Another one for every question. */
  readonly question: string;
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly previous: Setting | null;
}

/** How the controls must stand, a frame after words and keys: the drawing below gives it its room, so that no word moves. */
export function LateControls({ question, circuit, setting, previous }: LateControlsProps) {
  if (!useAfterPaint(question, 1)) return null;
  return (
    <ControlsStrip
      circuit={circuit}
      setting={setting}
      previous={previous}
      leftHanded={lieOf(circuit).leftHanded}
    />
  );
}
