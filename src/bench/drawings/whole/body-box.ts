import type { Box } from '../geometry.ts';
import type { Standing } from './route-leads.ts';
import { turnedBox } from './turn.ts';

/** Where the body of a stand lies, in layout units. */
export function bodyBox({ at, footprint }: Standing): Box {
  const { figure, turn } = footprint;
  const { body, middle } = figure;
  const box = turnedBox({ ...body, x: body.x - middle.x, y: body.y - middle.y }, turn);
  return { ...box, x: at.x + box.x, y: at.y + box.y };
}
