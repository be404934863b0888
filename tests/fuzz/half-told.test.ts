import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { dropHalfTold, keepHalfTold, readHalfTold } from '../../src/bench/half-told.ts';
import { UNHURRIED, underFire } from './under-fire.ts';

const KEY = 'lugwise-half-told';
const held = new Map<string, string>();
beforeEach(() => {
  held.clear();
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => held.get(name) ?? null,
    setItem: (name: string, text: string) => void held.set(name, text),
    removeItem: (name: string) => void held.delete(name),
  });
});
afterEach(() => vi.unstubAllGlobals());

const places = fc.constantFrom('guitar', 'leads', 'heard/job-1', 'values/job-1', 'together');
const texts = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.json({ maxDepth: 4 }),
  fc.dictionary(places, fc.jsonValue({ maxDepth: 3 })).map((kept) => JSON.stringify(kept)),
  fc
    .tuple(fc.dictionary(places, fc.jsonValue({ maxDepth: 3 })), fc.nat(100))
    .map(([kept, share]) =>
      JSON.stringify(kept).slice(0, (share * JSON.stringify(kept).length) / 100),
    ),
);

describe('what stands in the browser as half told', UNHURRIED, () => {
  it('may be anything: what is told next is kept, and found again until it is dropped', async () => {
    await underFire(
      'half told: any text',
      fc.record({ text: texts, place: places, told: fc.jsonValue({ maxDepth: 3 }) }),
      ({ text, place, told }) => {
        held.set(KEY, text);
        for (const one of ['guitar', place]) readHalfTold(one);
        keepHalfTold(place, told);
        expect(JSON.stringify(readHalfTold(place))).toBe(JSON.stringify(told));
        dropHalfTold(place);
        expect(readHalfTold(place)).toBeUndefined();
      },
      { few: 1000 },
    );
  });
});
