import { describe, expect, it } from 'vitest';
import { isEndgame, type Play, playedOut, secondsWith } from './play-out.ts';

/** Four suspects of the same weight, each with a repair of its own. */
const four = (asks: readonly (readonly number[])[], cost: Play['cost']): Play => ({
  suspects: [0, 1, 2, 3].map((at) => ({
    weight: 1,
    group: at,
    seen: asks.map((seen) => seen[at] as number),
  })),
  asks: asks.length,
  cost,
});
const halves = [0, 0, 1, 1];
const others = [0, 1, 0, 1];

describe('a hunt played to its end', () => {
  it('takes as many acts as there are to take, by hand: two halvings, each at its own cost', () => {
    const play = four([halves, others], (_, ask) => (ask === 0 ? 10 : 25));
    expect(secondsWith(play, 0, -1)).toBeCloseTo(35, 9);
    expect(secondsWith(play, 1, -1)).toBeCloseTo(35, 9);
  });

  it('counts what it costs to get from one act to the next', () => {
    // The second act is dear after the first, and cheap the other way round.
    const play = four([halves, others], (last, ask) => (last < 0 ? 10 : ask === 0 ? 5 : 50));
    expect(secondsWith(play, 0, -1)).toBeCloseTo(60, 9);
    expect(secondsWith(play, 1, -1)).toBeCloseTo(15, 9);
  });

  it('stops where one repair is left, and where no act parts what is left', () => {
    const alike: Play = {
      suspects: [
        { weight: 3, group: 0, seen: [0, 0] },
        { weight: 1, group: 0, seen: [0, 1] },
        { weight: 2, group: 1, seen: [1, 0] },
        { weight: 2, group: 2, seen: [1, 0] },
      ],
      asks: 2,
      cost: () => 10,
    };
    expect(secondsWith(alike, 0, -1)).toBe(10);
    // Weighted by shares: one in eight stands alone after the second act, the rest needs the first as well.
    expect(secondsWith(alike, 1, -1)).toBeCloseTo(10 + (7 / 8) * 10, 9);
  });

  it('is played where few answers hold nearly all of the belief', () => {
    expect(isEndgame([0.5, 0.3, 0.2])).toBe(true);
    const many = [...Array<number>(9).fill(0.105), ...Array<number>(20).fill(0.00275)];
    expect(isEndgame(many)).toBe(false);
    expect(isEndgame(Array<number>(30).fill(1 / 30))).toBe(false);
  });

  it('puts what is nearly alike in the order of the whole hunt, and leaves the rest as it ranks', () => {
    const ranked = [1, 0.9, 0.8, 0.6, 0.1].map((rank, at) => ({ at, rank }));
    const seconds = [30, 10, 20, 0, 0];
    const order = playedOut(ranked, ({ at }) => seconds[at] as number).map(({ at }) => at);
    expect(order).toEqual([1, 2, 0, 3, 4]);
    expect(playedOut(ranked.slice(3), () => 0)).toEqual(ranked.slice(3));
    expect(playedOut([], () => 0)).toEqual([]);
  });
});
