import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { network, solveDc } from '../solver/index.ts';
import { Blocks, ONE, OPEN } from './blocks.ts';

/** Edges as rows: a tag (upper half 0), and the two points. */
const rows = (edges: readonly (readonly [number, number, number])[]): number[] =>
  edges.flatMap(([tag, a, b]) => [0, tag, a, b]);

function named() {
  const numbers = new Map<string, number>();
  return (text: string) => {
    const known = numbers.get(text) ?? numbers.size;
    numbers.set(text, known);
    return known;
  };
}

describe('the blocks of a graph', () => {
  // A triangle 0-1-2, a lead 2-3, and a pair of parallel edges 3-4; 5 hangs on 3, 6-7 lie apart.
  const edges = [
    [1, 0, 1],
    [2, 1, 2],
    [3, 0, 2],
    [4, 2, 3],
    [5, 3, 4],
    [6, 4, 3],
    [7, 3, 5],
    [8, 6, 7],
  ] as const;
  const blocks = new Blocks(8, rows(edges), named());

  it.each([
    [0, 1, [0, 1, 2]],
    [0, 3, [0, 1, 2, 3]],
    [4, 1, [0, 1, 2, 3, 4, 5]],
    [4, 5, [4, 5, 6]],
    [6, 7, [7]],
    [0, 6, []],
    [3, 3, []],
  ])('from %d to %d are those that a current may take', (from, to, expected) => {
    expect(blocks.edgesBetween(from, to)).toEqual(expected);
    expect(blocks.edgesBetween(to, from)).toEqual(expected);
  });

  it('have a name for one point, and for no way', () => {
    expect(blocks.path(3, 3)).toBe(ONE);
    expect(blocks.path(0, 7)).toBe(OPEN);
  });

  it('are named alike in two graphs where all that lies between is alike, and else not', () => {
    const numberOf = named();
    const path = (list: readonly (readonly [number, number, number])[]) =>
      new Blocks(8, rows(list), numberOf).path(0, 3);
    const first = path(edges);
    expect(path(edges.filter(([tag]) => tag < 5))).toBe(first);
    expect(path(edges.filter(([tag]) => tag !== 2))).not.toBe(first);
    expect(path(edges.map(([tag, a, b]) => [tag === 4 ? 9 : tag, a, b] as const))).not.toBe(first);
  });

  it('hold every edge that carries a current between two points, in any graph', () => {
    const graphs = fc.integer({ min: 2, max: 9 }).chain((points) =>
      fc.record({
        points: fc.constant(points),
        edges: fc.array(
          fc
            .tuple(fc.integer({ min: 1, max: 9 }), fc.nat(points - 1), fc.nat(points - 1))
            .filter(([, a, b]) => a !== b),
          { minLength: 1, maxLength: 14 },
        ),
        ends: fc.tuple(fc.nat(points - 1), fc.nat(points - 1)),
      }),
    );
    fc.assert(
      fc.property(graphs, ({ points, edges: list, ends: [from, to] }) => {
        // Unlike ohms, so that no current is 0 by symmetry.
        const net = network(
          points,
          list.map(([tag, a, b], at) => [a, b, tag + Math.sqrt(at + 2)] as const),
        );
        const dc = solveDc(net);
        const blocksOf = new Blocks(points, rows(list), named());
        const within = new Set(blocksOf.edgesBetween(from, to));
        list.forEach((_, at) => {
          if (Math.abs(dc.transfer(from, to, at)) > 1e-9) expect(within.has(at)).toBe(true);
        });
        const open = dc.resistance(from, to) === Number.POSITIVE_INFINITY;
        expect(blocksOf.path(from, to) === OPEN).toBe(open);
        // What lies outside may be taken away.
        const cut = solveDc(
          network(
            points,
            [...within].map((at) => {
              const [tag, a, b] = list[at]!;
              return [a, b, tag + Math.sqrt(at + 2)] as const;
            }),
          ),
        );
        if (!open) expect(cut.resistance(from, to)).toBeCloseTo(dc.resistance(from, to), 9);
      }),
      { seed: 3, numRuns: 400 },
    );
  });
});
