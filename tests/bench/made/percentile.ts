/** The value below which a share of the list lies (nearest rank). */
export function percentile(list: readonly number[], share: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const rounded = (value: number, digits = 3): number => Number(value.toPrecision(digits));
