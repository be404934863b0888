/** 95 % interval of a share seen so many times out of so many (E. B. Wilson, J. Am. Stat. Assoc. 22, 1927; formula from memory). */
export function wilson(seen: number, of: number): readonly [low: number, high: number] {
  const z = 1.96;
  const share = seen / of;
  const middle = share + z ** 2 / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  const scale = 1 + z ** 2 / of;
  const round = (value: number) => Math.round(1e4 * Math.min(1, Math.max(0, value))) / 1e4;
  return [round((middle - half) / scale), round((middle + half) / scale)];
}
