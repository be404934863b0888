import type { NodeName } from '../../src/circuit/edit.ts';
import type { PartId } from '../../src/circuit/parts/part.ts';
import { writeCopy } from './deck.ts';
import type { Probes } from './operating-points.ts';
import { runNgspice } from './run-ngspice.ts';
import type { SpiceNetlist } from './spice-netlist.ts';

/** What hangs on the guitar's output: cable and amplifier, or a meter. */
export interface Load {
  readonly at: Probes;
  readonly ohms?: number;
  readonly farads?: number;
}

export interface ResponseJob {
  readonly netlist: SpiceNetlist;
  readonly drive:
    | { readonly through: Probes }
    /** Volts in series with each winding, negative for the opposite phase; windings that are not named rest. */
    | { readonly emfs: Readonly<Record<PartId, number>> }
    /** 1 V held between two nodes. */
    | { readonly held: Probes };
  /** Points beyond the netlist that loads may use: a hand, a room. */
  readonly beyond?: readonly string[];
  readonly loads: readonly Load[];
  /** The voltage asked for. */
  readonly across: Probes;
}

/** One complex number a frequency. */
export interface Response {
  readonly real: Float64Array;
  readonly imaginary: Float64Array;
}

const tieOhms = 1e12;

/**
 * Small-signal response at each frequency: volts (per volt of EMF), or ohms where 1 A is forced through two nodes.
 * All jobs in one process of the simulator.
 */
export function responses(jobs: readonly ResponseJob[], hertz: readonly number[]): Response[] {
  const { lines, losses, across } = deckOf(jobs);

  lines.push('.control', 'set filetype=binary', 'set appendwrite');
  for (const f of hertz) {
    for (const { name, ohmHertz } of losses) lines.push(`alter ${name} = ${ohmHertz / f}`);
    lines.push(`ac lin 1 ${f} ${f}`, 'write out.raw', 'destroy all');
  }
  const plots = runNgspice(ended(lines));
  if (plots.length !== hertz.length)
    throw new Error(`ngspice wrote ${plots.length} points; ${hertz.length} were expected`);
  const column = new Map(plots[0]!.variables.map((name, index) => [name, index]));
  return across.map(([red, black]) => {
    const [r, b] = [column.get(`v(${red})`), column.get(`v(${black})`)];
    if (r === undefined || b === undefined)
      throw new Error(`ngspice gave no voltage across ${red}, ${black}`);
    return {
      real: Float64Array.from(plots, ({ values }) => values[2 * r]! - values[2 * b]!),
      imaginary: Float64Array.from(plots, ({ values }) => values[2 * r + 1]! - values[2 * b + 1]!),
    };
  });
}

export function magnitudes({ real, imaginary }: Response): Float64Array {
  return real.map((x, at) => Math.hypot(x, imaginary[at]!));
}

/** Milliseconds that the simulator takes for one of its own sweeps of all jobs: so many frequencies a decade from 20 Hz to 20 kHz, losses as they are at 1 kHz. */
export function sweepMs(jobs: readonly ResponseJob[], perDecade: number): number {
  const started = performance.now();
  const { lines, losses } = deckOf(jobs);
  lines.push('.control', 'set filetype=binary');
  for (const { name, ohmHertz } of losses) lines.push(`alter ${name} = ${ohmHertz / 1000}`);
  lines.push(`ac dec ${perDecade} 20 20000`, 'write out.raw');
  const plots = runNgspice(ended(lines));
  if (plots.length === 0) throw new Error('ngspice wrote no sweep');
  return performance.now() - started;
}

const ended = (lines: readonly string[]): string =>
  `${[...lines, 'quit 0', '.endc', '.end'].join('\n')}\n`;

interface Deck {
  readonly lines: string[];
  readonly losses: readonly { readonly name: string; readonly ohmHertz: number }[];
  /** Spice names of the two nodes asked for, job by job. */
  readonly across: readonly Probes[];
}

/** All jobs as copies in one deck, up to its control section. */
function deckOf(jobs: readonly ResponseJob[]): Deck {
  const lines = ['* response'];
  const losses: { name: string; ohmHertz: number }[] = [];
  const across = jobs.map((job, copy): Probes => {
    const written = writeCopy(job.netlist, copy, { withReactance: true, joins: 'merged' });
    losses.push(...written.losses);
    const at = (node: NodeName) => {
      const name = job.beyond?.includes(node) ? `b${copy}_${node}` : written.nodeName.get(node);
      if (name === undefined) throw new Error(`no node ${node} in this netlist`);
      return name;
    };
    const level = (volts: number) => `0 ac ${Math.abs(volts)} ${volts < 0 ? 180 : 0}`;
    if ('emfs' in job.drive) {
      const byName = new Map<string, number>();
      for (const [coil, volts] of Object.entries(job.drive.emfs)) {
        const name = written.emfName.get(coil);
        if (name) byName.set(name, written.halved.has(coil) ? volts / 2 : volts);
      }
      for (const line of written.lines) {
        const volts = byName.get(line.slice(0, line.indexOf(' ')));
        lines.push(volts === undefined ? line : line.replace(/ 0$/, ` ${level(volts)}`));
      }
    } else if ('held' in job.drive) {
      lines.push(...written.lines);
      const [red, black] = job.drive.held;
      lines.push(`vh${copy} ${at(red)} ${at(black)} 0 ac 1`);
    } else {
      lines.push(...written.lines);
      const [red, black] = job.drive.through;
      lines.push(`i${copy} ${at(black)} ${at(red)} 0 ac 1`);
    }
    job.loads.forEach(({ at: [red, black], ohms, farads }, index) => {
      if (ohms !== undefined) lines.push(`rl${copy}_${index} ${at(red)} ${at(black)} ${ohms}`);
      if (farads !== undefined) lines.push(`cl${copy}_${index} ${at(red)} ${at(black)} ${farads}`);
    });
    for (const node of job.beyond ?? []) lines.push(`rt${at(node)} ${at(node)} 0 ${tieOhms}`);
    for (const node of new Set(written.island.values()))
      lines.push(`rt${node} ${node} 0 ${tieOhms}`);
    return [at(job.across[0]), at(job.across[1])];
  });
  return { lines, losses, across };
}
