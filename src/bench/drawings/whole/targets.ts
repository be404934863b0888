import type { LeadId, LugRef } from '../../../circuit/circuit.ts';
import type { SiteId } from '../../../circuit/edit.ts';
import type { PartId } from '../../../circuit/parts/part.ts';
import { type Point, point } from '../geometry.ts';
import { bodyBox } from './body-box.ts';
import { toSegment } from './boxes.ts';
import type { Dot } from './dots.ts';
import type { WholeLayout } from './whole-layout.ts';

/** What a finger can mean. */
export interface Handlers {
  readonly onLug?: ((lug: LugRef) => void) | undefined;
  /** A joint, or another place that has a dot. */
  readonly onSite?: ((site: SiteId | PartId) => void) | undefined;
  readonly onLead?: ((lead: LeadId) => void) | undefined;
  readonly onPart?: ((part: PartId) => void) | undefined;
}

/** How far from a thing a finger may land, CSS pixels. */
const REACH = 24;
/** How much nearer a lead must be than a lug or joint to be meant, CSS pixels. */
const LEAD_BEHIND = 7;
/** What lies over a part is meant before the part itself, if it is nearer than this, CSS pixels. */
const PART_BEHIND = 16;

/** Things lie closer than fingers are wide: a tap is for the nearest. `scale` is CSS pixels per unit. */
export function meantBy(
  layout: WholeLayout,
  tap: Point,
  scale: number,
  handlers: Handlers,
  dots: readonly Dot[],
): (() => void) | null {
  const near: { away: number; act: () => void }[] = [];
  const { onLug, onSite, onLead, onPart } = handlers;
  const pixels = (at: Point) => Math.hypot(at.x - tap.x, at.y - tap.y) * scale;
  const offer = (away: number, behind: number, act: () => void): void => {
    if (away <= REACH) near.push({ away: away + behind, act });
  };
  if (onLug)
    for (const { at, footprint } of layout.stands)
      for (const { ref, at: spot } of footprint.lugs)
        offer(pixels(point(at.x + spot.x, at.y + spot.y)), 0, () => onLug(ref));
  if (onSite) for (const { at, site } of dots) offer(pixels(at), 0, () => onSite(site));
  if (onLead)
    for (const { lead, points } of layout.leads)
      offer(toLine(points, tap) * scale, LEAD_BEHIND, () => onLead(lead.id));
  if (onPart)
    for (const stand of layout.stands) {
      const { x, y, w, h } = bodyBox(stand);
      const aside = Math.max(x - tap.x, 0, tap.x - x - w);
      const below = Math.max(y - tap.y, 0, tap.y - y - h);
      const id = partAt(stand, tap);
      offer(Math.hypot(aside, below) * scale, PART_BEHIND, () => onPart(id));
    }
  near.sort((a, b) => a.away - b.away);
  return near[0]?.act ?? null;
}

/** Of a pot with a switch on its back the one whose lug is nearest. */
function partAt({ at, footprint }: WholeLayout['stands'][number], tap: Point): PartId {
  if (footprint.stand.parts[0]?.kind !== 'pot') return footprint.stand.id;
  const away = (spot: Point) => Math.hypot(at.x + spot.x - tap.x, at.y + spot.y - tap.y);
  const [lug] = [...footprint.lugs].sort((a, b) => away(a.at) - away(b.at));
  return lug ? lug.ref.slice(0, lug.ref.indexOf('.')) : footprint.stand.id;
}

/** Distance from a point to a line of stretches. */
const toLine = (points: readonly Point[], tap: Point): number =>
  Math.min(...points.slice(1).map((b, i) => toSegment(tap, points[i]!, b)));
