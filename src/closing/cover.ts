/** A column of a cover: what it costs, and what share of each row's need it brings. */
export interface CoverColumn {
  readonly cost: number;
  readonly entries: readonly (readonly [row: number, share: number])[];
  /** Columns of one bundle are the same reading taken again: the second is only taken after the first. They are also tried all at once. */
  readonly bundle?: number;
}

/**
 * Columns whose shares add up to at least 1 in every row that all columns together could fill, at small cost: greedily the most need
 * filled per cost, then cuts (what the rest makes needless, dearest first), then exchanges: columns that come in where they make
 * dearer ones needless.
 * @param kept columns that are in the cover whatever they bring
 * @returns indices of columns, rising
 */
export function cover(
  columns: readonly CoverColumn[],
  rows: number,
  kept: readonly number[] = [],
): readonly number[] {
  const needs = reachable(columns, rows);
  const filled = new Float64Array(rows);
  const chosen = new Set<number>();
  const add = (at: number, sign: 1 | -1): void => {
    if (sign > 0) chosen.add(at);
    else chosen.delete(at);
    for (const [row, share] of (columns[at] as CoverColumn).entries)
      filled[row] = (filled[row] as number) + sign * share;
  };
  for (const at of kept) add(at, 1);
  const all = bundled(columns);
  const [first, before, after] = [
    new Map<number, number>(),
    new Map<number, number>(),
    new Map<number, number>(),
  ];
  for (const bundle of all)
    bundle.forEach((at, time) => {
      first.set(at, bundle[0] as number);
      if (time === 0) return;
      before.set(at, bundle[time - 1] as number);
      after.set(bundle[time - 1] as number, at);
    });
  const isNext = (at: number): boolean => {
    const earlier = before.get(at);
    return !chosen.has(at) && (earlier === undefined || chosen.has(earlier));
  };
  const gain = ({ entries }: CoverColumn): number => {
    let sum = 0;
    for (const [row, share] of entries) {
      const open = (needs[row] as number) - (filled[row] as number);
      if (open > SLACK) sum += Math.min(share, open);
    }
    return sum;
  };
  // What a column brings only falls as others come in: a worth once reckoned bounds the later ones, so only the best is reckoned anew.
  const bundles = useful(columns, all);
  const tried = bundles.flat();
  const worth = Float64Array.from(columns, (column) => gain(column) / column.cost);
  for (;;) {
    let [best, most] = [-1, 1e-12];
    for (const at of tried) {
      const rate = worth[at] as number;
      if (rate > most && isNext(at)) [best, most] = [at, rate];
    }
    if (best < 0) break;
    const column = columns[best] as CoverColumn;
    const now = gain(column) / column.cost;
    if (now < most) worth[best] = now;
    else add(best, 1);
  }
  const costs = columns.map((_, at) => columns[first.get(at) ?? at]?.cost as number);
  const costOfFirst = (at: number) => costs[at] as number;
  const dearestFirst = () =>
    [...chosen]
      .filter((at) => !kept.includes(at))
      .sort((x, y) => costOfFirst(y) - costOfFirst(x) || y - x);
  /** Takes out what is needless, and says what. */
  const cut = (candidates: readonly number[]): readonly number[] => {
    const out: number[] = [];
    for (const at of candidates) {
      if (kept.includes(at) || chosen.has(after.get(at) ?? -1)) continue;
      const needless = (columns[at] as CoverColumn).entries.every(
        ([row, share]) => (filled[row] as number) - share >= (needs[row] as number) - SLACK,
      );
      if (!needless) continue;
      add(at, -1);
      out.push(at);
    }
    return out;
  };
  cut(dearestFirst());
  /**
   * A row that each chosen column alone keeps full, by row. What comes in makes a column needless only if it fills that row: most
   * exchanges are turned down by this alone.
   */
  const watched = (): Map<number, number[]> => {
    const found = new Map<number, number[]>();
    for (const at of chosen) {
      if (kept.includes(at)) continue;
      const row = (columns[at] as CoverColumn).entries.find(
        ([row, share]) => (filled[row] as number) - share < (needs[row] as number) - SLACK,
      )?.[0];
      // One that waits for its own repeats to go first is not turned down.
      found.set(row ?? -1, [...(found.get(row ?? -1) ?? []), at]);
    }
    return found;
  };
  let watch = watched();
  /** Whether something chosen would be needless, all that comes in filled in already. */
  const frees = (incoming: readonly number[]): boolean =>
    watch.has(-1) ||
    incoming.some((one) =>
      (columns[one] as CoverColumn).entries.some(([row]) =>
        watch
          .get(row)
          ?.some((at) =>
            (columns[at] as CoverColumn).entries.every(
              ([row, share]) => (filled[row] as number) - share >= (needs[row] as number) - SLACK,
            ),
          ),
      ),
    );
  const costOf = (list: readonly number[]) =>
    list.reduce((sum, at) => sum + (columns[at] as CoverColumn).cost, 0);
  for (let pass = 0; pass < PASSES; pass += 1) {
    let better = false;
    for (const all of bundles) {
      const more = all.filter((at) => !chosen.has(at));
      // One reading more, or all there are of it.
      for (const incoming of more.length > 1 ? [more.slice(0, 1), more] : [more]) {
        if (incoming.length === 0 || incoming.some((at) => chosen.has(at))) continue;
        for (const at of incoming) add(at, 1);
        if (!frees(incoming)) {
          for (const at of incoming) add(at, -1);
          continue;
        }
        const out = cut([
          ...dearestFirst().filter((at) => !incoming.includes(at)),
          ...[...incoming].reverse(),
        ]);
        const gained = costOf(out) - costOf(incoming);
        if (gained > SLACK) {
          better = true;
          watch = watched();
          continue;
        }
        for (const at of out) if (!incoming.includes(at)) add(at, 1);
        for (const at of incoming) if (chosen.has(at)) add(at, -1);
      }
    }
    if (!better) break;
  }
  return [...chosen].sort((x, y) => x - y);
}

/** Times that every column is tried for an exchange. */
const PASSES = 3;

/** Columns by bundle, each without one alone. */
function bundled(columns: readonly CoverColumn[]): readonly (readonly number[])[] {
  const found = new Map<number, number[]>();
  columns.forEach(({ bundle, entries }, at) => {
    if (entries.length === 0) return;
    const key = bundle ?? -1 - at;
    const list = found.get(key);
    if (list) list.push(at);
    else found.set(key, [at]);
  });
  return [...found.values()];
}

/**
 * Bundles that a cover could need: of those that bring the same, the cheapest until their shares fill every row by themselves. A wire may
 * be moved at any of a thousand pairs of points and speak of the same joints.
 */
function useful(
  columns: readonly CoverColumn[],
  bundles: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const alike = new Map<string, (readonly number[])[]>();
  for (const bundle of bundles) {
    const name = bundle
      .map((at) => columns[at]?.entries.map(([row, share]) => `${row}:${share.toFixed(9)}`).join())
      .join(';');
    const list = alike.get(name);
    if (list) list.push(bundle);
    else alike.set(name, [bundle]);
  }
  const costOf = ([at]: readonly number[]) => columns[at as number]?.cost as number;
  return [...alike.values()].flatMap((list) => {
    const [bundle] = list as [readonly number[]];
    const least = columns[bundle[0] as number]?.entries.reduce(
      (so, [, share]) => Math.min(so, share),
      1,
    ) as number;
    return list.sort((x, y) => costOf(x) - costOf(y)).slice(0, Math.ceil(1 / least - SLACK));
  });
}

/** Shares are sums of logarithms: rounding may cost a row its last billionth. */
const SLACK = 1e-9;

/** What each row can have at most, up to 1: a row that all columns together do not fill is left with what there is of it. */
function reachable(columns: readonly CoverColumn[], rows: number): Float64Array {
  const most = new Float64Array(rows);
  for (const { entries } of columns)
    for (const [row, share] of entries) most[row] = Math.min(1, (most[row] as number) + share);
  return most.map((sum) => (sum >= 1 - SLACK ? 1 : 0));
}
