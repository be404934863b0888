import type { Lead } from '../../circuit/circuit.ts';
import { type Box, discIntoBox, discIntoDisc, type Point, point } from './geometry.ts';
import { type Frame, labelBox, type Portrait } from './portrait.ts';
import { TEXT, textWidth } from './theme.ts';

/** A lead with both ends in the picture. */
export interface Link {
  readonly lead: Lead;
  readonly from: Point;
  readonly control: Point;
  readonly to: Point;
  readonly lifted: boolean;
  readonly onWire: Readonly<Record<'from' | 'to', Point>>;
}

/** Drawing units from a lug to the point "bare wire just beyond the joint". */
export const BEYOND_JOINT = 24;

/** Bows tried, as shares of the distance; the sign is the side. */
const BOWS = [0.5, -0.5, 0.3, -0.3, 0.8, -0.8, 1.1, -1.1];

/** A soft bow from lug to lug, on the side and as deep as keeps it off the other lugs and their names. */
export function linkBetween(lead: Lead, portrait: Portrait, frame: Frame): Link {
  const a = portrait.spots.get(lead.from)!.at;
  const b = portrait.spots.get(lead.to)!.at;
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const normal = point(-(b.y - a.y) / length, (b.x - a.x) / length);
  const middle = point((a.x + b.x) / 2, (a.y + b.y) / 2);
  const outside =
    normal.x * (middle.x - frame.w / 2) + normal.y * (middle.y - frame.h / 2) >= 0 ? 1 : -1;
  const others = [...portrait.spots].filter(([ref]) => ref !== lead.from && ref !== lead.to);
  const words: Box[] = [...portrait.spots.values()].map((spot) =>
    labelBox(spot, textWidth(spot.label, TEXT.lug), TEXT.lug),
  );
  let best = { cost: Number.POSITIVE_INFINITY, control: middle };
  for (const [i, share] of BOWS.entries()) {
    const bow = Math.min(150, length * Math.abs(share)) * Math.sign(share) * outside;
    const control = point(middle.x + normal.x * bow, middle.y + normal.y * bow);
    let cost = i * 0.5;
    for (let t = 0.1; t < 0.95; t += 0.05) {
      const here = { at: onCurve(a, control, b, t), radius: 2 };
      for (const [, { at, radius }] of others)
        cost += discIntoDisc(here, { at, radius: radius + 3 }) * 3;
      for (const box of words) cost += discIntoBox(here, box);
      const { x, y } = here.at;
      cost +=
        4 *
        (Math.max(0, -x) + Math.max(0, x - frame.w) + Math.max(0, -y) + Math.max(0, y - frame.h));
    }
    if (cost < best.cost) best = { cost, control };
  }
  const { control } = best;
  const t = Math.min(0.4, BEYOND_JOINT / length);
  const onWire = { from: onCurve(a, control, b, t), to: onCurve(a, control, b, 1 - t) };
  return { lead, from: a, control, to: b, lifted: false, onWire };
}

/** Point of the quadratic curve at t in 0..1. */
function onCurve(a: Point, control: Point, b: Point, t: number): Point {
  return point(
    (1 - t) ** 2 * a.x + 2 * t * (1 - t) * control.x + t ** 2 * b.x,
    (1 - t) ** 2 * a.y + 2 * t * (1 - t) * control.y + t ** 2 * b.y,
  );
}
