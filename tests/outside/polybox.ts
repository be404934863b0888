/**
 * The polybox: three multipliers and two adders, X = A C, Y = B D, Z = C E, F = X + Y, G = Y + Z. With A..E = 3, 2, 2, 3, 3
 * a sound box shows F = G = 12; this one shows F = 10, G = 12. Each component is faulty with probability 0.01, independently,
 * and a faulty one may show anything.
 * Source of the example: de Kleer and Williams, "Diagnosing multiple faults", Artificial Intelligence 32 (1987). The figures
 * in the test are recomputed by brute force over all 32 sets of faults, as the functions below do; they are not copied from
 * the paper. A set whose sound components say nothing of a point spreads evenly over 16 values there (a wire of four bits);
 * a set that says nothing of F or G is not held against it, as in the paper's account.
 */
export const components = ['M1', 'M2', 'M3', 'A1', 'A2'] as const;
export type Component = (typeof components)[number];
export const points = ['X', 'Y', 'Z'] as const;
export type Point = (typeof points)[number];

/** Values that a point may take. */
export const values = 16;
export const faulty = 0.01;

export interface FaultSet {
  readonly faults: readonly Component[];
  readonly prior: number;
  /** Whether the sound components allow F = 10 and G = 12. */
  readonly consistent: boolean;
  /** What they force at each point, if anything. */
  readonly forced: Readonly<Partial<Record<Point, number>>>;
}

export const faultSets: readonly FaultSet[] = Array.from({ length: 2 ** 5 }, (_, bits) => {
  const faults = components.filter((__, at) => (bits >> at) & 1);
  const prior = faulty ** faults.length * (1 - faulty) ** (5 - faults.length);
  return { faults, prior, ...solutionsOf(faults) };
});

/** Tries every triple X, Y, Z of whole numbers 0 to 15 against the sound components. */
function solutionsOf(faults: readonly Component[]): Pick<FaultSet, 'consistent' | 'forced'> {
  const sound = (component: Component) => !faults.includes(component);
  const seen: Record<Point, Set<number>> = { X: new Set(), Y: new Set(), Z: new Set() };
  for (let x = 0; x < values; x++) {
    if (sound('M1') && x !== 3 * 2) continue;
    for (let y = 0; y < values; y++) {
      if (sound('M2') && y !== 2 * 3) continue;
      if (sound('A1') && x + y !== 10) continue;
      for (let z = 0; z < values; z++) {
        if (sound('M3') && z !== 2 * 3) continue;
        if (sound('A2') && y + z !== 12) continue;
        seen.X.add(x);
        seen.Y.add(y);
        seen.Z.add(z);
      }
    }
  }
  const forced: Partial<Record<Point, number>> = {};
  for (const point of points) if (seen[point].size === 1) [forced[point]] = seen[point];
  return { consistent: seen.X.size > 0, forced };
}

/** Chance of each value at a point, by value, under a set of faults. */
export function chancesAt(set: FaultSet, point: Point): Record<string, number> {
  const known = set.forced[point];
  return Object.fromEntries(
    Array.from({ length: values }, (_, value) => [
      `${value}`,
      known === undefined ? 1 / values : value === known ? 1 : 0,
    ]),
  );
}

/** Entropy in nat of weights that need not sum to 1. */
export function entropy(weights: readonly number[]): number {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.reduce(
    (sum, weight) => (weight > 0 ? sum - (weight / total) * Math.log(weight / total) : sum),
    0,
  );
}

/** Expected entropy over the sets once a point is measured, by the definition: mean over values of the entropy given each. */
export function expectedEntropyByHand(weights: readonly number[], point: Point): number {
  let expected = 0;
  for (let value = 0; value < values; value++) {
    const given = faultSets.map((set, at) => weights[at]! * chancesAt(set, point)[value]!);
    expected += given.reduce((sum, weight) => sum + weight, 0) * entropy(given);
  }
  return expected;
}
