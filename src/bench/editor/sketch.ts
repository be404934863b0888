import type { Circuit } from '../../circuit/circuit.ts';
import { type Act, afterAct } from '../../circuit/editing/act.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import type { Drawn } from '../../notebook/draft.ts';
import { type Place, type Places, placeParts, standOf } from '../drawings/whole/index.ts';

/** A wiring on the drawing board: what is joined to what, and where each part stands. */
export interface Sketch {
  readonly circuit: Circuit;
  /** One place for everything that is drawn as one thing. */
  readonly places: Places;
}

export type SketchAct =
  | Act
  | { readonly do: 'place'; readonly part: PartId; readonly place: Place }
  /** Every part to where it stands by itself. */
  | { readonly do: 'tidy' };

/** The sketch after an act. Throws CircuitError where the wiring refuses it. */
export function afterSketchAct(sketch: Sketch, act: SketchAct): Sketch {
  const { circuit, places } = sketch;
  if (act.do === 'tidy') return { circuit, places: placeParts(circuit) };
  if (act.do === 'place')
    return { circuit, places: new Map(places).set(standOf(circuit, act.part), act.place) };
  const next = afterAct(circuit, act);
  return { circuit: next, places: filled(next, places) };
}

/** Places for all, those that there are kept. The same object where nothing is missing. */
function filled(circuit: Circuit, places: Places): Places {
  const whole = circuit.parts.every(({ id }) => places.has(standOf(circuit, id)));
  return whole ? places : placeParts(circuit, places);
}

export const sketchFrom = ({ circuit, places }: Drawn): Sketch => ({
  circuit,
  places: filled(circuit, new Map(Object.entries(places))),
});

/** As it is stored: places of what is still there. */
export const drawnFrom = ({ circuit, places }: Sketch): Drawn => ({
  circuit,
  places: Object.fromEntries(
    circuit.parts.flatMap(({ id }) => {
      const place = places.get(id);
      if (!place) return [];
      const { x, y, turn } = place;
      return [[id, { x, y, turn }] as const];
    }),
  ),
});
