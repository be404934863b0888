import { DcSolution } from './dc.ts';
import { NetworkError } from './errors.ts';
import { Sets } from './islands.ts';
import type { Network } from './network.ts';

/**
 * Low-rank edits of a solution: each gives the solution of the edited network without solving it again.
 * Within an island, a conductance change dg on (a, b) gives z' = z - dg (z u)(z u)' / (1 + dg R_ab), u = e_a - e_b (Sherman-Morrison).
 * An edit that joins two islands or parts one is exact algebra on the grounded inverse; which case it is comes from the graph.
 */

/** Below this share, what is left after a cut is lost in rounding: the edited network is to be solved anew. */
const WORST_DOWNDATE = 1e-6;

/** Adds a branch of `ohms` > 0 between two nodes. */
export function withBranch(base: DcSolution, a: number, b: number, ohms: number): DcSolution {
  if (!(ohms > 0 && Number.isFinite(ohms)))
    throw new NetworkError(
      `${a}-${b}`,
      `an added branch needs a resistance above 0 ohm, got ${String(ohms)}`,
    );
  const [p, q] = [base.point(a), base.point(b)];
  const net = base.network;
  const grown: Network = {
    nodes: net.nodes,
    a: append(net.a, a),
    b: append(net.b, b),
    ohms: appendFloat(net.ohms, ohms),
  };
  if (p === q) return new DcSolution(grown, base.pointOf, base.points, base.island, base.z);
  if (base.island[p] === base.island[q])
    return new DcSolution(
      grown,
      base.pointOf,
      base.points,
      base.island,
      rankOne(base, p, q, 1 / ohms),
    );
  return joined(base, grown, p, q, ohms);
}

/**
 * Changes the resistance of a finite branch; Infinity cuts it.
 * Returns null where the result would be lost in rounding (a cut that leaves a path more than a million times weaker): solve anew.
 */
export function withResistance(base: DcSolution, index: number, ohms: number): DcSolution | null {
  const net = base.network;
  const before = net.ohms[index];
  if (before === undefined || before === 0 || before === Number.POSITIVE_INFINITY)
    throw new NetworkError(
      `branch ${index}`,
      `branch ${index} should have a finite resistance to change, got ${String(before)}`,
    );
  if (!(ohms > 0))
    throw new NetworkError(
      `branch ${index}`,
      `branch ${index} should become more than 0 ohm, got ${String(ohms)}`,
    );
  const changed: Network = { ...net, ohms: net.ohms.slice() };
  changed.ohms[index] = ohms;
  const [p, q] = [base.point(net.a[index] as number), base.point(net.b[index] as number)];
  if (p === q) return new DcSolution(changed, base.pointOf, base.points, base.island, base.z);
  const dg = 1 / ohms - 1 / before;
  if (ohms === Number.POSITIVE_INFINITY && parts(base, changed, p, q))
    return parted(base, changed, p, q);
  if (1 + dg * base.betweenPoints(p, q) < WORST_DOWNDATE) return null;
  return new DcSolution(changed, base.pointOf, base.points, base.island, rankOne(base, p, q, dg));
}

function rankOne(base: DcSolution, p: number, q: number, dg: number): Float64Array {
  const { points, island } = base;
  const z = base.z.slice();
  const scale = dg / (1 + dg * base.betweenPoints(p, q));
  const of = island[p];
  const zu = new Float64Array(points);
  for (let i = 0; i < points; i += 1)
    zu[i] = (z[i * points + p] as number) - (z[i * points + q] as number);
  for (let i = 0; i < points; i += 1) {
    if (island[i] !== of || zu[i] === 0) continue;
    const row = scale * (zu[i] as number);
    for (let j = 0; j < points; j += 1)
      z[i * points + j] = (z[i * points + j] as number) - row * (zu[j] as number);
  }
  return z;
}

/** Joins q's island to p's; the ground of p's island stays. */
function joined(
  base: DcSolution,
  network: Network,
  p: number,
  q: number,
  ohms: number,
): DcSolution {
  const { points } = base;
  const island = base.island.slice();
  const [kept, taken] = [base.island[p] as number, base.island[q] as number];
  const old = base.z;
  const z = old.slice();
  const from = (i: number, j: number) => old[i * points + j] as number;
  for (let i = 0; i < points; i += 1) {
    if (base.island[i] !== taken) continue;
    island[i] = kept;
    for (let j = 0; j < points; j += 1) {
      if (base.island[j] === kept) z[i * points + j] = z[j * points + i] = from(p, j);
      else if (base.island[j] === taken)
        z[i * points + j] = from(p, p) + ohms + from(i, j) - from(i, q) - from(q, j) + from(q, q);
    }
  }
  return new DcSolution(network, base.pointOf, points, island, z);
}

/** Whether p and q fall apart in the changed network: asked of the graph. */
function parts(base: DcSolution, changed: Network, p: number, q: number): boolean {
  const reach = reachOf(base, changed);
  return reach.root(p) !== reach.root(q);
}

function reachOf(base: DcSolution, net: Network): Sets {
  const reach = new Sets(base.points);
  for (let i = 0; i < net.ohms.length; i += 1)
    if (net.ohms[i] !== Number.POSITIVE_INFINITY)
      reach.join(
        base.pointOf[net.a[i] as number] as number,
        base.pointOf[net.b[i] as number] as number,
      );
  return reach;
}

/** Splits an island at a bridge of the graph; the side that loses the ground is referred to its own end of the cut. */
function parted(base: DcSolution, network: Network, p: number, q: number): DcSolution {
  const { points } = base;
  const reach = reachOf(base, network);
  const island = reach.labels().of;
  const old = base.z;
  const z = old.slice();
  // The ground of the old island is the member whose own z is 0: only one point of an island has none.
  const of = base.island[p];
  let ground = -1;
  for (let i = 0; i < points; i += 1)
    if (base.island[i] === of && old[i * points + i] === 0) ground = i;
  const lost = island[p] === island[ground] ? q : p;
  for (let i = 0; i < points; i += 1) {
    if (base.island[i] !== of) continue;
    for (let j = 0; j < points; j += 1) {
      if (base.island[j] !== of) continue;
      if (island[i] !== island[j]) z[i * points + j] = 0;
      else if (island[i] === island[lost])
        z[i * points + j] =
          (old[i * points + j] as number) -
          (old[i * points + lost] as number) -
          (old[lost * points + j] as number) +
          (old[lost * points + lost] as number);
    }
  }
  return new DcSolution(network, base.pointOf, points, island, z);
}

function append(list: Int32Array, value: number): Int32Array {
  const grown = new Int32Array(list.length + 1);
  grown.set(list);
  grown[list.length] = value;
  return grown;
}

function appendFloat(list: Float64Array, value: number): Float64Array {
  const grown = new Float64Array(list.length + 1);
  grown.set(list);
  grown[list.length] = value;
  return grown;
}
