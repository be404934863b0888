import { NetworkError } from './errors.ts';
import { Sets } from './islands.ts';
import type { Network } from './network.ts';

/**
 * All-pairs solution of a resistive network.
 * Ideal connections are merged into points first; islands are found on the graph, never from a failed inversion.
 * `z` is the grounded inverse of each island's Laplacian, laid in one points x points matrix (ohms): z[i, j] is the potential
 * of point i above its island's ground while 1 A enters at point j and leaves at the ground. Across islands it is 0 and unused.
 */
export class DcSolution {
  readonly network: Network;
  /** Point of each node. */
  readonly pointOf: Int32Array;
  readonly points: number;
  /** Island of each point. */
  readonly island: Int32Array;
  readonly z: Float64Array;

  constructor(
    network: Network,
    pointOf: Int32Array,
    points: number,
    island: Int32Array,
    z: Float64Array,
  ) {
    this.network = network;
    this.pointOf = pointOf;
    this.points = points;
    this.island = island;
    this.z = z;
  }

  /** The merged point a node belongs to. Throws NetworkError for an unknown node. */
  point(node: number): number {
    const point = this.pointOf[node];
    if (point === undefined)
      throw new NetworkError(
        `node ${node}`,
        `there is no node ${node}; the network has ${this.network.nodes}`,
      );
    return point;
  }

  /** Ohms between two nodes; Infinity across islands, 0 for one point. */
  resistance(a: number, b: number): number {
    return this.betweenPoints(this.point(a), this.point(b));
  }

  betweenPoints(p: number, q: number): number {
    if (p === q) return 0;
    if (this.island[p] !== this.island[q]) return Number.POSITIVE_INFINITY;
    const { z, points } = this;
    return (
      (z[p * points + p] as number) +
      (z[q * points + q] as number) -
      2 * (z[p * points + q] as number)
    );
  }

  /** Volts of point c above point d while 1 A runs from point p to point q. All four must share an island. */
  voltage(p: number, q: number, c: number, d: number): number {
    const { z, points } = this;
    return (
      (z[c * points + p] as number) -
      (z[c * points + q] as number) -
      (z[d * points + p] as number) +
      (z[d * points + q] as number)
    );
  }

  /**
   * Current through branch `index` from its a to its b, in ampere per ampere forced in at node `from` and out at node `to`.
   * By reciprocity also the open-circuit volts at (from, to) per volt of EMF in that branch. 0 where no current can pass.
   */
  transfer(from: number, to: number, index: number): number {
    const { a, b, ohms } = this.network;
    const r = ohms[index];
    if (r === undefined)
      throw new NetworkError(
        `branch ${index}`,
        `there is no branch ${index}; the network has ${ohms.length}`,
      );
    if (r === 0)
      throw new NetworkError(
        `branch ${index}`,
        `branch ${index} is an ideal connection: its share of the current is not defined`,
      );
    if (r === Number.POSITIVE_INFINITY) return 0;
    const [p, q] = [this.point(from), this.point(to)];
    const [c, d] = [this.point(a[index] as number), this.point(b[index] as number)];
    if (p === q || this.island[p] !== this.island[q] || this.island[c] !== this.island[p]) return 0;
    return this.voltage(p, q, c, d) / r;
  }

  /**
   * d ln R(from, to) / d ln r of branch `index`: r i^2 / R, where i is the current per ampere (Tellegen's theorem; textbook).
   * 0 where R is 0 or infinite.
   */
  sensitivity(from: number, to: number, index: number): number {
    const total = this.resistance(from, to);
    if (total === 0 || total === Number.POSITIVE_INFINITY) return 0;
    const current = this.transfer(from, to, index);
    return ((this.network.ohms[index] as number) * current * current) / total;
  }
}

/**
 * Solves a network. Cost: one Gauss-Jordan inverse over all merged points; blocks of different islands do not touch.
 * Throws NetworkError for a network without nodes.
 */
export function solveDc(network: Network): DcSolution {
  const { nodes, a, b, ohms } = network;
  if (nodes < 1) throw new NetworkError('nodes', 'a network needs at least one node, got none');
  const count = ohms.length;
  const merged = new Sets(nodes);
  for (let i = 0; i < count; i += 1) if (ohms[i] === 0) merged.join(a[i] as number, b[i] as number);
  const { of: pointOf, count: points } = merged.labels();
  const reach = new Sets(points);
  const z = new Float64Array(points * points);
  for (let i = 0; i < count; i += 1) {
    const r = ohms[i] as number;
    if (r === 0 || r === Number.POSITIVE_INFINITY) continue;
    const p = pointOf[a[i] as number] as number;
    const q = pointOf[b[i] as number] as number;
    if (p === q) continue;
    reach.join(p, q);
    const g = 1 / r;
    z[p * points + p] = (z[p * points + p] as number) + g;
    z[q * points + q] = (z[q * points + q] as number) + g;
    z[p * points + q] = (z[p * points + q] as number) - g;
    z[q * points + p] = (z[q * points + p] as number) - g;
  }
  const { of: island, count: islands } = reach.labels();
  invertGrounded(z, points, island, islands);
  return new DcSolution(network, pointOf, points, island, z);
}

/**
 * Laplacian to grounded inverse, in place. The first point of each island is its ground: its row and column become 0.
 * Grounded island blocks are symmetric positive definite, so no pivoting is needed.
 */
function invertGrounded(m: Float64Array, n: number, island: Int32Array, islands: number): void {
  const ground = new Int32Array(islands).fill(-1);
  for (let p = 0; p < n; p += 1)
    if (ground[island[p] as number] === -1) ground[island[p] as number] = p;
  const grounded = (p: number) => ground[island[p] as number] === p;
  for (let p = 0; p < n; p += 1)
    if (grounded(p))
      for (let j = 0; j < n; j += 1) {
        m[p * n + j] = 0;
        m[j * n + p] = 0;
      }
  for (let k = 0; k < n; k += 1) {
    if (grounded(k)) continue;
    const row = k * n;
    const pivot = m[row + k] as number;
    // Islands are connected, so a pivot that is not positive means the caller broke the graph.
    if (!(pivot > 0))
      throw new NetworkError(
        'island',
        `an island's matrix has pivot ${pivot}; expected a positive one`,
      );
    m[row + k] = 1;
    for (let j = 0; j < n; j += 1) m[row + j] = (m[row + j] as number) / pivot;
    for (let i = 0; i < n; i += 1) {
      const at = i * n;
      const factor = m[at + k] as number;
      if (i === k || factor === 0) continue;
      m[at + k] = 0;
      for (let j = 0; j < n; j += 1)
        m[at + j] = (m[at + j] as number) - factor * (m[row + j] as number);
    }
  }
}
