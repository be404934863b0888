import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonSpot } from './json-spot.ts';

describe('where a text stops being JSON', () => {
  it.each([
    ['{"a": }', 1, 7],
    ['{"a": 1,\n "b" 2}', 2, 6],
    ['{"a": 1,}', 1, 9],
    ['[1, 2', 1, 6],
    ['[1 2]', 1, 4],
    ['{"a": [1, 2}', 1, 12],
    ['{a: 1}', 1, 2],
    ['{"a": "b\nc"}', 1, 7],
    ['{} {}', 1, 4],
    ['[01]', 1, 2],
    ["{'a': 1}", 1, 2],
    ['{"a": NaN}', 1, 7],
    ['[1,\n\n  tru]', 3, 3],
  ])('%j: line %d, character %d', (text, line, character) => {
    expect(() => JSON.parse(text)).toThrow(SyntaxError);
    expect(jsonSpot(text)).toEqual({ line, character });
  });

  it('lets JSON that the platform writes pass to its end, and stops no later than where it was cut', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), (text, cut) => {
        const end = jsonSpot(text);
        expect(end.character).toBe(text.length + 1);
        const at = cut % (text.length + 1);
        expect(jsonSpot(`${text.slice(0, at)}\u0001`).character).toBeLessThanOrEqual(at + 1);
      }),
    );
  });
});
