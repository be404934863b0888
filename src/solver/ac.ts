import { AcMatrix, type Complex } from './ac-matrix.ts';
import { NetworkError } from './errors.ts';
import { Sets } from './islands.ts';
import type { Network } from './network.ts';

/**
 * Every branch is an arm of ohms in series with henries, and farads across the arm; ohms 0 without henries is an ideal
 * connection, ohms Infinity leaves the farads alone. The henries have `coreOhms` across them alone (Infinity: no loss), the
 * farads a conductance of `lossTangent` times their susceptance.
 */
export interface AcNetwork extends Network {
  readonly farads: Float64Array;
  readonly henries: Float64Array;
  readonly coreOhms: Float64Array;
  readonly lossTangent: Float64Array;
}

/** A resistance (Infinity for none) and a capacitance hung between two nodes: an amplifier's input, a cable, a hand near by. */
export interface Load {
  readonly from: number;
  readonly to: number;
  readonly ohms: number;
  readonly farads: number;
}

/** Between points that nothing joins: a teraohm, far above any part. */
const OPEN_OHMS = 1e12;

/**
 * Complex nodal analysis: 1 A runs through a network from node `from` to node `to`, which is the zero of all potentials. What does
 * not depend on the frequency is done once; `solve` then does one, and the questions are about the frequency last solved.
 * Nodes beyond `loads` may be used by them: `nodes` counts those of the network, `more` those that only loads touch.
 */
export class Ac {
  private readonly network: AcNetwork;
  private readonly start: number;
  /** Unknown of each node, or -1 where no current goes: the potential there is 0. */
  private readonly unknown: Int32Array;
  private readonly matrix: AcMatrix | null;
  private readonly same: boolean;
  /** Admittances that change with the frequency. */
  private readonly reactive: readonly Reactive[];
  private omega = 0;

  constructor(network: AcNetwork, loads: readonly Load[], from: number, to: number, more = 0) {
    this.network = network;
    this.start = from;
    const count = network.nodes + more;
    const { ohms, henries, farads, coreOhms, lossTangent } = network;
    const merged = new Sets(count);
    for (let i = 0; i < ohms.length; i += 1)
      if (ohms[i] === 0 && henries[i] === 0)
        merged.join(network.a[i] as number, network.b[i] as number);
    const { of: pointOf, count: points } = merged.labels();
    const links: Link[] = [];
    const link = (x: number, y: number, rest: Omit<Link, 'p' | 'q'>): void => {
      const [p, q] = [pointOf[x] as number, pointOf[y] as number];
      if (p !== q) links.push({ p, q, ...rest });
    };
    for (let i = 0; i < ohms.length; i += 1) {
      const arm = (henries[i] as number) > 0 || (ohms[i] as number) > 0;
      const open = ohms[i] === Number.POSITIVE_INFINITY;
      if ((!arm || open) && !((farads[i] as number) > 0)) continue;
      link(network.a[i] as number, network.b[i] as number, {
        ohms: arm ? (ohms[i] as number) : Number.POSITIVE_INFINITY,
        henries: henries[i] as number,
        coreOhms: coreOhms[i] ?? Number.POSITIVE_INFINITY,
        farads: farads[i] as number,
        lossTangent: lossTangent[i] ?? 0,
      });
    }
    for (const load of loads)
      link(load.from, load.to, {
        ohms: load.ohms,
        henries: 0,
        coreOhms: Number.POSITIVE_INFINITY,
        farads: load.farads,
        lossTangent: 0,
      });
    const [source, sink] = [pointOf[from] as number, pointOf[to] as number];
    this.same = source === sink;
    const { order, closed } = reached(links, points, source, sink);
    this.unknown = pointOf.map((point) => order[point] as number);
    this.matrix =
      closed && !this.same ? new AcMatrix(ends(links, order), order[source] as number) : null;
    this.reactive = this.matrix ? this.written(links, order) : [];
  }

  /** Writes what is constant into the matrix; returns the rest. */
  private written(links: readonly Link[], order: Int32Array): readonly Reactive[] {
    const { matrix } = this;
    if (!matrix) return [];
    return links.flatMap(({ p, q, ...values }): Reactive[] => {
      const place = matrix.place(order[p] as number, order[q] as number);
      if (!place) return [];
      if (values.henries > 0 || values.farads > 0) return [{ place, ...values }];
      matrix.constant(place, 1 / values.ohms);
      return [];
    });
  }

  /** Throws NetworkError for a frequency that is not above 0. */
  solve(frequency: number): this {
    if (!(frequency > 0))
      throw new NetworkError(
        'frequency',
        `a frequency should be above 0 Hz, got ${String(frequency)}`,
      );
    this.omega = 2 * Math.PI * frequency;
    const { matrix } = this;
    if (!matrix) return this;
    matrix.reset();
    for (const one of this.reactive) {
      const c = this.omega * one.farads;
      const [g, s] =
        one.ohms === Number.POSITIVE_INFINITY ? [0, 0] : inverse(armOf(one, this.omega));
      matrix.add(one.place, g + c * one.lossTangent, s + c);
    }
    matrix.solve();
    return this;
  }

  /** Volts of node x above node y: ohms between the driven nodes, when those are asked. 0 between points that no current reaches. */
  voltage(x: number, y: number): Complex {
    const [xr, xi] = this.potential(x);
    const [yr, yi] = this.potential(y);
    return [xr - yr, xi - yi];
  }

  private potential(node: number): Complex {
    if (this.same) return [0, 0];
    if (!this.matrix) return node === this.start ? [OPEN_OHMS, 0] : [0, 0];
    const at = this.unknown[node] as number;
    return at < 0 ? [0, 0] : this.matrix.value(at);
  }

  /**
   * Current in the arm of a branch, which by reciprocity is the voltage at the driven pair per volt of EMF in that arm, where
   * the EMF lifts the branch's a above its b. 0 for an open arm.
   */
  transfer(index: number): Complex {
    const { a, b, ohms, henries, coreOhms } = this.network;
    const r = ohms[index] as number;
    if (r === Number.POSITIVE_INFINITY || !this.matrix) return [0, 0];
    const arm = { ohms: r, henries: henries[index] as number, coreOhms: coreOhms[index] as number };
    const voltage = this.voltage(a[index] as number, b[index] as number);
    return times(voltage, inverse(armOf(arm, this.omega)));
  }

  /** Current in the capacitance of a branch: the same for an EMF in series with that. */
  throughFarads(index: number): Complex {
    const { a, b, farads, lossTangent } = this.network;
    if (!this.matrix) return [0, 0];
    const c = this.omega * (farads[index] as number);
    return times(this.voltage(a[index] as number, b[index] as number), [
      c * (lossTangent[index] as number),
      c,
    ]);
  }

  /** Current in a capacitance that was handed in as a load. */
  throughLoad({ from, to, farads }: Load): Complex {
    return this.matrix ? times(this.voltage(from, to), [0, this.omega * farads]) : [0, 0];
  }
}

interface Values {
  readonly ohms: number;
  readonly henries: number;
  readonly coreOhms: number;
  readonly farads: number;
  readonly lossTangent: number;
}
/** An admittance between two merged points. */
interface Link extends Values {
  readonly p: number;
  readonly q: number;
}
interface Reactive extends Values {
  readonly place: Int32Array;
}

/** R + (j w L parallel to the core's resistance). */
function armOf(
  { ohms, henries, coreOhms }: Pick<Values, 'ohms' | 'henries' | 'coreOhms'>,
  omega: number,
): Complex {
  const x = omega * henries;
  if (x === 0 || coreOhms === Number.POSITIVE_INFINITY) return [ohms, x];
  const share = (coreOhms * x) / (coreOhms * coreOhms + x * x);
  return [ohms + share * x, share * coreOhms];
}

const inverse = ([re, im]: Complex): Complex => {
  const size = re * re + im * im;
  return [re / size, -im / size];
};
const times = ([ar, ai]: Complex, [br, bi]: Complex): Complex => [
  ar * br - ai * bi,
  ar * bi + ai * br,
];

/** Numbers 0, 1, .. for the points that current from `source` can reach without passing the sink; -1 for the rest. */
function reached(
  links: readonly Link[],
  points: number,
  source: number,
  sink: number,
): { readonly order: Int32Array; readonly closed: boolean } {
  const at: number[][] = Array.from({ length: points }, () => []);
  for (const { p, q } of links) {
    at[p]?.push(q);
    at[q]?.push(p);
  }
  const order = new Int32Array(points).fill(-1);
  order[source] = 0;
  const found = [source];
  let closed = false;
  for (const point of found)
    for (const next of at[point] as number[]) {
      if (next === sink) closed = true;
      else if (order[next] === -1) {
        order[next] = found.length;
        found.push(next);
      }
    }
  return { order, closed };
}

const ends = (links: readonly Link[], order: Int32Array): readonly Complex[] =>
  links.map(({ p, q }) => [order[p] as number, order[q] as number]);
