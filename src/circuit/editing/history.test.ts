import { expect, it } from 'vitest';
import { begun, did, type History, presentOf, redid, replayed, undid } from './history.ts';

const add = (sum: number, by: number): number => {
  if (by === 0) throw new Error('nothing to add');
  return sum + by;
};
const of = (...acts: readonly number[]): History<number, number> =>
  acts.reduce((history, act) => did(history, act, add), begun<number, number>(1));

it('goes back to the start and forward to the end', () => {
  const acts = [2, 3, 5, 7];
  let history = of(...acts);
  for (const present of [18, 11, 6, 3, 1, 1]) {
    expect(presentOf(history)).toBe(present);
    history = undid(history);
  }
  for (const present of [3, 6, 11, 18, 18]) {
    history = redid(history, add);
    expect(presentOf(history)).toBe(present);
  }
  expect(history).toEqual(of(...acts));
});

it('forgets what was taken back once something else is done', () => {
  const history = did(undid(of(2, 3)), 10, add);
  expect(presentOf(history)).toBe(13);
  expect(redid(history, add)).toBe(history);
});

it('stays as it was where an act is refused', () => {
  const history = of(2);
  expect(() => did(history, 0, add)).toThrow('nothing to add');
  expect(history).toEqual(of(2));
});

it('comes back from what was stored of it', () => {
  const { start, done, undone } = undid(of(2, 3, 5));
  expect(replayed(start, done, undone, add)).toEqual(undid(of(2, 3, 5)));
  expect(() => replayed(start, [0], [], add)).toThrow('nothing to add');
});
