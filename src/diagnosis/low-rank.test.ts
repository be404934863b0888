import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { restingSetting } from '../circuit/setting.ts';
import { suspectsOf } from '../faults/index.ts';
import { View } from '../readings/view.ts';
import { solveDc } from '../solver/index.ts';

describe('a view solved by low-rank edits', () => {
  it('equals the same guitar solved anew, for every modelled fault of every starting wiring', () => {
    let compared = 0;
    for (const { build } of startingWirings) {
      const circuit = build();
      const layout = layoutOf(circuit);
      const setting = restingSetting(circuit);
      for (const { id, edits } of suspectsOf(circuit)) {
        const view = new View(layout, setting, edits);
        const { nodeCount, a, b, ohms } = view.wired;
        const anew = solveDc({ nodes: nodeCount, a, b, ohms });
        for (let i = 0; i < nodeCount; i += 5)
          for (let j = 0; j < i; j += 3) {
            const [got, want] = [view.dc.resistance(i, j), anew.resistance(i, j)];
            if (want === Number.POSITIVE_INFINITY) expect(got, id).toBe(want);
            else if (!(Math.abs(got - want) <= 1e-6 * want + 1e-6))
              expect(got, id).toBeCloseTo(want, 6);
            compared += 1;
          }
      }
    }
    expect(compared).toBeGreaterThan(100_000);
  }, 90_000);
});
