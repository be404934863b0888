import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { layoutOf, nodeAt } from '../../src/circuit/netlist.ts';
import { switchSettings } from '../../src/circuit/setting.ts';
import { suspectsOf } from '../../src/faults/index.ts';
import { View } from '../../src/readings/view.ts';
import { allPairs, lugsOf, spiceNetlist } from '../oracle/index.ts';
import { rounded } from './made/percentile.ts';

/** So many wirings in one process of the simulator: more make its matrix slow. */
const AT_ONCE = 60;

/**
 * Ohms between all pairs of lugs of one wiring under all its suspects in all switch positions, by ngspice and by ours. The ratio is
 * ngspice's time by ours: above 1 ours is faster. ngspice's share has the writing of its decks and the reading of its results in it.
 */
export function run() {
  const circuit = startingWirings[0]!.build();
  const layout = layoutOf(circuit);
  const nodes = lugsOf(circuit);
  const index = nodes.map((node) => nodeAt(layout, node));
  const jobs = suspectsOf(circuit).flatMap(({ edits }) =>
    switchSettings(circuit).map((setting) => ({ edits, setting })),
  );
  const ours: Float64Array[] = [];
  const started = performance.now();
  for (const { edits, setting } of jobs) {
    const { dc } = new View(layout, setting, edits);
    const all = new Float64Array(index.length ** 2);
    index.forEach((a, i) => {
      index.forEach((b, j) => {
        all[i * index.length + j] = dc.resistance(a, b);
      });
    });
    ours.push(all);
  }
  const oursMs = performance.now() - started;
  let [ngspiceMs, worst] = [0, 0];
  for (let from = 0; from < jobs.length; from += AT_ONCE) {
    const part = jobs.slice(from, from + AT_ONCE);
    const before = performance.now();
    const theirs = allPairs(
      part.map(({ edits, setting }) => ({ netlist: spiceNetlist(circuit, setting, edits), nodes })),
    );
    ngspiceMs += performance.now() - before;
    theirs.forEach(({ ohms }, at) => {
      ohms.forEach((other, pair) => {
        const mine = ours[from + at]![pair]!;
        if (mine === other) return;
        // Microohms of paths that are ideal on both sides are no disagreement.
        worst = Math.max(worst, (Math.abs(mine - other) - 2e-6) / Math.max(other, 1));
      });
    });
  }
  return {
    solveRatioToNgspice: rounded(ngspiceMs / oursMs),
    solve: {
      wiring: circuit.id,
      guitars: jobs.length,
      pairs: (jobs.length * nodes.length * (nodes.length - 1)) / 2,
      oursMs: rounded(oursMs),
      ngspiceMs: rounded(ngspiceMs),
      worstRelativeDifference: rounded(worst),
    },
  };
}
