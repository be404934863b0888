import { type Box, type Point, point, type Side } from '../geometry.ts';
import type { Turn } from './places.ts';

/** Quarter turns clockwise on the screen. */
export function turned({ x, y }: Point, turn: Turn): Point {
  if (turn === 90) return point(-y, x);
  if (turn === 180) return point(-x, -y);
  if (turn === 270) return point(y, -x);
  return point(x, y);
}
export function turnedBox({ x, y, w, h }: Box, turn: Turn): Box {
  const [a, b] = [turned(point(x, y), turn), turned(point(x + w, y + h), turn)];
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    w: Math.abs(a.x - b.x),
    h: Math.abs(a.y - b.y),
  };
}
const clockwise: readonly Side[] = ['up', 'right', 'down', 'left'];
export const turnedSide = (side: Side, turn: Turn): Side =>
  clockwise[(clockwise.indexOf(side) + turn / 90) % 4]!;
