import { type Box, boxesOverlap } from '../geometry.ts';
import { union } from './boxes.ts';
import { GRID } from './places.ts';

/** Units between a new part and others: as much again as the leads that pass between two parts need. */
const CLEAR = 48;
const STEP = 4 * GRID;

/**
 * A place, counted as the part's own, for something that is joined to nothing yet: free room within the sheet if there is any,
 * else where the sheet grows least away from the shape of a page, width over height; the uppermost, then the leftmost. So parts
 * that come out of a tray one by one stand in rows.
 */
export function roomOnSheet(
  box: Box,
  others: readonly Box[],
  shape: number,
): { readonly x: number; readonly y: number } {
  const all = union(others);
  const onStep = (value: number) => Math.ceil(value / STEP) * STEP;
  const size = (x: number, y: number): number => {
    const right = Math.max(all.x + all.w, x + box.x + box.w);
    const low = Math.max(all.y + all.h, y + box.y + box.h);
    return Math.max((right - all.x) / shape, low - all.y);
  };
  let best: { x: number; y: number; size: number } | null = null;
  for (let y = onStep(all.y - box.y); y <= all.y + all.h + CLEAR + STEP - box.y; y += STEP)
    for (let x = onStep(all.x - box.x); x <= all.x + all.w + CLEAR + STEP - box.x; x += STEP) {
      const room = {
        x: x + box.x - CLEAR,
        y: y + box.y - CLEAR,
        w: box.w + 2 * CLEAR,
        h: box.h + 2 * CLEAR,
      };
      const grown = size(x, y);
      if (best && best.size <= grown) continue;
      if (!others.some((other) => boxesOverlap(room, other))) best = { x, y, size: grown };
    }
  // Right below everything there is always room.
  const { x, y } = best ?? { x: onStep(all.x - box.x), y: onStep(all.y + all.h + CLEAR - box.y) };
  return { x, y };
}
