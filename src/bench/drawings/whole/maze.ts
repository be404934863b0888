// Longer than most: the search and the account of who runs where work on the same arrays.
import type { Box, Point, Side } from '../geometry.ts';
import { Queue } from './queue.ts';

/** A place where a lead may meet its part, in cells, on the outline of the part's box. */
export interface Port extends Point {
  readonly side: Side;
}
/** Any one of these serves; no two leads take the same. */
export type End = readonly Port[];

/** One lead to be laid. */
export interface Errand {
  readonly id: string;
  readonly from: End;
  readonly to: End;
}

export interface Way {
  /** Which port of each end was taken. */
  readonly from: number;
  readonly to: number;
  /** From port to port, both included, in cells. */
  readonly corners: readonly Point[];
}

const COST = {
  step: 2,
  bend: 16,
  /** Beside the outline of a part. */
  hug: 6,
  /** In front of a place where a lead may meet its part; more where one does. */
  port: 24,
  usedPort: 70,
  cross: 20,
  /** Beside another lead, one cell away. */
  beside: 8,
  /** Along another lead, and more for every time that this was tried in the same cell. */
  along: 300,
  again: 120,
  /** Through a part: only where parts stand so close that nothing else is left. */
  through: 4000,
} as const;

/** Cells kept free around all parts. */
const MARGIN = 12;
/** Rounds in which leads that share a stretch are laid anew. */
const ROUNDS = 14;

const dx = [1, 0, -1, 0] as const;
const dy = [0, 1, 0, -1] as const;
const headingOf: Record<Side, number> = { right: 0, down: 1, left: 2, up: 3 };

/**
 * Level and upright ways for leads around boxes on a grid of cells. Each is the cheapest by A* with costs for bends,
 * crossings and company; leads that share a stretch are laid again, at a price for the contested cells that grows
 * from round to round (negotiated congestion: McMurchie and Ebeling, FPGA 1995). Deterministic: shorter leads first,
 * then by name.
 */
export function route(errands: readonly Errand[], boxes: readonly Box[]): ReadonlyMap<string, Way> {
  if (errands.length === 0) return new Map();
  const maze = new Maze(boxes, errands);
  const length = ({ from, to }: Errand): number =>
    Math.min(...from.flatMap((a) => to.map((b) => Math.abs(a.x - b.x) + Math.abs(a.y - b.y))));
  const order = errands
    .map((errand) => ({ errand, length: length(errand) }))
    .sort(
      (a, b) =>
        a.length - b.length || (a.errand.id < b.errand.id ? -1 : a.errand.id > b.errand.id ? 1 : 0),
    )
    .map(({ errand }) => errand);
  const tracks = new Map<string, Track>();
  const lay = (errand: Errand): void => {
    const before = tracks.get(errand.id);
    if (before) maze.use(before, -1);
    const track = maze.search(errand);
    maze.use(track, 1);
    tracks.set(errand.id, track);
  };
  for (const errand of order) lay(errand);
  for (let round = 0; round < ROUNDS; round++) {
    const again = order.filter(({ id }) => {
      const track = tracks.get(id)!;
      return maze.shares(track) || (round < 1 && maze.crosses(track));
    });
    if (again.length === 0) break;
    for (const { id } of again) maze.remember(tracks.get(id)!);
    for (const errand of again) lay(errand);
  }
  return new Map(errands.map(({ id }) => [id, maze.wayOf(tracks.get(id)!)]));
}

interface Track {
  readonly from: number;
  readonly to: number;
  readonly ports: readonly [Port, Port];
  /** Every cell from port to port, both included. */
  readonly cells: Int32Array;
}

class Maze {
  private readonly left: number;
  private readonly top: number;
  private readonly w: number;
  private readonly h: number;
  /** 1 where a part is, its outline included, and on the rim of the picture. */
  private readonly closed: Uint8Array;
  private readonly base: Uint16Array;
  /** Leads running through a cell, by direction. */
  private readonly level: Uint8Array;
  private readonly upright: Uint8Array;
  /** Times that leads met along in a cell, by direction. */
  private readonly pastLevel: Uint16Array;
  private readonly pastUpright: Uint16Array;
  private readonly taken = new Set<number>();
  /** Search state by cell and heading; `stamp` tells which entries belong to the present search. */
  private readonly best: Int32Array;
  private readonly before: Int32Array;
  private readonly stamp: Int32Array;
  private readonly settled: Int32Array;
  private round = 0;

  constructor(boxes: readonly Box[], errands: readonly Errand[]) {
    const all = errands.flatMap(({ from, to }) => [...from, ...to]);
    // The leads of one lug share their ports.
    const ports = [
      ...new Map(all.map((port) => [`${port.x} ${port.y} ${port.side}`, port])).values(),
    ];
    this.left = Math.min(...boxes.map(({ x }) => x), ...ports.map(({ x }) => x)) - MARGIN;
    this.top = Math.min(...boxes.map(({ y }) => y), ...ports.map(({ y }) => y)) - MARGIN;
    const right = Math.max(...boxes.map(({ x, w }) => x + w), ...ports.map(({ x }) => x)) + MARGIN;
    const bottom = Math.max(...boxes.map(({ y, h }) => y + h), ...ports.map(({ y }) => y)) + MARGIN;
    const w = right - this.left + 1;
    const h = bottom - this.top + 1;
    this.w = w;
    this.h = h;
    this.closed = new Uint8Array(w * h);
    this.base = new Uint16Array(w * h).fill(COST.step);
    this.level = new Uint8Array(w * h);
    this.upright = new Uint8Array(w * h);
    this.pastLevel = new Uint16Array(w * h);
    this.pastUpright = new Uint16Array(w * h);
    this.best = new Int32Array(w * h * 4);
    this.before = new Int32Array(w * h * 4);
    this.stamp = new Int32Array(w * h * 4);
    this.settled = new Int32Array(w * h * 4);
    for (let y = 0; y < h; y++) this.closed[y * w] = this.closed[y * w + w - 1] = 1;
    for (let x = 0; x < w; x++) this.closed[x] = this.closed[(h - 1) * w + x] = 1;
    for (const box of boxes)
      for (let y = box.y - 1; y <= box.y + box.h + 1; y++)
        for (let x = box.x - 1; x <= box.x + box.w + 1; x++) {
          const cell = this.cellAt({ x, y });
          const inside = x >= box.x && x <= box.x + box.w && y >= box.y && y <= box.y + box.h;
          if (inside) this.closed[cell] = 1;
          else this.base[cell]! += COST.hug;
        }
    for (const port of ports) this.price(port, COST.port);
  }

  private cellAt({ x, y }: Point): number {
    return (y - this.top) * this.w + x - this.left;
  }
  private step(heading: number): number {
    return dx[heading]! + dy[heading]! * this.w;
  }
  private price(port: Port, by: number): void {
    const step = this.step(headingOf[port.side]);
    const cell = this.cellAt(port);
    this.base[cell + step]! += by;
    this.base[cell + 2 * step]! += by;
  }
  private portKey(port: Port): number {
    return this.cellAt(port) * 4 + headingOf[port.side];
  }

  search(errand: Errand): Track {
    return this.find(errand, false) ?? this.find(errand, true) ?? this.straight(errand);
  }

  private free(end: End): number[] {
    const open = end.map((_, i) => i).filter((i) => !this.taken.has(this.portKey(end[i]!)));
    return open.length > 0 ? open : end.map((_, i) => i);
  }

  /** Through parts only where told so. */
  private find({ from, to }: Errand, through: boolean): Track | null {
    const { w } = this;
    this.round += 1;
    const queue = new Queue();
    const starts = new Map<number, number>();
    const goals = new Map<number, number>();
    const own = new Set<number>();
    let [minX, maxX, minY, maxY] = [w, 0, this.h, 0];
    for (const i of this.free(to)) {
      const heading = headingOf[to[i]!.side];
      const cell = this.cellAt(to[i]!) + this.step(heading);
      goals.set(cell * 4 + ((heading + 2) % 4), i);
      own.add(cell).add(cell + this.step(heading));
      const x = cell % w;
      const y = (cell - x) / w;
      [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
      [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
    }
    const put = (cell: number, heading: number, cost: number, before: number): void => {
      const state = cell * 4 + heading;
      if (this.stamp[state] === this.round && this.best[state]! <= cost) return;
      this.stamp[state] = this.round;
      this.best[state] = cost;
      this.before[state] = before;
      const x = cell % w;
      const y = (cell - x) / w;
      // Never more than what is still to come.
      const aside = Math.max(0, minX - x, x - maxX);
      const below = Math.max(0, minY - y, y - maxY);
      const least = (aside + below) * COST.step + (aside > 0 && below > 0 ? COST.bend : 0);
      queue.push(cost + least, state);
    };
    for (const i of this.free(from)) {
      const heading = headingOf[from[i]!.side];
      const cell = this.cellAt(from[i]!) + this.step(heading);
      own.add(cell).add(cell + this.step(heading));
      const state = cell * 4 + heading;
      if (starts.has(state)) continue;
      if (this.closed[cell] && !through) continue;
      starts.set(state, i);
      put(cell, heading, this.company(cell, heading), -1);
    }
    for (let state = queue.pop(); state >= 0; state = queue.pop()) {
      if (this.settled[state] === this.round) continue;
      this.settled[state] = this.round;
      const goal = goals.get(state);
      if (goal !== undefined) return this.track(state, starts, { from, to }, goal);
      const cell = state >> 2;
      const heading = state & 3;
      const cost = this.best[state]!;
      for (let turn = 0; turn < 4; turn++) {
        if (turn === (heading + 2) % 4) continue;
        const next = cell + this.step(turn);
        const bend = turn === heading ? 0 : COST.bend + this.company(cell, turn);
        // A goal may be entered by turning on the spot.
        if (turn !== heading && goals.has(cell * 4 + turn)) put(cell, turn, cost + bend, state);
        const wall = this.closed[next] ?? 1;
        if (wall && (!through || !this.within(next))) continue;
        const price =
          this.base[next]! -
          (own.has(next) ? Math.min(this.base[next]! - COST.step, COST.port) : 0);
        put(
          next,
          turn,
          cost + price + bend + this.company(next, turn) + (wall ? COST.through : 0),
          state,
        );
      }
    }
    return null;
  }

  private within(cell: number): boolean {
    const x = cell % this.w;
    const y = (cell - x) / this.w;
    return x > 0 && y > 0 && x < this.w - 1 && y < this.h - 1;
  }

  /** Other leads in or beside a cell that is passed with this heading. */
  private company(cell: number, heading: number): number {
    const isLevel = heading % 2 === 0;
    const same = isLevel ? this.level : this.upright;
    const other = isLevel ? this.upright : this.level;
    const past = isLevel ? this.pastLevel : this.pastUpright;
    const aside = isLevel ? this.w : 1;
    return (
      (same[cell] ? COST.along : 0) +
      past[cell]! * COST.again +
      (other[cell] ? COST.cross : 0) +
      (same[cell - aside] ? COST.beside : 0) +
      (same[cell + aside] ? COST.beside : 0)
    );
  }

  private track(
    end: number,
    starts: ReadonlyMap<number, number>,
    { from, to }: { from: End; to: End },
    goal: number,
  ): Track {
    const cells = [this.cellAt(to[goal]!)];
    let first = end;
    for (let state = end; state >= 0; state = this.before[state]!) {
      if (cells.at(-1) !== state >> 2) cells.push(state >> 2);
      first = state;
    }
    const start = starts.get(first)!;
    cells.push(this.cellAt(from[start]!));
    return {
      from: start,
      to: goal,
      ports: [from[start]!, to[goal]!],
      cells: Int32Array.from(cells.reverse()),
    };
  }

  /** Where nothing else is left, parts lying on each other: a level and an upright stretch. */
  private straight({ from, to }: Errand): Track {
    const [i, j] = [this.free(from)[0]!, this.free(to)[0]!];
    const [a, b] = [from[i]!, to[j]!];
    const cells = [this.cellAt(a)];
    for (let { x, y } = a; x !== b.x || y !== b.y; ) {
      if (x !== b.x) x += Math.sign(b.x - x);
      else y += Math.sign(b.y - y);
      cells.push(this.cellAt({ x, y }));
    }
    return { from: i, to: j, ports: [a, b], cells: Int32Array.from(cells) };
  }

  /** Notes a track as used, or takes it back. A corner counts in both directions. */
  use({ cells, ports }: Track, by: 1 | -1): void {
    for (let i = 1; i < cells.length; i++) {
      const runs = Math.abs(cells[i]! - cells[i - 1]!) === 1 ? this.level : this.upright;
      runs[cells[i]!]! += by;
      runs[cells[i - 1]!]! += by;
    }
    for (const port of ports) {
      if (by > 0) this.taken.add(this.portKey(port));
      else this.taken.delete(this.portKey(port));
      this.price(port, by * COST.usedPort);
    }
  }

  /** Calls back for every cell in which the track meets another: along, or only across. */
  private meetings({ cells }: Track, met: (i: number, along: boolean) => void): void {
    for (let i = 1; i < cells.length; i++) {
      const cell = cells[i]!;
      const step = Math.abs(cell - cells[i - 1]!);
      const runs = step === 1 ? this.level : this.upright;
      const across = step === 1 ? this.upright : this.level;
      const straight = i + 1 < cells.length && Math.abs(cells[i + 1]! - cell) === step;
      const corner = i + 1 < cells.length && !straight;
      // Each track counts twice in a cell that it passes, once in one where it ends or turns.
      if (runs[cell]! > (straight ? 2 : 1) || (corner && across[cell]! > 1)) met(i, true);
      else if (straight && across[cell]! > 0) met(i, false);
    }
  }

  shares(track: Track): boolean {
    let found = false;
    this.meetings(track, (_, along) => {
      found ||= along;
    });
    return found;
  }
  crosses(track: Track): boolean {
    let found = false;
    this.meetings(track, () => {
      found = true;
    });
    return found;
  }
  /** Raises the price of the cells where this track runs along another. */
  remember(track: Track): void {
    this.meetings(track, (i, along) => {
      if (!along) return;
      const cell = track.cells[i]!;
      const level = Math.abs(cell - track.cells[i - 1]!) === 1;
      (level ? this.pastLevel : this.pastUpright)[cell]! += 1;
    });
  }

  wayOf({ from, to, cells }: Track): Way {
    const corners: Point[] = [];
    for (let i = 0; i < cells.length; i++) {
      const cell = cells[i]!;
      if (i > 0 && i < cells.length - 1 && cell - cells[i - 1]! === cells[i + 1]! - cell) continue;
      const x = cell % this.w;
      corners.push({ x: x + this.left, y: (cell - x) / this.w + this.top });
    }
    return { from, to, corners };
  }
}
