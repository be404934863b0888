import type { Circuit } from '../../circuit/circuit.ts';
import type { Ask } from '../../readings/reading.ts';
import { called } from '../../words/called.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { describeAsk } from './describe.ts';
import { wrapWords } from './geometry.ts';
import { jointOf, lugWords } from './names.ts';
import { PanelRows } from './panel-rows.tsx';
import type { Lie } from './portrait.ts';
import { type Panel, sceneOf } from './scene.ts';

/** The parts that an ask is about, from the side the person sees, with both probes and whatever else the hands do. */
export function ProbeDrawing({ circuit, ask, lie }: { circuit: Circuit; ask: Ask; lie?: Lie }) {
  return <SceneDrawing circuit={circuit} ask={ask} rows={sceneOf(circuit, ask, lie)} />;
}

interface SceneDrawingProps {
  readonly circuit: Circuit;
  readonly ask: Ask;
  /** What `sceneOf` gives for both. */
  readonly rows: readonly (readonly Panel[])[];
  /** How many layers of them are drawn; all, where nothing is said. */
  readonly layers?: number;
}

/** The same of a scene that is laid out already. */
export function SceneDrawing({ circuit, ask, rows, layers }: SceneDrawingProps) {
  const drawn = new Set(
    rows.flat().flatMap((panel) => panel.stubs.stubs.map(({ joint }) => joint)),
  );
  const lifted = ask.setting.lifted.flatMap((joint) => {
    const at = drawn.has(joint) ? undefined : jointOf(circuit, joint);
    return at
      ? wrapWords(
          drawingWords().liftedColourAtLug(
            at.lead.colour ? called(at.lead.colour) : drawingWords().theLead,
            lugWords(circuit, at.lug),
          ),
          40,
        )
      : [];
  });
  return (
    <PanelRows
      rows={rows}
      words={describeAsk(circuit, ask)}
      below={lifted}
      {...(layers !== undefined && { layers })}
    />
  );
}
