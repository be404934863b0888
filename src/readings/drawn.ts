import type { Layout } from '../circuit/netlist.ts';
import { Blocks, ONE, OPEN } from './blocks.ts';
import { type Element, numberOf, type Shape, type Skeleton, sharedOf } from './frame.ts';

/** A skeleton in one shape: its nets with the contacts closed, and the blocks that they form. */
export class Drawn {
  private readonly layout: Layout;
  private readonly skeleton: Skeleton;
  private readonly shape: Shape;
  /** Point of each net; a net beyond its end is a point of its own. */
  private readonly pointOf: readonly number[];
  private made: Graph | undefined;

  constructor(layout: Layout, skeleton: Skeleton, shape: Shape) {
    this.layout = layout;
    this.skeleton = skeleton;
    this.shape = shape;
    const of = Array.from({ length: skeleton.nets }, (_, net) => net);
    const root = (net: number): number => {
      let at = net;
      while (of[at] !== at) at = of[at] as number;
      return at;
    };
    for (const { site, a, b } of skeleton.contacts)
      if (shape.ohms[site] === 0) of[root(a)] = root(b);
    for (let net = 0; net < of.length; net += 1) of[net] = root(net);
    this.pointOf = of;
  }

  /** A name of all that a current takes from one net to the other; `ONE` within a point, `OPEN` where nothing leads across. */
  path(from: number, to: number): string {
    const [p, q] = [this.point(from), this.point(to)];
    if (p === q) return ONE;
    const { tree, places } = this.graph();
    const [x, y] = [places[p] ?? -1, places[q] ?? -1];
    return x === -1 || y === -1 ? OPEN : tree.path(x, y);
  }

  private point(net: number): number {
    return this.pointOf[net] ?? net;
  }

  private conducts({ index, a, b, conducts }: Element): boolean {
    return (
      this.pointOf[a] !== this.pointOf[b] &&
      (conducts === 'always' ||
        (conducts === 'closed' && this.shape.ohms[index] !== Number.POSITIVE_INFINITY))
    );
  }

  private graph(): Graph {
    if (this.made) return this.made;
    const { skeleton, pointOf } = this;
    const places: number[] = new Array<number>(pointOf.length).fill(-1);
    const codes: number[] = [];
    let size = 0;
    for (const element of skeleton.elements) {
      if (!this.conducts(element)) continue;
      const [p, q] = [pointOf[element.a] as number, pointOf[element.b] as number];
      if (places[p] === -1) places[p] = size++;
      if (places[q] === -1) places[q] = size++;
      const { tag } = element;
      codes.push(tag >>> 16, tag & 0xffff, places[p] as number, places[q] as number);
    }
    const { graphs, numbers } = sharedOf(this.layout);
    const key = String.fromCharCode(...codes);
    const tree = graphs.get(key) ?? new Blocks(size, codes, (text) => numberOf(numbers, text));
    graphs.set(key, tree);
    this.made = { tree, places };
    return this.made;
  }
}

/** Blocks of a graph that many guitars may have, and the place in it of each point of this one, -1 where nothing conducts. */
interface Graph {
  readonly tree: Blocks;
  readonly places: readonly number[];
}
