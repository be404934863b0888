import { describe, expect, it } from 'vitest';
import { type CoverColumn, cover } from './cover.ts';
import { fewest } from './lower-bound.ts';

/** A small problem drawn from a seed (Park and Miller's generator): whole and partial shares, several costs. */
function problem(seed: number): { columns: CoverColumn[]; rows: number } {
  let state = seed * 48271 + 1;
  const dice = () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
  const rows = 3 + Math.floor(dice() * 6);
  const columns = Array.from({ length: 5 + Math.floor(dice() * 5) }, () => ({
    cost: 1 + Math.floor(dice() * 6),
    entries: Array.from({ length: rows }, (_, row) => [row, dice()] as const)
      .filter(([, chance]) => chance < 0.45)
      .map(([row, chance]) => [row, chance < 0.3 ? 1 : 0.4] as const),
  }));
  return { columns, rows };
}

const filled = (columns: readonly CoverColumn[], rows: number, chosen: readonly number[]) =>
  Array.from({ length: rows }, (_, row) =>
    chosen.reduce(
      (sum, at) => sum + (columns[at]!.entries.find(([one]) => one === row)?.[1] ?? 0),
      0,
    ),
  );

/** Every subset there is: the least cost and the least count of those that fill what all columns fill. */
function exhaustive(columns: readonly CoverColumn[], rows: number) {
  const all = filled(columns, rows, [...columns.keys()]);
  let [cost, count] = [Infinity, Infinity];
  for (let set = 0; set < 1 << columns.length; set += 1) {
    const chosen = [...columns.keys()].filter((at) => (set >> at) & 1);
    const now = filled(columns, rows, chosen);
    if (!all.every((most, row) => most < 1 - 1e-9 || now[row]! >= 1 - 1e-9)) continue;
    cost = Math.min(
      cost,
      chosen.reduce((sum, at) => sum + columns[at]!.cost, 0),
    );
    count = Math.min(count, chosen.length);
  }
  return { cost, count };
}

describe('a cover', () => {
  const cases = Array.from({ length: 120 }, (_, seed) => problem(seed + 1));

  it('fills every row that can be filled, and is near the best of all subsets', () => {
    let [best, cost] = [0, 0];
    for (const { columns, rows } of cases) {
      const chosen = cover(columns, rows);
      const all = filled(columns, rows, [...columns.keys()]);
      const now = filled(columns, rows, chosen);
      all.forEach((most, row) => {
        if (most >= 1 - 1e-9) expect(now[row]).toBeGreaterThanOrEqual(1 - 1e-9);
      });
      best += exhaustive(columns, rows).cost;
      cost += chosen.reduce((sum, at) => sum + columns[at]!.cost, 0);
    }
    expect(cost).toBeGreaterThanOrEqual(best);
    // Greedy with cuts: within a twentieth of the optimum over all cases together.
    expect(cost / best).toBeLessThan(1.05);
  });

  it('is never below the bound of the linear programme, and the bound never above the best count', () => {
    let [bound, best] = [0, 0];
    for (const { columns, rows } of cases) {
      const all = filled(columns, rows, [...columns.keys()]);
      const needs = [...all.keys()]
        .filter((row) => all[row]! >= 1 - 1e-9)
        .map(
          (row) =>
            new Map(
              columns.flatMap(({ entries }, at) =>
                entries.filter(([one]) => one === row).map(([, share]) => [at, share] as const),
              ),
            ),
        );
      const least = fewest(needs, columns.length, []);
      const { count } = exhaustive(columns, rows);
      expect(least).toBeLessThanOrEqual(count);
      bound += least;
      best += count;
    }
    expect(bound / best).toBeGreaterThan(0.8);
  });

  it('keeps what must be in it, and leaves out what that makes needless', () => {
    const columns: CoverColumn[] = [
      { cost: 1, entries: [[0, 1]] },
      {
        cost: 9,
        entries: [
          [0, 1],
          [1, 1],
        ],
      },
      { cost: 1, entries: [[1, 1]] },
    ];
    expect(cover(columns, 2)).toEqual([0, 2]);
    expect(cover(columns, 2, [1])).toEqual([1]);
    expect(cover(columns, 2, [0])).toEqual([0, 2]);
  });
});
