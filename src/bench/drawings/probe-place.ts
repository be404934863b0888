import type { Rests } from '../../diagnosis/rests.ts';
import {
  along,
  type Box,
  type Disc,
  discIntoBox,
  discIntoDisc,
  heading,
  type Point,
} from './geometry.ts';

/** A probe as drawn: its tip, the way from the tip to the hand, and how far along lie mark and end. */
export interface PlacedProbe {
  readonly tip: Point;
  readonly degrees: number;
}
export const PROBE = { needle: 20, mark: 35, markRadius: 14, end: 70 } as const;

export interface Obstacles {
  readonly discs: readonly Disc[];
  readonly boxes: readonly Box[];
  /** Lines that may be crossed, at a price. */
  readonly lines: readonly (readonly Point[])[];
  readonly room: Box;
}

/** The discs that a probe covers, its tip left out. */
export function coverOf({ tip, degrees }: PlacedProbe): Disc[] {
  const way = heading(degrees);
  const disc = (d: number, radius: number): Disc => ({ at: along(tip, way, d), radius });
  return [
    disc(12, 2),
    disc(19, 3),
    disc(PROBE.mark, PROBE.markRadius + 5),
    disc(54, 7),
    disc(PROBE.end - 5, 7),
  ];
}

const STEP = 15;
const angles = Array.from({ length: 360 / STEP }, (_, i) => i * STEP);

function costOf(
  probe: PlacedProbe,
  cover: readonly Disc[],
  obstacles: Obstacles,
  prefer: -1 | 0 | 1,
): number {
  let cost = 0;
  const { room } = obstacles;
  for (const disc of cover) {
    for (const other of obstacles.discs) cost += discIntoDisc(disc, other) * 6;
    for (const box of obstacles.boxes) cost += discIntoBox(disc, box) * 6;
    for (const line of obstacles.lines)
      if (line.some((p) => discIntoDisc(disc, { at: p, radius: 1 }) > 0)) cost += 1.2;
    const { x, y } = disc.at;
    const r = disc.radius;
    cost +=
      8 *
      (Math.max(0, room.x - x + r) +
        Math.max(0, x + r - room.x - room.w) +
        Math.max(0, room.y - y + r) +
        Math.max(0, y + r - room.y - room.h));
  }
  const way = heading(probe.degrees);
  // Probes come out of the hands: red leans left, black right; straight up, down or level looks stiff.
  cost += 1.5 * (1 - prefer * way.x);
  cost += probe.degrees % 90 === 0 ? 2 : 0;
  return cost;
}

/** Directions for up to two probes so that they hide no lug, no word and not each other. */
export function* placingProbes(
  red: Point | undefined,
  black: Point | undefined,
  obstacles: Obstacles,
): Rests<{ red?: PlacedProbe; black?: PlacedProbe }> {
  const candidates = (tip: Point | undefined, prefer: -1 | 0 | 1) =>
    tip
      ? angles.map((degrees) => {
          const probe = { tip, degrees };
          const cover = coverOf(probe);
          return { probe, cost: costOf(probe, cover, obstacles, prefer), cover };
        })
      : [];
  const reds = candidates(red, red && black ? (red.x <= black.x ? -1 : 1) : 0);
  yield;
  const blacks = candidates(black, red && black ? (red.x <= black.x ? 1 : -1) : 0);
  yield;
  const least = (list: typeof reds) =>
    list.reduce<(typeof reds)[number] | undefined>(
      (a, b) => (!a || b.cost < a.cost ? b : a),
      undefined,
    );
  if (reds.length === 0 || blacks.length === 0) {
    const r = least(reds)?.probe;
    const b = least(blacks)?.probe;
    return { ...(r && { red: r }), ...(b && { black: b }) };
  }
  let best = { cost: Number.POSITIVE_INFINITY, red: reds[0]!.probe, black: blacks[0]!.probe };
  for (const r of reds) {
    for (const b of blacks) {
      let cost = r.cost + b.cost;
      if (cost >= best.cost) continue;
      for (const x of r.cover) {
        cost += discIntoDisc(x, { at: b.probe.tip, radius: 12 }) * 12;
        for (const y of b.cover) cost += discIntoDisc(x, y) * 6;
      }
      for (const y of b.cover) cost += discIntoDisc(y, { at: r.probe.tip, radius: 12 }) * 12;
      if (cost < best.cost) best = { cost, red: r.probe, black: b.probe };
    }
  }
  return { red: best.red, black: best.black };
}
