import type { LeadId } from '../../../circuit/circuit.ts';
import { called } from '../../../words/called.ts';
import { type Box, boxesOverlap, distance, type Point, point } from '../geometry.ts';
import { textWidth } from '../theme.ts';
import { WHOLE_TEXT } from './footprint.ts';
import type { LeadPath, Standing } from './route-leads.ts';

/** The colour of a lead as a word on it, reading along it. */
export interface LeadWord {
  readonly lead: LeadId;
  readonly text: string;
  readonly at: Point;
  /** On an upright stretch: read from below. */
  readonly upright: boolean;
}

/** Steps in units at which places along a lead are tried. */
const STEP = 12;

/** A word on every lead whose colour was entered, where it covers least: on a straight stretch, off other leads, parts and words. */
export function leadWords(layout: {
  readonly stands: readonly Standing[];
  readonly leads: readonly LeadPath[];
}): readonly LeadWord[] {
  const boxes = layout.stands.map(({ at, footprint: { box } }) => ({
    ...box,
    x: at.x + box.x,
    y: at.y + box.y,
  }));
  const words: LeadWord[] = [];
  const taken: Box[] = [];
  for (const { lead, points } of layout.leads) {
    if (!lead.colour) continue;
    const text = called(lead.colour);
    const w = textWidth(text, WHOLE_TEXT.lead) + 6;
    const h = WHOLE_TEXT.lead + 2;
    let best: { cost: number; word: LeadWord; box: Box } | null = null;
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1]!, points[i]!];
      const long = distance(a, b);
      if ((a.x !== b.x && a.y !== b.y) || long < w + 12) continue;
      const upright = a.x === b.x;
      for (let d = w / 2 + 6; d <= long - w / 2 - 6; d += STEP) {
        const at = point(a.x + ((b.x - a.x) * d) / long, a.y + ((b.y - a.y) * d) / long);
        const box = upright
          ? { x: at.x - h / 2, y: at.y - w / 2, w: h, h: w }
          : { x: at.x - w / 2, y: at.y - h / 2, w, h };
        const others = layout.leads.filter(
          (other) => other.lead !== lead && passes(other.points, box),
        ).length;
        const cost =
          (upright ? 6 : 0) +
          others * 30 +
          taken.filter((other) => boxesOverlap(other, box)).length * 100 +
          boxes.filter((other) => boxesOverlap(other, box)).length * 60 +
          // Near the end that a person sees first.
          (i / points.length) * 4;
        if (!best || cost < best.cost)
          best = { cost, box, word: { lead: lead.id, text, at, upright } };
      }
    }
    if (!best) continue;
    words.push(best.word);
    taken.push(best.box);
  }
  return words;
}

function passes(points: readonly Point[], box: Box): boolean {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const stretch = {
      x: Math.min(a.x, b.x) - 1,
      y: Math.min(a.y, b.y) - 1,
      w: Math.abs(a.x - b.x) + 2,
      h: Math.abs(a.y - b.y) + 2,
    };
    if (boxesOverlap(stretch, box)) return true;
  }
  return false;
}
