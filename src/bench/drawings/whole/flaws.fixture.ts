import type { Circuit } from '../../../circuit/circuit.ts';
import { type Box, boxesOverlap, distance, type Point } from '../geometry.ts';
import { toSegment } from './boxes.ts';
import { GRID, type Places, placeParts, routeLeads } from './index.ts';
import { standing } from './route-leads.ts';

type Segment = readonly [Point, Point];
const segments = (points: readonly Point[]): Segment[] =>
  points.slice(1).map((b, i) => [points[i]!, b]);

/** The steps of a cell each that a lead takes, whichever way it goes. */
function steps([a, b]: Segment): string[] {
  const n = Math.round(distance(a, b) / GRID);
  const at = (k: number) => `${a.x + ((b.x - a.x) * k) / n},${a.y + ((b.y - a.y) * k) / n}`;
  return Array.from({ length: n }, (_, k) => [at(k), at(k + 1)].sort().join(' '));
}

/** What is wrong with a drawing, in words; empty where nothing is. */
export function flawsOf(circuit: Circuit, places: Places = placeParts(circuit)): string[] {
  const all = standing(circuit, places);
  const flaws = new Set<string>();
  const boxOf = ({ at, footprint: { box } }: (typeof all)[number]): Box => ({
    ...box,
    x: at.x + box.x,
    y: at.y + box.y,
  });
  for (const [i, a] of all.entries())
    for (const b of all.slice(i + 1))
      if (boxesOverlap(boxOf(a), boxOf(b)))
        flaws.add(`${a.footprint.stand.id} lies on ${b.footprint.stand.id}`);
  const paths = routeLeads(circuit, places);
  for (const { id } of circuit.leads)
    if (!paths.some(({ lead }) => lead.id === id)) flaws.add(`${id} is missing`);
  const taken = new Map<string, string>();
  for (const { lead, points, tails } of paths) {
    const free = segments(points.slice(tails.from - 1, points.length - tails.to + 1));
    for (const segment of free) {
      const [a, b] = segment;
      if (a.x !== b.x && a.y !== b.y) flaws.add(`${lead.id} runs aslant`);
      for (const step of steps(segment)) {
        const other = taken.get(step);
        if (other !== undefined) flaws.add(`${lead.id} runs along ${other}`);
        taken.set(step, lead.id);
      }
    }
    for (const stand of all) {
      const { x, y, w, h } = boxOf(stand);
      // On the outline itself a lead may start.
      const inner = { x: x + 0.1, y: y + 0.1, w: w - 0.2, h: h - 0.2 };
      for (const [a, b] of free) {
        const stretch = {
          x: Math.min(a.x, b.x) - 0.01,
          y: Math.min(a.y, b.y) - 0.01,
          w: Math.abs(a.x - b.x) + 0.02,
          h: Math.abs(a.y - b.y) + 0.02,
        };
        if (boxesOverlap(stretch, inner))
          flaws.add(`${lead.id} runs over ${stand.footprint.stand.id}`);
      }
      for (const { ref, at, radius } of stand.footprint.lugs) {
        if (ref === lead.from || ref === lead.to) continue;
        const spot = { x: stand.at.x + at.x, y: stand.at.y + at.y };
        if (segments(points).some(([a, b]) => toSegment(spot, a, b) < radius))
          flaws.add(`${lead.id} runs over the lug ${ref}`);
      }
    }
  }
  return [...flaws];
}
