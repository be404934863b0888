/**
 * Whole numbers in the order of `wanted`, each at least `apart` above the one before, with the least sum of squared
 * shifts before rounding (pool adjacent violators).
 */
export function spread(wanted: readonly number[], apart: number): number[] {
  const pools: { sum: number; count: number }[] = [];
  for (const [i, value] of wanted.entries()) {
    let pool = { sum: value - i * apart, count: 1 };
    for (let last = pools.at(-1); last; last = pools.at(-1)) {
      if (last.sum / last.count < pool.sum / pool.count) break;
      pools.pop();
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
    }
    pools.push(pool);
  }
  return pools
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => Math.round(sum / count)))
    .map((base, i) => base + i * apart);
}
