import type { JointId, LugRef } from '../../../circuit/circuit.ts';
import { type Box, outward, type Point, point, type Side } from '../geometry.ts';
import { along, type Draft, draftsOf, type Lug, level } from './exits.ts';
import type { Figure } from './figure.ts';
import { GRID, type Stand, type Turn } from './places.ts';
import { spread } from './spread.ts';

/** One way for one lead out of a part; points from the part's place, in layout units. */
export interface Slot {
  /** Where it meets the grid, on the outline of the part's box. */
  readonly port: Point;
  readonly side: Side;
  /** From the lug to the port, both included. */
  readonly tail: readonly Point[];
  /** Where the joint's dot is drawn, on the tail. */
  readonly dot: Point;
  /** A joint with a blob of solder of its own, on metal. */
  readonly blob: boolean;
}

export interface Sides {
  readonly box: Box;
  readonly title: Box;
  readonly slots: ReadonlyMap<LugRef, readonly Slot[]>;
}

/** Grid cells between two leads that leave on one side. */
const APART = 2;
/** Room from a lug to where its leads meet the grid, in units. */
const DEPTH = 15;

/** Room that the name of a part takes: inside its body, beside it on the right, or in a strip above or below. */
interface Title {
  readonly where: 'inside' | 'beside' | 'strip';
  readonly w: number;
  readonly h: number;
}

/** Ways out of a part on all its sides, the box they end on, and the room for its title. `inner` holds body and names. */
export function sidesOf(
  stand: Stand,
  figure: Figure,
  lugs: readonly Lug[],
  turn: Turn,
  joints: ReadonlyMap<LugRef, readonly JointId[]>,
  inner: Box,
  title: Title,
): Sides {
  const drafts = lugs.flatMap((lug) =>
    draftsOf(stand, figure, lug, turn, joints.get(lug.ref)?.length ?? 0),
  );
  const used = new Set(drafts.map(({ side }) => side));
  const edge = edges(inner, drafts);
  const placed = new Map<LugRef, { draft: Draft; at: number }[]>();
  let [first, last] = [0, 0];
  const upright: Side = !used.has('up') ? 'up' : !used.has('down') ? 'down' : 'up';
  for (const side of ['up', 'down', 'left', 'right'] as const) {
    const on = drafts.filter((draft) => draft.side === side).sort((a, b) => a.wanted - b.wanted);
    const at = spread(
      on.map(({ wanted }) => wanted),
      APART,
    );
    for (const [i, draft] of on.entries())
      placed.set(draft.lug.ref, [...(placed.get(draft.lug.ref) ?? []), { draft, at: at[i]! }]);
    if (on.length === 0) continue;
    const [least, most] = [(at[0]! - 1) * GRID, (at.at(-1)! + 1) * GRID];
    if (level(side)) {
      edge.up = Math.min(edge.up, least);
      edge.down = Math.max(edge.down, most);
    } else {
      edge.left = Math.min(edge.left, least);
      edge.right = Math.max(edge.right, most);
      if (side === upright) [first, last] = [least, most];
    }
  }
  const room = titleRoom(edge, upright, used.has(upright), { first, last }, title);
  const slots = new Map<LugRef, Slot[]>();
  for (const [ref, list] of placed)
    slots.set(
      ref,
      list.map(({ draft, at }) => slotOf(draft, at * GRID, edge)),
    );
  return {
    box: { x: edge.left, y: edge.up, w: edge.right - edge.left, h: edge.down - edge.up },
    title: room,
    slots,
  };
}

type Edges = Record<Side, number>;

function edges(inner: Box, drafts: readonly Draft[]): Edges {
  const edge: Edges = {
    left: inner.x,
    right: inner.x + inner.w,
    up: inner.y,
    down: inner.y + inner.h,
  };
  for (const { side, from, blob } of drafts) {
    const depth = blob ? 8 : DEPTH;
    const out = outward[side];
    const at = (level(side) ? from.x : from.y) + (out.x + out.y) * depth;
    const snapped = out.x + out.y > 0 ? Math.ceil(at / GRID) * GRID : Math.floor(at / GRID) * GRID;
    edge[side] = out.x + out.y > 0 ? Math.max(edge[side], snapped) : Math.min(edge[side], snapped);
  }
  return edge;
}

/** Widens the box for the title: on a free side across it, else beside the leads that leave there. */
function titleRoom(
  edge: Edges,
  side: Side,
  taken: boolean,
  { last }: { first: number; last: number },
  { where, w, h }: Title,
): Box {
  if (where === 'inside') return { x: 0, y: 0, w: 0, h: 0 };
  if (where === 'beside') {
    const x = edge.right;
    edge.right = Math.ceil((x + w + 6) / GRID) * GRID;
    return { x: x + 2, y: edge.up + 4, w, h };
  }
  const strip = Math.ceil(h / GRID) * GRID;
  const outer = side === 'up' ? edge.up - strip : edge.down;
  if (side === 'up') edge.up = outer;
  else edge.down += strip;
  if (taken) {
    edge.right = Math.max(edge.right, Math.ceil((last + w + 4) / GRID) * GRID);
    return { x: edge.right - w - 4, y: outer, w, h };
  }
  const short = Math.max(0, w + 6 - (edge.right - edge.left));
  edge.left -= Math.ceil(short / 2 / GRID) * GRID;
  edge.right += Math.ceil(short / 2 / GRID) * GRID;
  return { x: edge.left, y: outer, w: edge.right - edge.left, h };
}

function slotOf({ side, from, via, blob }: Draft, at: number, edge: Edges): Slot {
  const port = level(side) ? point(edge[side], at) : point(at, edge[side]);
  const out = outward[side];
  const last = via.at(-1) ?? from;
  // The lead splays from its lug, then runs straight out of the box.
  const reach = blob ? 4 : 14;
  const splayed = level(side)
    ? point(last.x + out.x * reach, at)
    : point(at, last.y + out.y * reach);
  const before = (edge[side] - (level(side) ? splayed.x : splayed.y)) * (out.x + out.y) > 0;
  const straight = Math.abs(along(last, side) - at) < 0.5;
  const tail = [from, ...via, ...(straight || !before ? [] : [splayed]), port];
  const dot = blob ? from : via.length > 0 ? via[0]! : before ? splayed : port;
  return { port, side, tail, dot, blob };
}
