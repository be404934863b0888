/** Names of a path where nothing leads across, and of one that does not leave its point. */
export const OPEN = 'open';
export const ONE = 'one point';

/**
 * The blocks (biconnected components) of a graph: a current from one point to another runs through those between the two and
 * through no other, as what hangs on a single point carries none. Blocks are found by depth-first search (Hopcroft and Tarjan
 * 1973, from memory). `edges` are rows of four: a number in two halves that says what the edge is, and the points it joins.
 * `numberOf` gives equal numbers for equal texts; two blocks get one number where their edges, in order, are the same and meet in
 * the same way.
 */
export class Blocks {
  /** Of each point: the block by which it hangs on the rest of the tree, or -1 at a root; its place in it; how deep it hangs; its root. */
  private readonly block: number[];
  private readonly place: number[];
  private readonly depth: number[];
  private readonly root: number[];
  /** Of each block: its number, the point it hangs on, and that point's place. */
  private readonly number: number[] = [];
  private readonly top: number[] = [];
  private readonly topPlace: number[] = [];
  /** Of each block: its edges, by index. */
  private readonly within: (readonly number[])[] = [];
  private readonly paths = new Map<number, string>();

  constructor(points: number, edges: readonly number[], numberOf: (text: string) => number) {
    const filled = (value: number) => new Array<number>(points).fill(value);
    const end = (index: number, which: 2 | 3) => edges[4 * index + which] as number;
    this.block = filled(-1);
    this.place = filled(0);
    this.depth = filled(0);
    this.root = filled(-1);
    const at = incidence(points, edges);
    const met = filled(-1);
    const low = filled(0);
    const place = filled(-1);
    const open: number[] = [];
    let clock = 0;

    const close = (top: number, down: number): void => {
      const own = open.splice(open.indexOf(down)).sort((x, y) => x - y);
      let size = 0;
      let text = '';
      for (const index of own) {
        const [a, b] = [end(index, 2), end(index, 3)];
        if (place[a] === -1) place[a] = size++;
        if (place[b] === -1) place[b] = size++;
        text += String.fromCharCode(
          edges[4 * index] as number,
          edges[4 * index + 1] as number,
          place[a] as number,
          place[b] as number,
        );
      }
      const id = this.number.length;
      this.number.push(numberOf(text));
      this.top.push(top);
      this.topPlace.push(place[top] as number);
      this.within.push(own);
      for (const index of own) {
        for (const point of [end(index, 2), end(index, 3)]) {
          if (place[point] === -1) continue;
          if (point !== top) {
            this.block[point] = id;
            this.place[point] = place[point] as number;
          }
          place[point] = -1;
        }
      }
    };

    const visit = (point: number, by: number, root: number): void => {
      met[point] = low[point] = clock++;
      this.root[point] = root;
      for (const index of at[point] as readonly number[]) {
        if (index === by) continue;
        const other = end(index, 2) === point ? end(index, 3) : end(index, 2);
        if (met[other] === -1) {
          open.push(index);
          visit(other, index, root);
          low[point] = Math.min(low[point] as number, low[other] as number);
          if ((low[other] as number) >= (met[point] as number)) close(point, index);
        } else if ((met[other] as number) < (met[point] as number)) {
          open.push(index);
          low[point] = Math.min(low[point] as number, met[other] as number);
        }
      }
    };
    for (let point = 0; point < points; point += 1) if (met[point] === -1) visit(point, -1, point);
    // A point is met after the one its block hangs on.
    const order = Array.from({ length: points }, (_, point) => point).sort(
      (x, y) => (met[x] as number) - (met[y] as number),
    );
    for (const point of order) {
      const block = this.block[point] as number;
      if (block !== -1) this.depth[point] = (this.depth[this.top[block] as number] as number) + 1;
    }
  }

  /** The blocks from one point to another, each with where the path comes in and goes out: a name of all that the path sees. */
  path(from: number, to: number): string {
    const key = from * this.block.length + to;
    const known = this.paths.get(key) ?? this.pathOf(from, to);
    this.paths.set(key, known);
    return known;
  }

  private pathOf(from: number, to: number): string {
    let [there, back] = ['', ''];
    const end = this.walk(
      from,
      to,
      (block, x, y) => {
        there += `${this.number[block]}.${x}.${y} `;
      },
      (block, x, y) => {
        back = `${this.number[block]}.${x}.${y} ${back}`;
      },
    );
    return end ?? there + back;
  }

  /** Indices of all edges that a current from one point to another may take. */
  edgesBetween(from: number, to: number): readonly number[] {
    const found: number[] = [];
    const take = (block: number) => {
      found.push(...(this.within[block] as readonly number[]));
    };
    this.walk(from, to, take, take);
    return found.sort((x, y) => x - y);
  }

  /** From both ends up the tree until they meet. */
  private walk(
    from: number,
    to: number,
    fromHere: (block: number, entry: number, exit: number) => void,
    fromThere: (block: number, entry: number, exit: number) => void,
  ): typeof ONE | typeof OPEN | null {
    if (from === to) return ONE;
    const { block, place, depth, root, top, topPlace } = this;
    if (root[from] !== root[to]) return OPEN;
    let [p, q] = [from, to];
    while (p !== q) {
      const [x, y] = [block[p] as number, block[q] as number];
      if (x === y) {
        fromHere(x, place[p] as number, place[q] as number);
        break;
      }
      if ((depth[p] as number) >= (depth[q] as number)) {
        fromHere(x, place[p] as number, topPlace[x] as number);
        p = top[x] as number;
      } else {
        fromThere(y, topPlace[y] as number, place[q] as number);
        q = top[y] as number;
      }
    }
    return null;
  }
}

/** Indices of the edges at each point. */
function incidence(points: number, edges: readonly number[]): readonly (readonly number[])[] {
  const at: number[][] = Array.from({ length: points }, () => []);
  for (let index = 0; 4 * index < edges.length; index += 1)
    for (const point of [edges[4 * index + 2], edges[4 * index + 3]])
      at[point as number]?.push(index);
  return at;
}
