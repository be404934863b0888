import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DcSolution, network, solveDc, withBranch, withResistance } from './index.ts';

/** Branch lists over 2..8 nodes with ideal, finite and missing connections, islands included. */
const branches = fc.integer({ min: 2, max: 8 }).chain((nodes) =>
  fc.record({
    nodes: fc.constant(nodes),
    list: fc.array(
      fc
        .tuple(
          fc.nat(nodes - 1),
          fc.nat(nodes - 1),
          fc.oneof(
            fc.constant(0),
            fc.double({ min: 0, max: 6, noNaN: true }).map((d) => 10 ** d),
          ),
        )
        .filter(([a, b]) => a !== b),
      { minLength: 1, maxLength: 14 },
    ),
    at: fc.tuple(fc.nat(nodes - 1), fc.nat(nodes - 1)).filter(([a, b]) => a !== b),
    pick: fc.nat(13),
    ohms: fc.double({ min: 0, max: 6, noNaN: true }).map((d) => 10 ** d),
  }),
);

function same(edited: DcSolution, rebuilt: DcSolution, nodes: number): void {
  for (let i = 0; i < nodes; i += 1)
    for (let j = 0; j < nodes; j += 1) {
      const want = rebuilt.resistance(i, j);
      const got = edited.resistance(i, j);
      if (want === Number.POSITIVE_INFINITY) expect(got).toBe(want);
      else expect(Math.abs(got - want)).toBeLessThanOrEqual(1e-6 * want + 1e-6);
    }
}

describe('low-rank edits equal rebuilds', () => {
  it('for an added branch, within an island and across islands', () => {
    fc.assert(
      fc.property(branches, ({ nodes, list, at: [a, b], ohms }) => {
        same(
          withBranch(solveDc(network(nodes, list)), a, b, ohms),
          solveDc(network(nodes, [...list, [a, b, ohms]])),
          nodes,
        );
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('for a changed or cut branch, bridges of the graph included', () => {
    let cuts = 0;
    fc.assert(
      fc.property(branches, fc.boolean(), ({ nodes, list, pick, ohms }, cut) => {
        const index = pick % list.length;
        const branch = list[index] as (typeof list)[number];
        if (branch[2] === 0) return;
        const to = cut ? Number.POSITIVE_INFINITY : ohms;
        const edited = withResistance(solveDc(network(nodes, list)), index, to);
        if (edited === null) return;
        if (cut) cuts += 1;
        same(edited, solveDc(network(nodes, list.with(index, [branch[0], branch[1], to]))), nodes);
      }),
      { seed: 2, numRuns: 500 },
    );
    expect(cuts).toBeGreaterThan(50);
  });

  it('refuses what cannot be, naming the branch', () => {
    const base = solveDc(network(2, [[0, 1, 5]]));
    expect(() => withBranch(base, 0, 1, -1)).toThrow(
      'an added branch needs a resistance above 0 ohm, got -1',
    );
    expect(() => withBranch(base, 0, 7, 1)).toThrow('there is no node 7; the network has 2');
    expect(() => withResistance(base, 3, 1)).toThrow(
      'branch 3 should have a finite resistance to change, got undefined',
    );
  });
});
