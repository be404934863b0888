import type { Circuit } from '../../../circuit/circuit.ts';
import { type Box, type Point, point } from '../geometry.ts';
import type { Frame, Portrait } from '../portrait.ts';
import { portraitOf } from '../subject.ts';
import type { Stand } from './places.ts';

/** A portrait at the size it has in the whole drawing. Everything in the portrait's own units, not turned. */
export interface Figure {
  readonly portrait: Portrait;
  /** The point that stands on the place, and about which the part is turned. */
  readonly middle: Point;
  /** What the body covers; lugs and words come on top. */
  readonly body: Box;
}

const NO_COILS: ReadonlySet<string> = new Set();
const around = (x: number, half: number, top: number, bottom: number): Box => ({
  x: x - half,
  y: top,
  w: 2 * half,
  h: bottom - top,
});

/** Scales are such that the lugs of a row stand on the grid: leads then leave them straight. */
export function figureOf(circuit: Circuit, stand: Stand): Figure {
  const draw = (frame: Frame): Portrait => portraitOf(circuit, stand.subject, frame, NO_COILS);
  const first = stand.parts[0]!;
  if (first.kind === 'coil' || circuit.pickups.some(({ id }) => id === stand.subject.key)) {
    const coils = Math.max(1, stand.parts.filter(({ kind }) => kind === 'coil').length);
    const scale = 48 / 53;
    const frame = { w: 212, h: coils * 54 * scale + 120, scale };
    const metal = stand.parts.some(({ kind }) => kind === 'metal');
    const half = (metal ? 78 : 53) * scale;
    const [x, y] = [frame.w / 2 - 6, frame.h / 2];
    const top = y - ((coils - 1) * 27 + 27) * scale;
    return {
      portrait: draw(frame),
      middle: point(x, top + 27 * scale),
      body: around(x, half, top, top + coils * 54 * scale),
    };
  }
  switch (first.kind) {
    case 'pot': {
      const scale = 36 / 38;
      const frame = { w: 200, h: 200, scale };
      const r = 40 * scale;
      const cy = 34 * scale + r;
      const carried = stand.parts.find((part) => part.kind === 'switch');
      const block = carried?.kind === 'switch' ? (carried.rows.length * 25 * scale) / 2 : 0;
      return {
        portrait: draw(frame),
        middle: point(100, Math.round(cy)),
        body: around(100, 51, Math.min(cy - r, cy + 6 - block), cy + r + 42),
      };
    }
    case 'switch': {
      const columns = Math.max(1, ...first.rows.map((row) => row.length));
      const rows = first.rows.length;
      if (first.style === 'rotary') {
        const frame = { w: 200, h: 200, scale: 0.9 };
        return { portrait: draw(frame), middle: point(100, 100), body: around(100, 60, 40, 160) };
      }
      const level = columns <= 2 && rows >= 2;
      const scale = level ? 15 / 17 : 1;
      const frame = { w: (columns - 1) * 36 + 132, h: Math.max(160, rows * 46), scale };
      const portrait = draw(frame);
      const spots = [...portrait.spots].filter(([ref]) => !ref.endsWith('.frame'));
      const ys = spots.map(([, { at }]) => at.y);
      const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
      const xs = spots.map(([, { at }]) => at.x);
      const [left, right] = [Math.min(...xs), Math.max(...xs)];
      const cx = frame.w / 2;
      if (first.style === 'button')
        return {
          portrait,
          middle: point(cx, top),
          body: around(cx, Math.max(34 * scale, (right - left) / 2 + 16), top - 56, top + 8),
        };
      const flange = first.frame ? 26 : 0;
      const half = (right - left) / 2 + (level ? 7 : 16) + flange;
      if (rows === 1)
        return { portrait, middle: point(cx, top), body: around(cx, half, top - 37, top + 8) };
      return {
        portrait,
        middle: level ? point(cx, top) : point(cx, (top + bottom) / 2),
        body: around(cx, half, top - (level ? 16 : 8), bottom + (level ? 16 : 8)),
      };
    }
    case 'jack': {
      const scale = first.ring ? 2 / 3 : 3 / 4;
      const frame = { w: 140, h: 140, scale };
      const r = 36 * scale;
      const y = 14 + 2 * r + 40;
      return {
        portrait: draw(frame),
        middle: point(70, 14 + r),
        body: around(70, r + 14, 14, y + 9),
      };
    }
    case 'capacitor':
    case 'resistor': {
      const scale = 36 / 44;
      const frame = { w: 120, h: 120, scale };
      const cy = 62 * scale;
      return {
        portrait: draw(frame),
        middle: point(60, Math.round(cy)),
        body: around(60, 38, cy - 25 * scale, cy + 44 * scale + 6),
      };
    }
    case 'splice': {
      const scale = 0.6;
      const frame = { w: 90, h: 120, scale };
      const bare = 16 + 58 * scale;
      return {
        portrait: draw(frame),
        middle: point(45, bare + 30 * scale),
        body: around(45, 15 * scale, 16, bare + 30 * scale + 8),
      };
    }
    case 'metal': {
      const strings = first.role === 'strings';
      const scale = strings ? 0.6 : 0.7;
      const frame = { w: 160, h: strings ? 120 : 110, scale };
      const cy = frame.h / 2 - 8;
      return {
        portrait: draw(frame),
        middle: point(80, strings ? cy + 18 : cy),
        body: strings
          ? around(80, 72 * scale, 4, cy + 60 * scale)
          : around(80, 72 * scale, cy - 46 * scale, cy + 46 * scale),
      };
    }
  }
}
