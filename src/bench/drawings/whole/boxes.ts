import type { Box, Point } from '../geometry.ts';
import { GRID } from './places.ts';

/** The least box around boxes. */
export const union = (boxes: readonly Box[]): Box => {
  const x = Math.min(...boxes.map((box) => box.x));
  const y = Math.min(...boxes.map((box) => box.y));
  return {
    x,
    y,
    w: Math.max(...boxes.map((box) => box.x + box.w)) - x,
    h: Math.max(...boxes.map((box) => box.y + box.h)) - y,
  };
};
/** The least box of whole cells around a box with some room. */
export const onGrid = (box: Box, room: number): Box => {
  const left = Math.floor((box.x - room) / GRID) * GRID;
  const top = Math.floor((box.y - room) / GRID) * GRID;
  const right = Math.ceil((box.x + box.w + room) / GRID) * GRID;
  const bottom = Math.ceil((box.y + box.h + room) / GRID) * GRID;
  return { x: left, y: top, w: right - left, h: bottom - top };
};

/** Distance from a point to a stretch between two others. */
export function toSegment({ x, y }: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((x - a.x) * dx + (y - a.y) * dy) / square;
  const t = Math.max(0, Math.min(1, along));
  return Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
}
