import type { NodeName } from '../../src/circuit/edit.ts';
import type { PartId } from '../../src/circuit/parts/part.ts';
import { type Joins, writeCopy } from './deck.ts';
import { runNgspice } from './run-ngspice.ts';
import type { SpiceNetlist } from './spice-netlist.ts';

export type Probes = readonly [red: NodeName, black: NodeName];
/** What drives one operating point: a current forced into `red` and out of `black`, or 1 V in series with a winding. */
export type Drive = { readonly through: Probes } | { readonly emf: PartId };

/** The forced current. */
export const amperes = 1e-3;
/** Ties each island to the reference at one node: every voltage is definite, and no current is led astray. */
const islandOhms = 1e12;
/** Two islands are 2e12 ohm apart; nothing in a guitar that conducts comes near this. */
export const openAbove = 1e10;

/** Volts at a node, at one of the operating points of a netlist. */
export type Voltages = (point: number, node: NodeName) => number;

export interface PointsJob {
  readonly netlist: SpiceNetlist;
  readonly drives: readonly Drive[];
}

/**
 * Operating points of several netlists in one process of the simulator, each netlist with drives of its own.
 * The netlists stand side by side in one deck; point n of all of them is solved together.
 */
export function operatingPoints(jobs: readonly PointsJob[], joins: Joins = 'merged'): Voltages[] {
  const copies = jobs.map(({ netlist }, copy) =>
    writeCopy(netlist, copy, { withReactance: false, joins }),
  );
  const lines = ['* operating points'];
  /** Sources to switch on at each point. */
  const sources: { name: string; level: number }[][] = [];
  jobs.forEach(({ drives }, copy) => {
    const { lines: own, nodeName, emfName, island } = copies[copy]!;
    lines.push(...own);
    for (const node of new Set(island.values())) lines.push(`rt${node} ${node} 0 ${islandOhms}`);
    const at = (node: NodeName) => {
      const name = nodeName.get(node);
      if (name === undefined) throw new Error(`no node ${node} in this netlist`);
      return name;
    };
    drives.forEach((drive, point) => {
      sources[point] ??= [];
      if ('through' in drive) {
        const [red, black] = drive.through;
        const name = `i${copy}_${point}`;
        // A current source pushes its current through itself from its first node to its second.
        lines.push(`${name} ${at(black)} ${at(red)} 0`);
        sources[point]!.push({ name, level: amperes });
      } else {
        // An open winding drives nothing: its point is the resting circuit.
        const name = emfName.get(drive.emf);
        if (name) sources[point]!.push({ name, level: 1 });
      }
    });
  });
  if (sources.length === 0) return jobs.map(() => () => 0);
  lines.push('.control', 'set filetype=binary', 'set appendwrite');
  sources.forEach((now, point) => {
    for (const { name } of sources[point - 1] ?? []) lines.push(`alter ${name} = 0`);
    for (const { name, level } of now) lines.push(`alter ${name} = ${level}`);
    lines.push('op', 'write out.raw', 'destroy all');
  });
  lines.push('quit 0', '.endc', '.end');

  const plots = runNgspice(`${lines.join('\n')}\n`);
  if (plots.length !== sources.length)
    throw new Error(`ngspice wrote ${plots.length} points; ${sources.length} were expected`);
  const column = new Map(plots[0]!.variables.map((name, index) => [name, index]));
  return copies.map(({ nodeName }) => {
    const columnOf = new Map<NodeName, number>();
    for (const [node, name] of nodeName) {
      const place = column.get(`v(${name})`);
      if (place === undefined) throw new Error(`ngspice gave no voltage for ${node}`);
      columnOf.set(node, place);
    }
    return (point, node) => plots[point]!.values[columnOf.get(node)!]!;
  });
}
