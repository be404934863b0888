export interface Point {
  readonly x: number;
  readonly y: number;
}
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}
export interface Disc {
  readonly at: Point;
  readonly radius: number;
}
export type Side = 'up' | 'down' | 'left' | 'right';

export const point = (x: number, y: number): Point => ({ x, y });
export const along = (from: Point, direction: Point, distance: number): Point =>
  point(from.x + direction.x * distance, from.y + direction.y * distance);
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
/** Degrees, 0 to the right, clockwise on the screen. */
export const heading = (degrees: number): Point =>
  point(Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180));

export const outward: Readonly<Record<Side, Point>> = {
  up: point(0, -1),
  down: point(0, 1),
  left: point(-1, 0),
  right: point(1, 0),
};

/** How far a disc reaches into a box; 0 when it stays clear. */
export function discIntoBox(disc: Disc, box: Box): number {
  const dx = Math.max(box.x - disc.at.x, 0, disc.at.x - box.x - box.w);
  const dy = Math.max(box.y - disc.at.y, 0, disc.at.y - box.y - box.h);
  return Math.max(0, disc.radius - Math.hypot(dx, dy));
}
export const discIntoDisc = (a: Disc, b: Disc): number =>
  Math.max(0, a.radius + b.radius - distance(a.at, b.at));

export const boxesOverlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;

const round = (value: number): number => Math.round(value * 10) / 10;

/** SVG path through the points, each inner corner rounded by `radius` or by what its legs allow. */
export function roundedPath(points: readonly Point[], radius: number): string {
  const first = points[0];
  if (!first) return '';
  let path = `M${round(first.x)} ${round(first.y)}`;
  for (let i = 1; i < points.length; i++) {
    const corner = points[i]!;
    const next = points[i + 1];
    const before = points[i - 1]!;
    if (!next) {
      path += `L${round(corner.x)} ${round(corner.y)}`;
      continue;
    }
    const into = distance(before, corner);
    const out = distance(corner, next);
    const r = Math.min(radius, into / 2, out / 2);
    if (r < 0.05) continue;
    const a = along(corner, point((before.x - corner.x) / into, (before.y - corner.y) / into), r);
    const b = along(corner, point((next.x - corner.x) / out, (next.y - corner.y) / out), r);
    path += `L${round(a.x)} ${round(a.y)}Q${round(corner.x)} ${round(corner.y)} ${round(b.x)} ${round(b.y)}`;
  }
  return path;
}

/** Words broken at plain spaces into lines of at most `limit` characters; a longer word keeps a line to itself. */
export function wrapWords(text: string, limit: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= limit) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else if (word) {
      lines.push(word);
    }
  }
  return lines;
}

/** A name on one line while it is short, else on the two that are the least wide. A word is never cut. */
export function nameLines(name: string, short: number): readonly string[] {
  if (name.length <= short) return [name];
  for (let limit = Math.ceil(name.length / 2); limit < name.length; limit += 1) {
    const lines = wrapWords(name, limit);
    if (lines.length <= 2) return lines;
  }
  return [name];
}
