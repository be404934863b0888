import type { Sets } from '../solver/islands.ts';
import { type Edge, joinedIn, type Network, type Stand } from './network.ts';

/** What the output hears in one stand of the switches. */
export interface Heard {
  /** Hot is ground. */
  readonly shorted: boolean;
  /** Edges on some way from tip to sleeve that passes no point twice, with a coil among them; else none. */
  readonly edges: readonly Edge[];
  /** Points that are one here. */
  readonly sets: Sets;
  /** Equal for two stands exactly if the output hears the same parts joined in the same way. */
  readonly pattern: string;
}

/**
 * An edge has a part in what stands between tip and sleeve if and only if the two share a block (biconnected component)
 * of the graph with one more edge from tip to sleeve (textbook graph theory: two edges of a block lie on a common cycle).
 * Figures play no part, so what is worked out holds for every value and knob.
 */
export function heardIn(network: Network, stand: Stand): Heard {
  const sets = joinedIn(network, stand);
  const none = (shorted: boolean): Heard => ({
    shorted,
    edges: [],
    sets,
    pattern: shorted ? 'short' : '',
  });
  const { jack } = network;
  if (!jack) return none(false);
  const [tip, sleeve] = [sets.root(jack.tip), sets.root(jack.sleeve)];
  if (tip === sleeve) return none(true);
  const edges = network.edges.filter(({ a, b }) => sets.root(a) !== sets.root(b));
  const block = blockAt(network.points, edges, sets, tip, sleeve);
  if (!block.some(({ part }) => part.kind === 'coil')) return none(false);
  const names = new Map([
    [tip, 0],
    [sleeve, 1],
  ]);
  const name = (point: number): number => {
    const root = sets.root(point);
    const known = names.get(root) ?? names.size;
    names.set(root, known);
    return known;
  };
  const pattern = block.map(({ site, a, b }) => `${site}:${name(a)}-${name(b)}`).join();
  return { shorted: false, edges: block, sets, pattern };
}

/** The edges in one block with an edge between tip and sleeve, in the order given. Tarjan's search from the sleeve, over that edge first. */
function blockAt(
  points: number,
  edges: readonly Edge[],
  sets: Sets,
  tip: number,
  sleeve: number,
): readonly Edge[] {
  const near = Array.from({ length: points }, (): { edge: number; to: number }[] => []);
  const ways = (point: number) => near[point] ?? [];
  edges.forEach(({ a, b }, edge) => {
    const [p, q] = [sets.root(a), sets.root(b)];
    ways(p).push({ edge, to: q });
    ways(q).push({ edge, to: p });
  });
  const seen = new Int32Array(points).fill(-1);
  const low = new Int32Array(points);
  const open: number[] = [];
  let clock = 1;
  seen[sleeve] = 0;
  const visit = (point: number, by: number): void => {
    seen[point] = low[point] = clock;
    clock += 1;
    for (const { edge, to } of ways(point)) {
      if (edge === by) continue;
      if (seen[to] === -1) {
        const before = open.length;
        open.push(edge);
        visit(to, edge);
        low[point] = Math.min(low[point] as number, low[to] as number);
        // What hangs on this point alone is a block of its own.
        if ((low[to] as number) >= (seen[point] as number)) open.length = before;
      } else if ((seen[to] as number) < (seen[point] as number)) {
        open.push(edge);
        low[point] = Math.min(low[point] as number, seen[to] as number);
      }
    }
  };
  visit(tip, -1);
  const block = new Set(open);
  return edges.filter((_, edge) => block.has(edge));
}
