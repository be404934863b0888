import { describe, expect, it } from 'vitest';
import { leaks, resistances } from './sizes.ts';

describe('sizes of a fault', () => {
  it('of a bad joint go from a few ohm to megohms in half decades, each blurred to meet the next', () => {
    const list = resistances('hot@to', 0.7);
    const sizes = list.map(({ edits: [edit] }) => (edit?.op === 'resist' ? edit.ohms : Number.NaN));
    expect(sizes[0]).toBe(5);
    expect(sizes.at(-1)).toBeGreaterThan(1e6);
    sizes.slice(1).forEach((size, at) => {
      const step = Math.log(size / sizes[at]!);
      expect(step).toBeCloseTo(Math.log(10) / 2, 9);
      // Two deviations of one and two of the next overlap.
      expect(2 * list[at]!.loose!.deviation + 2 * list[at + 1]!.loose!.deviation).toBeGreaterThan(
        step,
      );
    });
    expect(list.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(0.7, 12);
  });

  it('leave out what is too small to be noticed', () => {
    const sizes = resistances('volume:wiper', 1, 1e3).map(({ edits: [edit] }) =>
      edit?.op === 'resist' ? edit.ohms : 0,
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(1e3);
  });

  it('of a bridge are a solid one with its share, and decades that share the rest', () => {
    const list = leaks('jack.tip', 'jack.sleeve', 0.75);
    const solid = list.filter(({ edits: [edit] }) => edit?.op === 'bridge' && edit.ohms < 1);
    expect(solid.map(({ share }) => share)).toEqual([0.75]);
    expect(list.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
  });
});
