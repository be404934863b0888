import { inv } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { network, solveDc } from '../../src/solver/index.ts';
import {
  loadingErrors,
  petersen,
  type TextbookNetwork,
  textbookNetworks,
} from './textbook-networks.ts';

/**
 * Second oracle: R_ab = P_aa + P_bb - P_ab - P_ba with P = (L + J/n)^-1, L the Laplacian and J all ones, inverted by
 * mathjs. (Its `pinv` takes rounding errors for rank: for the kite it is wrong by a fifth, so it is not used on L itself.)
 */
function byShiftedInverse({ nodes, branches }: TextbookNetwork): (a: number, b: number) => number {
  const laplacian = Array.from({ length: nodes }, () => new Array<number>(nodes).fill(1 / nodes));
  const add = (row: number, column: number, siemens: number) => {
    laplacian[row]![column]! += siemens;
  };
  for (const [a, b, ohms] of branches) {
    add(a, a, 1 / ohms);
    add(b, b, 1 / ohms);
    add(a, b, -1 / ohms);
    add(b, a, -1 / ohms);
  }
  const p = inv(laplacian);
  return (a, b) => p[a]![a]! + p[b]![b]! - p[a]![b]! - p[b]![a]!;
}

describe.each(textbookNetworks)('$title', (textbook) => {
  const solution = solveDc(network(textbook.nodes, textbook.branches));

  // The grid's figure is known to five decimals; all others are fractions.
  const digits = textbook.nodes === 100 ? 5 : 12;

  it(`reads the printed ohms (${textbook.source})`, () => {
    for (const [a, b, ohms] of textbook.expected) {
      expect(solution.resistance(a, b)).toBeCloseTo(ohms, digits);
      expect(solution.resistance(b, a)).toBeCloseTo(ohms, digits);
    }
  });

  it('agrees with the inverse of its shifted Laplacian (mathjs) at every pair', {
    timeout: 30_000,
  }, () => {
    const other = byShiftedInverse(textbook);
    for (let a = 0; a < textbook.nodes; a++)
      for (let b = 0; b < a; b++) expect(solution.resistance(a, b)).toBeCloseTo(other(a, b), 9);
  });

  it("obeys Foster's first theorem: the sum of R/r over all branches is one less than the nodes (from memory)", () => {
    const sum = textbook.branches.reduce(
      (total, [a, b, ohms]) => total + solution.resistance(a, b) / ohms,
      0,
    );
    expect(sum).toBeCloseTo(textbook.nodes - 1, 10);
  });

  it('balances the currents at every node, one ampere in and out where it is forced', () => {
    const [from, to] = [0, textbook.nodes - 1];
    const out = new Float64Array(textbook.nodes);
    textbook.branches.forEach(([a, b], index) => {
      const current = solution.transfer(from, to, index);
      out[a]! += current;
      out[b]! -= current;
    });
    for (let node = 0; node < textbook.nodes; node++)
      expect(out[node]).toBeCloseTo(node === from ? 1 : node === to ? -1 : 0, 10);
  });
});

it('counts 2000 spanning trees in the Petersen graph (graph theory textbooks; from memory)', () => {
  // Matrix-tree theorem, edge by edge: an edge across R ohm multiplies the number of trees by 1 + R. A tree counts 1.
  const reached = new Set([0]);
  const tree: (typeof petersen.branches)[number][] = [];
  for (let grown = true; grown; ) {
    grown = false;
    for (const branch of petersen.branches) {
      if (reached.has(branch[0]) === reached.has(branch[1])) continue;
      tree.push(branch);
      reached.add(branch[0]).add(branch[1]);
      grown = true;
    }
  }
  const placed = [...tree];
  let trees = 1;
  for (const branch of petersen.branches.filter((one) => !tree.includes(one))) {
    trees *= 1 + solveDc(network(petersen.nodes, placed)).resistance(branch[0], branch[1]);
    placed.push(branch);
  }
  expect(placed).toHaveLength(15);
  expect(trees).toBeCloseTo(2000, 8);
});

it.each(loadingErrors)(
  'a pot loaded with %d times its track is off by at most %d of the full voltage',
  (ratio, error) => {
    const track = 1000;
    let largest = 0;
    for (let step = 1; step < 10_000; step++) {
      const share = step / 10_000;
      const solution = solveDc(
        network(3, [
          [0, 1, track * share],
          [1, 2, track * (1 - share)],
          [0, 1, track * ratio],
        ]),
      );
      // From the rail to the top: the load's drop over the whole drop.
      const wiper = solution.transfer(0, 2, 2) * track * ratio;
      largest = Math.max(largest, share - wiper / solution.resistance(0, 2));
    }
    expect(largest).toBeCloseTo(error, error < 0.01 ? 6 : 5);
  },
);
