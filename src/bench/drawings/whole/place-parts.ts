import type { Circuit } from '../../../circuit/circuit.ts';
import { layoutOf } from '../../../circuit/netlist.ts';
import type { PartId } from '../../../circuit/parts/part.ts';
import { ended, type Rests } from '../../../diagnosis/rests.ts';
import { nextTask } from '../../next-task.ts';
import { type Box, boxesOverlap, type Side } from '../geometry.ts';
import { splitLug } from '../names.ts';
import { rowsOf } from '../rank.ts';
import { union } from './boxes.ts';
import { type Footprint, footprintOf } from './footprint.ts';
import { GRID, type Place, type Places, type Stand, standsOf, type Turn } from './places.ts';
import { roomOnSheet } from './sheet-room.ts';

/** Width over height: on a phone held upright the width decides how large the names are, on a page the height. */
const SHAPE = 0.56;
/** Units between the boxes of neighbours in a row, and between rows, before leads are counted. */
const BETWEEN = 24;
const ROWS = 24;
const WIDTHS = [56, 64, 72, 80, 90, 100, 112, 124, 136].map((cells) => cells * GRID);

/** A jack stands below everything that leads to it: its lugs look up. */
const turnOf = (stand: Stand): Turn => (stand.parts[0]?.kind === 'jack' ? 180 : 0);

/**
 * A place for every part. Those in `kept` stay where they are, new ones get free room as near as may be to what they
 * are joined to. Deterministic: equal circuits and kept places give equal places.
 */
export const placeParts = (circuit: Circuit, kept?: Places): Places =>
  ended(placing(circuit, kept));

/** The same, with a rest before each way to try. */
export function* placing(circuit: Circuit, kept?: Places): Rests<Places> {
  const stands = standsOf(circuit);
  const staying = stands.filter(({ id }) => kept?.has(id));
  if (kept && staying.length > 0) return besideKept(circuit, stands, kept);
  const rows = rowsOf(circuit, stands);
  const sheets: Sheet[] = [];
  for (const width of WIDTHS) {
    yield;
    sheets.push(shelve(circuit, rows, width));
  }
  const off = ({ w, h }: Sheet): number => Math.abs(Math.log(w / h / SHAPE));
  const best = sheets.reduce((a, b) => (off(b) < off(a) - 1e-9 ? b : a));
  return best.places;
}

/** Has the footprints of all parts ready for `placeParts`, a few milliseconds at a time. */
export async function footprintsAhead(circuit: Circuit): Promise<void> {
  for (const stand of standsOf(circuit)) {
    await nextTask();
    footprintOf(circuit, stand, turnOf(stand));
  }
}

interface Sheet {
  readonly w: number;
  readonly h: number;
  readonly places: Places;
}

/** Rows of parts from top to bottom, each broken where the width is reached. */
function shelve(circuit: Circuit, rows: readonly (readonly Stand[])[], width: number): Sheet {
  const shelves: Footprint[][] = [];
  for (const row of rows) {
    let shelf: Footprint[] = [];
    let used = 0;
    for (const stand of row) {
      const print = footprintOf(circuit, stand, turnOf(stand));
      const more = print.box.w + BETWEEN + 12;
      if (shelf.length > 0 && used + more > width) {
        shelves.push(shelf);
        shelf = [];
        used = 0;
      }
      used += more;
      shelf.push(print);
    }
    if (shelf.length > 0) shelves.push(shelf);
  }
  const joints = layoutOf(circuit).jointsAt;
  // Where a lug has more ways out than leads, each way counts for its share.
  const leads = (prints: readonly Footprint[], sides: readonly Side[]): number =>
    prints
      .flatMap(({ slots }) => [...slots])
      .reduce((sum, [ref, list]) => {
        const share = (joints.get(ref)?.length ?? 0) / list.length;
        return sum + share * list.filter(({ side }) => sides.includes(side)).length;
      }, 0);
  const full = Math.max(
    width,
    ...shelves.map((shelf) => shelf.reduce((sum, { box }) => sum + box.w + BETWEEN, BETWEEN)),
  );
  const places = new Map<PartId, Place>();
  const boxes: Box[] = [];
  let y = 0;
  for (const [i, shelf] of shelves.entries()) {
    const height = Math.max(...shelf.map(({ box }) => box.h));
    const gap = (full - shelf.reduce((sum, { box }) => sum + box.w, 0)) / (shelf.length + 1);
    let x = gap;
    for (const { stand, box, turn } of shelf) {
      const left = Math.round(x / GRID) * GRID;
      const top = Math.round((y + (height - box.h) / 2) / GRID) * GRID;
      places.set(stand.id, { x: left - box.x, y: top - box.y, turn });
      boxes.push({ x: left, y: top, w: box.w, h: box.h });
      x += box.w + gap;
    }
    const facing = leads(shelf, ['down', 'left', 'right']) + leads(shelves[i + 1] ?? [], ['up']);
    y += height + Math.round((ROWS + Math.min(96, facing * 4)) / GRID) * GRID;
  }
  const all = union(boxes);
  return { w: all.w + 60, h: all.h + 60, places };
}

/** Each new part in the free room nearest to the parts it is joined to, else where the sheet has room. */
function besideKept(circuit: Circuit, stands: readonly Stand[], kept: Places): Places {
  const places = new Map<PartId, Place>();
  const boxes: Box[] = [];
  const put = (stand: Stand, place: Place): void => {
    places.set(stand.id, place);
    const { box } = footprintOf(circuit, stand, place.turn);
    boxes.push({ ...box, x: box.x + place.x, y: box.y + place.y });
  };
  const homeOf = new Map(stands.flatMap((stand) => stand.parts.map(({ id }) => [id, stand.id])));
  for (const stand of stands) {
    const place = kept.get(stand.id);
    if (place) put(stand, place);
  }
  for (const stand of stands) {
    if (places.has(stand.id)) continue;
    const near = circuit.leads.flatMap(({ from, to }) => {
      const [a, b] = [from, to].map((lug) => homeOf.get(splitLug(lug).part));
      const other = a === stand.id ? b : b === stand.id ? a : undefined;
      const place = other === undefined ? undefined : places.get(other);
      return place ? [place] : [];
    });
    const turn = turnOf(stand);
    const { box } = footprintOf(circuit, stand, turn);
    if (near.length === 0) {
      put(stand, { ...roomOnSheet(box, boxes, SHAPE), turn });
      continue;
    }
    const wish = {
      x: near.reduce((sum, { x }) => sum + x, 0) / near.length,
      y: near.reduce((sum, { y }) => sum + y, 0) / near.length,
    };
    put(stand, { ...freeRoom(wish, box, boxes), turn });
  }
  return places;
}

/** Units that a new part keeps from others. */
const CLEAR = 36;
const STEP = 2 * GRID;

/** The place nearest to the wish at which the box lies clear of the others; ties go to the lower, then the left. */
function freeRoom(
  wish: { readonly x: number; readonly y: number },
  box: Box,
  others: readonly Box[],
): { x: number; y: number } {
  const [wx, wy] = [wish.x, wish.y].map((value) => Math.round(value / STEP) * STEP);
  for (let ring = 0; ; ring++) {
    let best: { x: number; y: number; away: number } | null = null;
    for (let i = -ring; i <= ring; i++)
      for (const [dx, dy] of [
        [i, ring],
        [i, -ring],
        [ring, i],
        [-ring, i],
      ] as const) {
        const [x, y] = [wx! + dx * STEP, wy! + dy * STEP];
        const room = {
          x: x + box.x - CLEAR,
          y: y + box.y - CLEAR,
          w: box.w + 2 * CLEAR,
          h: box.h + 2 * CLEAR,
        };
        if (others.some((other) => boxesOverlap(room, other))) continue;
        const away = Math.hypot(dx, dy);
        if (!best || away < best.away) best = { x, y, away };
      }
    if (best) return { x: best.x, y: best.y };
  }
}
