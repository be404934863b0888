import { describe, expect, it } from 'vitest';
import type { Edit } from '../circuit/edit.ts';
import { farads, ohms } from '../circuit/units.ts';
import { Guitar } from './guitar.fixture.ts';
import { observe, seenText } from './index.ts';

const two = new Guitar('two-singles-three-position');
const predicted = (edits: readonly Edit[] = []) => {
  const [word, level] = two.predict(
    {
      kind: 'farads',
      part: 'toneCap',
      red: 'capHotLeg@to',
      black: 'capGroundLeg@to',
      setting: { ...two.at(), lifted: ['capHotLeg@to'] },
    },
    edits,
  );
  if (word?.type !== 'choice' || level?.type !== 'level')
    throw new Error('expected word and level');
  const [best] = Object.entries(word.chances).sort((x, y) => y[1] - x[1])[0]!;
  expect(Object.values(word.chances).reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
  return {
    word: best,
    chances: word.chances,
    nanofarad: Math.exp(level.mean) / 1000,
    noise: level.noise,
  };
};

describe('capacitance of a lifted part', () => {
  it('is its value within its tolerance (two deviations) and the meter', () => {
    const { word, nanofarad, noise } = predicted();
    expect(word).toBe('value');
    expect(nanofarad).toBeCloseTo(47, 9);
    expect(noise).toBeCloseTo(Math.hypot(0.05, 0.03), 12);
  });

  it('of one ten times too large is ten times as much', () => {
    expect(predicted([{ op: 'scale', part: 'toneCap', factor: 10 }]).nanofarad).toBeCloseTo(470, 9);
  });

  it.each<[string, readonly Edit[]]>([
    ['open', [{ op: 'open', site: 'toneCap:body' }]],
    ['short', [{ op: 'bridge', a: 'toneCap.a', b: 'toneCap.b', ohms: ohms(1) }]],
    ['short', [{ op: 'bridge', a: 'toneCap.b', b: 'toneCap.a', ohms: ohms(1) }]],
    ['value', [{ op: 'bridge', a: 'volume.1', b: 'volume.2', ohms: ohms(1) }]],
    ['value', [{ op: 'open', site: 'capHotLeg@to' }]],
  ])('%s: %j', (word, edits) => {
    expect(predicted(edits).word).toBe(word);
  });

  it('with a leak beside it is what the meter makes of it: nobody knows which sort this one is', () => {
    const leaking = (value: number) =>
      predicted([{ op: 'bridge', a: 'toneCap.a', b: 'toneCap.b', ohms: ohms(value) }]).chances;
    for (const value of [3e3, 30e3, 300e3]) {
      expect(leaking(value)['value']).toBeGreaterThan(0.3);
      expect(leaking(value)['short']).toBeGreaterThan(0.3);
    }
    expect(leaking(5e6)).toEqual(predicted().chances);
  });

  it('is entered as picofarad in logarithms, or as a word', () => {
    expect(observe({ kind: 'farads', farads: farads(22e-9) })).toEqual([
      { type: 'choice', word: 'value' },
      { type: 'level', value: expect.closeTo(Math.log(22e3), 12) },
    ]);
    expect(observe({ kind: 'farads', farads: 'short' })).toEqual([
      { type: 'choice', word: 'short' },
      undefined,
    ]);
    expect(seenText({ kind: 'farads', farads: farads(22e-9) })).toBe('22.0 nF');
  });
});
