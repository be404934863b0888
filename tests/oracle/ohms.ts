import type { NodeName } from '../../src/circuit/edit.ts';
import { type Joins, writeCopy } from './deck.ts';
import {
  amperes,
  type Drive,
  openAbove,
  operatingPoints,
  type Probes,
} from './operating-points.ts';
import type { SpiceNetlist } from './spice-netlist.ts';

/** Ohms between each pair of nodes, `Infinity` where no direct current passes. One process of the simulator. */
export function resistances(netlist: SpiceNetlist, pairs: readonly Probes[]): Float64Array {
  return resistancesOfMany([{ netlist, pairs }])[0]!;
}

/** The same for several netlists in one process. */
export function resistancesOfMany(
  jobs: readonly { readonly netlist: SpiceNetlist; readonly pairs: readonly Probes[] }[],
): Float64Array[] {
  const solved = operatingPoints(
    jobs.map(({ netlist, pairs }) => ({ netlist, drives: pairs.map((through) => ({ through })) })),
  );
  return jobs.map(({ pairs }, job) =>
    Float64Array.from(pairs, ([red, black], point) => {
      const ohms = (solved[job]!(point, red) - solved[job]!(point, black)) / amperes;
      return ohms > openAbove ? Number.POSITIVE_INFINITY : ohms;
    }),
  );
}

/** Ohms between all pairs of `nodes`: symmetric, row by row, `Infinity` between islands. */
export interface AllPairs {
  readonly nodes: readonly NodeName[];
  readonly ohms: Float64Array;
  between(a: NodeName, b: NodeName): number;
}

/**
 * All pairs of each netlist, all netlists in one process. Within an island a current goes from its first node to
 * each other node in turn, and R_ab = Z_aa + Z_bb - Z_ab - Z_ba. That islands are apart is measured too, not assumed.
 */
export function allPairs(
  jobs: readonly { readonly netlist: SpiceNetlist; readonly nodes: readonly NodeName[] }[],
  joins: Joins = 'merged',
): AllPairs[] {
  const plans = jobs.map(({ netlist, nodes }) => planAllPairs(netlist, nodes, joins));
  const solved = operatingPoints(plans, joins);
  return plans.map(({ nodes, apart, point, other }, job) => {
    const volts = solved[job]!;
    apart.forEach(([red, black], at) => {
      const ohms = (volts(at, red) - volts(at, black)) / amperes;
      if (!(ohms > openAbove))
        throw new Error(`${red} and ${black} read ${ohms} ohm; open expected`);
    });
    /** Z_ab with the island's first node as zero. */
    const transfer = (a: number, b: number) =>
      point[a] === undefined
        ? 0
        : (volts(point[a], nodes[b]!) - volts(point[a], other[b]!)) / amperes;
    const size = nodes.length;
    const ohms = new Float64Array(size * size).fill(Number.POSITIVE_INFINITY);
    for (let a = 0; a < size; a++) {
      for (let b = 0; b < size; b++) {
        if (other[a] !== other[b]) continue;
        ohms[a * size + b] =
          a === b ? 0 : transfer(a, a) + transfer(b, b) - transfer(a, b) - transfer(b, a);
      }
    }
    const place = new Map(nodes.map((node, at) => [node, at]));
    const between = (a: NodeName, b: NodeName) => ohms[place.get(a)! * size + place.get(b)!]!;
    return { nodes, ohms, between };
  });
}

/** Points to solve for all pairs of one netlist: first those that show islands apart, then one a node. */
function planAllPairs(netlist: SpiceNetlist, nodes: readonly NodeName[], joins: Joins) {
  const { island, nodeName } = writeCopy(netlist, 0, { withReactance: false, joins });
  /** First node of each island that has any of `nodes`: the other probe of every point in that island. */
  const first = new Map<string, NodeName>();
  for (const node of nodes) {
    const own = island.get(node);
    if (own === undefined) throw new Error(`no node ${node} in this netlist`);
    if (!first.has(own)) first.set(own, node);
  }
  const references = [...first.values()];
  const apart = references.slice(1).map((node): Probes => [node, references[0]!]);
  const drives: Drive[] = apart.map((through) => ({ through }));
  /** Nodes under one spice name share a point. */
  const pointOf = new Map<string, number | undefined>(
    references.map((node) => [nodeName.get(node)!, undefined]),
  );
  for (const node of nodes) {
    const name = nodeName.get(node)!;
    if (pointOf.has(name)) continue;
    pointOf.set(name, drives.length);
    drives.push({ through: [node, first.get(island.get(node)!)!] });
  }
  return {
    netlist,
    nodes,
    apart,
    drives,
    point: nodes.map((node) => pointOf.get(nodeName.get(node)!)),
    other: nodes.map((node) => first.get(island.get(node)!)!),
  };
}
