/** A share with its 95 % interval (Wilson 1927; the normal quantile 1.96), which holds for none and for all, too. */
export interface Share {
  readonly of: number;
  readonly count: number;
  readonly share: number | null;
  readonly from: number | null;
  readonly to: number | null;
}

const Z = 1.959964;
const round = (value: number): number => Math.round(value * 1e4) / 1e4;

export function shareOf(list: readonly boolean[]): Share {
  const n = list.length;
  const count = list.filter(Boolean).length;
  if (n === 0) return { of: 0, count: 0, share: null, from: null, to: null };
  const p = count / n;
  const middle = (p + Z ** 2 / (2 * n)) / (1 + Z ** 2 / n);
  const half = (Z / (1 + Z ** 2 / n)) * Math.sqrt((p * (1 - p)) / n + Z ** 2 / (4 * n ** 2));
  return {
    of: n,
    count,
    share: round(p),
    from: round(Math.max(0, middle - half)),
    to: round(Math.min(1, middle + half)),
  };
}
