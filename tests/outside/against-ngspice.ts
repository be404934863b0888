import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { layoutOf, nodeAt } from '../../src/circuit/netlist.ts';
import { wire } from '../../src/circuit/wired.ts';
import { type DcSolution, solveDc } from '../../src/solver/index.ts';
import { allPairs, bareEndsOf, lugsOf, spiceNetlist } from '../oracle/index.ts';

export interface Case {
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly edits: readonly Edit[];
  /** Edits for ngspice alone, to show that a difference is noticed. */
  readonly only?: readonly Edit[];
}

export interface Disagreement {
  readonly case: Case;
  readonly pair: readonly [string, string];
  readonly ours: number;
  readonly ngspice: number;
}

export interface Comparison {
  readonly pairs: number;
  /** Largest |ours - ngspice| / ngspice among pairs above 1 ohm. */
  readonly worstRelative: number;
  readonly disagreements: readonly Disagreement[];
}

export function solveByOurs({ circuit, setting, edits }: Case): DcSolution {
  const { nodeCount: nodes, a, b, ohms } = wire(layoutOf(circuit), setting, edits);
  return solveDc({ nodes, a, b, ohms });
}

/** Relative part, and an absolute one of 2 microohm for paths that are ideal on both sides. */
const close = (a: number, b: number) => a === b || Math.abs(a - b) <= 1e-6 * Math.abs(b) + 2e-6;

/** Every pair of lugs (and of bare ends, if asked) of every case, by our solver and by ngspice; one process for all. */
export function compareAllPairs(cases: readonly Case[], withBareEnds = false): Comparison {
  const jobs = cases.map(({ circuit, setting, edits, only = [] }) => ({
    netlist: spiceNetlist(circuit, setting, [...edits, ...only]),
    nodes: [...lugsOf(circuit), ...(withBareEnds ? bareEndsOf(circuit) : [])],
  }));
  const disagreements: Disagreement[] = [];
  let pairs = 0;
  let worstRelative = 0;
  allPairs(jobs).forEach(({ nodes, between }, at) => {
    const one = cases[at]!;
    const ours = solveByOurs(one);
    const layout = layoutOf(one.circuit);
    const index = nodes.map((node) => nodeAt(layout, node));
    for (let a = 0; a < nodes.length; a++) {
      for (let b = 0; b < a; b++) {
        pairs += 1;
        const [mine, other] = [
          ours.resistance(index[a]!, index[b]!),
          between(nodes[a]!, nodes[b]!),
        ];
        if (other > 1 && Number.isFinite(other) && Number.isFinite(mine))
          worstRelative = Math.max(worstRelative, Math.abs(mine - other) / other);
        if (!close(mine, other))
          disagreements.push({
            case: one,
            pair: [nodes[a]!, nodes[b]!],
            ours: mine,
            ngspice: other,
          });
      }
    }
  });
  return { pairs, worstRelative, disagreements };
}

/** Few enough lines to read when a test fails. */
export function tell({ disagreements }: Comparison): string[] {
  return disagreements
    .slice(0, 5)
    .map(
      ({ case: { circuit, setting, edits }, pair, ours, ngspice }) =>
        `${circuit.id} ${JSON.stringify(setting.positions)} knobs ${Object.values(setting.knobs)[0]} ${JSON.stringify(edits)}: ${pair.join(' to ')} ours ${ours}, ngspice ${ngspice}`,
    );
}
