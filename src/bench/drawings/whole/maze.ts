import type { Box, Point, Side } from '../geometry.ts';
import { Queue } from './queue.ts';
import { Traffic } from './traffic.ts';

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
  /** Through a part: only where parts stand so close that nothing else is left. */
  through: 4000,
} as const;

/** Cells kept free around all parts. */
const MARGIN = 12;

const dx = [1, 0, -1, 0] as const;
const dy = [0, 1, 0, -1] as const;
const headingOf: Record<Side, number> = { right: 0, down: 1, left: 2, up: 3 };

/** A way as the maze accounts for it. */
export interface Track {
  readonly from: number;
  readonly to: number;
  readonly ports: readonly [Port, Port];
  /** Every cell from port to port, both included. */
  readonly cells: Int32Array;
}

/** Cells around parts: the cheapest way through them, and the account of who runs where. */
export class Maze {
  private readonly left: number;
  private readonly top: number;
  private readonly w: number;
  private readonly h: number;
  /** 1 where a part is, its outline included, and on the rim of the picture. */
  private readonly closed: Uint8Array;
  private readonly base: Uint16Array;
  readonly traffic: Traffic;
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
    this.traffic = new Traffic(w, h);
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
      put(cell, heading, this.traffic.company(cell, heading), -1);
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
        const bend = turn === heading ? 0 : COST.bend + this.traffic.company(cell, turn);
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
          cost + price + bend + this.traffic.company(next, turn) + (wall ? COST.through : 0),
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

  /** Notes a track as used, or takes it back. */
  use({ cells, ports }: Track, by: 1 | -1): void {
    this.traffic.run(cells, by);
    for (const port of ports) {
      if (by > 0) this.taken.add(this.portKey(port));
      else this.taken.delete(this.portKey(port));
      this.price(port, by * COST.usedPort);
    }
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
