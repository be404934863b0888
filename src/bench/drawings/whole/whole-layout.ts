import type { Circuit } from '../../../circuit/circuit.ts';
import { endedAside, nextTask } from '../../next-task.ts';
import type { Box } from '../geometry.ts';
import { union } from './boxes.ts';
import { type LeadWord, leadWords } from './lead-words.ts';
import type { Way } from './maze.ts';
import { footprintsAhead, placeParts, placing } from './place-parts.ts';
import type { Places } from './places.ts';
import { route } from './route.ts';
import {
  type LeadPath,
  pathsOf,
  type Standing,
  type Survey,
  standing,
  surveyed,
} from './route-leads.ts';
import { waysAside } from './ways-aside.ts';

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

/** The layout as it was worked out before for this very circuit and these very places. */
export function foundLayout(circuit: Circuit, places?: Places): WholeLayout | undefined {
  if (!places) return own.get(circuit);
  const before = placed.get(places);
  return before?.circuit === circuit ? before.layout : undefined;
}

/** The whole wiring with its parts where `places` say, or where they come to stand by themselves. Remembered by object. */
export function wholeLayout(circuit: Circuit, places?: Places): WholeLayout {
  const found = foundLayout(circuit, places);
  if (found) return found;
  const stands = standing(circuit, places ?? placeParts(circuit));
  const survey = surveyed(circuit, stands);
  return drawnUp(circuit, places, { stands, survey }, route(survey.errands, survey.boxes));
}

/**
 * The same, with the ways of the leads searched beside the page: for a large wiring that takes many times as long as a frame.
 * Undefined where another layout was asked for meanwhile.
 */
export async function layoutAside(
  circuit: Circuit,
  places?: Places,
): Promise<WholeLayout | undefined> {
  if (!places) await footprintsAhead(circuit);
  await nextTask();
  const stands = standing(circuit, places ?? (await endedAside(placing(circuit))));
  await nextTask();
  const plan = { stands, survey: surveyed(circuit, stands) };
  await nextTask();
  const ways = await waysAside(plan.survey);
  await nextTask();
  return ways && drawnUp(circuit, places, plan, ways);
}

interface Plan {
  readonly stands: readonly Standing[];
  readonly survey: Survey;
}

function drawnUp(
  circuit: Circuit,
  places: Places | undefined,
  { stands, survey }: Plan,
  ways: ReadonlyMap<string, Way>,
): WholeLayout {
  const leads = pathsOf(survey, ways);
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
