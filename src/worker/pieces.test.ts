import { describe, expect, it } from 'vitest';
import type { Rests } from '../diagnosis/rests.ts';
import { Pieces } from './pieces.ts';

/** Works for `ms` milliseconds by the clock, resting after each; then gives `name`. */
function* busy(name: string, ms: number): Rests<string> {
  for (let at = 0; at < ms; at += 1) {
    for (const until = performance.now() + 1; performance.now() < until; );
    yield;
  }
  return name;
}

describe('work in pieces', () => {
  it('gives what comes of it, and lets others in meanwhile', async () => {
    const waiting: (() => void)[] = [];
    const pieces = new Pieces((act) => void waiting.push(act));
    const doing = pieces.do(busy('done', 40));
    let times = 0;
    for (; waiting.length > 0; times += 1) waiting.shift()?.();
    expect(times).toBeGreaterThan(2);
    expect(times).toBeLessThan(40);
    expect(await doing).toBe('done');
  });

  it('leaves the older for the newer, and what is ended', async () => {
    const pieces = new Pieces();
    const [older, newer] = [pieces.do(busy('older', 30)), pieces.do(busy('newer', 20))];
    expect(await Promise.all([older, newer])).toEqual([null, 'newer']);
    const ended = pieces.do(busy('ended', 20));
    pieces.end();
    expect(await ended).toBe(null);
  });

  it('says what went wrong, and goes on with what comes next', async () => {
    const pieces = new Pieces();
    // biome-ignore lint/correctness/useYield: it fails at once
    const failing = (function* (): Rests<string> {
      throw new Error('it cannot be');
    })();
    await expect(pieces.do(failing)).rejects.toThrow('it cannot be');
    expect(await pieces.do(busy('next', 1))).toBe('next');
  });
});
