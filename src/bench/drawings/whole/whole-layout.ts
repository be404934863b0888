import type { Circuit } from '../../../circuit/circuit.ts';
import type { Box } from '../geometry.ts';
import { union } from './boxes.ts';
import { type LeadWord, leadWords } from './lead-words.ts';
import { placeParts } from './place-parts.ts';
import type { Places } from './places.ts';
import { type LeadPath, routeLeads, type Standing, standing } from './route-leads.ts';

/** Everything that is drawn, in layout units. */
export interface WholeLayout {
  /** What the drawing covers, with a margin. */
  readonly box: Box;
  readonly stands: readonly Standing[];
  readonly leads: readonly LeadPath[];
  readonly words: readonly LeadWord[];
}

/** Units kept free at the edges. */
const MARGIN = 12;
const own = new WeakMap<Circuit, WholeLayout>();
const placed = new WeakMap<Places, { circuit: Circuit; layout: WholeLayout }>();

/** The whole wiring with its parts where `places` say, or where they come to stand by themselves. Remembered by object. */
export function wholeLayout(circuit: Circuit, places?: Places): WholeLayout {
  const before = places ? placed.get(places) : undefined;
  const found = places
    ? before?.circuit === circuit
      ? before.layout
      : undefined
    : own.get(circuit);
  if (found) return found;
  const where = places ?? placeParts(circuit);
  const stands = standing(circuit, where);
  const leads = routeLeads(circuit, where);
  const boxes = stands.map(({ at, footprint: { box } }) => ({
    ...box,
    x: at.x + box.x,
    y: at.y + box.y,
  }));
  const points = leads.flatMap((lead) => lead.points.map(({ x, y }) => ({ x, y, w: 0, h: 0 })));
  const all =
    boxes.length + points.length > 0
      ? union([...boxes, ...points])
      : { x: 0, y: 0, w: 240, h: 180 };
  const bare = {
    box: {
      x: all.x - MARGIN,
      y: all.y - MARGIN,
      w: all.w + 2 * MARGIN,
      h: all.h + 2 * MARGIN,
    },
    stands,
    leads,
  };
  const layout = { ...bare, words: leadWords(bare) };
  if (places) placed.set(places, { circuit, layout });
  else own.set(circuit, layout);
  return layout;
}
