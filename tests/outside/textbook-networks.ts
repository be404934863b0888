/**
 * Resistor networks whose resistances are printed in textbooks. None of these values was looked up for this file:
 * they are written from memory, and where the note says so recomputed by hand. The test holds each of them against
 * a second, general-purpose library as well.
 */
export interface TextbookNetwork {
  readonly title: string;
  readonly source: string;
  readonly nodes: number;
  /** a, b, ohms. */
  readonly branches: readonly (readonly [number, number, number])[];
  /** Two nodes and the ohms between them. */
  readonly expected: readonly (readonly [a: number, b: number, ohms: number])[];
}

type Pair = readonly [number, number];
const units = (pairs: readonly Pair[]) => pairs.map(([a, b]) => [a, b, 1] as const);
const range = (count: number) => Array.from({ length: count }, (_, index) => index);
const pairsOf = (count: number): Pair[] =>
  range(count).flatMap((a) => range(a).map((b): Pair => [b, a]));

/** Corners are the numbers 0 to 7; an edge joins two that differ in one binary digit. */
const cube: TextbookNetwork = {
  title: 'cube of 1 ohm edges: edge, face diagonal, space diagonal',
  source: 'classic exercise in circuit theory; from memory',
  nodes: 8,
  branches: units(pairsOf(8).filter(([a, b]) => [1, 2, 4].includes(a ^ b))),
  expected: [
    [0, 1, 7 / 12],
    [0, 3, 3 / 4],
    [0, 7, 5 / 6],
  ],
};

const complete = (n: number): TextbookNetwork => ({
  title: `complete graph of ${n} nodes: 2/n`,
  source: 'effective resistance of the complete graph (graph theory textbooks); from memory',
  nodes: n,
  branches: units(pairsOf(n)),
  expected: pairsOf(n).map(([a, b]) => [a, b, 2 / n] as const),
});

/** Node 0 is the common rail; each section adds a series and a shunt resistor. */
const ladder = (sections: number, ohms: number): TextbookNetwork => ({
  title: `ladder of ${sections} sections of 1 ohm in series and 1 ohm across: a ratio of Fibonacci numbers`,
  source: 'classic ladder exercise; recomputed as 1 + 1 parallel to the shorter ladder',
  nodes: sections + 2,
  branches: range(sections).flatMap((at) => [
    [at + 1, at + 2, 1] as const,
    [at + 2, 0, 1] as const,
  ]),
  expected: [[1, 0, ohms]],
});

const bridge: TextbookNetwork = {
  title: 'unbalanced bridge, arms 12 and 18 on one side, 18 and 12 on the other, 6 between',
  source:
    'bridge exercise of circuit theory; recomputed by hand from the current balance at both inner nodes',
  nodes: 4,
  branches: [
    [0, 1, 12],
    [0, 2, 18],
    [1, 2, 6],
    [1, 3, 18],
    [2, 3, 12],
  ],
  expected: [[0, 3, 102 / 7]],
};

const kite: TextbookNetwork = {
  title: 'kite, a square with one diagonal: side, diagonal, across the diagonal',
  source: 'resistance distance in the diamond graph; recomputed by hand from series and parallel',
  nodes: 4,
  branches: units([
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 0],
    [0, 2],
  ]),
  expected: [
    [0, 1, 5 / 8],
    [0, 2, 1 / 2],
    [1, 3, 1],
  ],
};

export const petersen: TextbookNetwork = {
  title: 'Petersen graph: neighbours and non-neighbours',
  source: 'resistance distance in the Petersen graph (graph theory textbooks); from memory',
  nodes: 10,
  branches: units(
    range(5).flatMap((at): Pair[] => [
      [at, (at + 1) % 5],
      [at, at + 5],
      [at + 5, ((at + 2) % 5) + 5],
    ]),
  ),
  expected: [
    [0, 1, 3 / 5],
    [0, 5, 3 / 5],
    [5, 7, 3 / 5],
    [0, 2, 4 / 5],
    [0, 6, 4 / 5],
    [5, 6, 4 / 5],
  ],
};

const grid: TextbookNetwork = {
  title: 'square grid of 10 x 10 nodes: opposite corners',
  source: 'corner resistance of an N x N grid; five decimals from memory',
  nodes: 100,
  branches: units(
    range(100).flatMap((at): Pair[] => [
      ...(at % 10 < 9 ? [[at, at + 1] as const] : []),
      ...(at < 90 ? [[at, at + 10] as const] : []),
    ]),
  ),
  expected: [[0, 99, 3.01167]],
};

export const textbookNetworks: readonly TextbookNetwork[] = [
  cube,
  ...[3, 4, 5, 8].map(complete),
  ladder(1, 2),
  ladder(2, 5 / 3),
  ladder(3, 13 / 8),
  ladder(4, 34 / 21),
  bridge,
  kite,
  petersen,
  grid,
];

/**
 * Largest error of a loaded potential divider, as a share of the full voltage, by load ohms over track ohms.
 * Maximum over x of x - x / (1 + x (1 - x) / ratio). Source: loading error of potentiometers (measurement textbooks); from memory.
 */
export const loadingErrors: readonly (readonly [ratio: number, error: number])[] = [
  [2, 0.06673],
  [20, 0.007326],
  [100, 0.001478],
];
