import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { switchSettings } from '../circuit/setting.ts';
import { ohms } from '../circuit/units.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import { assess } from './assess.ts';
import { agreement, clarity, hasSign } from './first-sign.ts';

const tap = (plus: number, minus: number): Prediction => ({
  type: 'choice',
  chances: { plus, minus, nothing: 1 - plus - minus },
});

describe('two signs together', () => {
  it('agree or differ by the same chances, whichever sign the guitar starts from', () => {
    const one = agreement(tap(0.9, 0.05), tap(0.8, 0.1));
    const other = agreement(tap(0.05, 0.9), tap(0.1, 0.8));
    expect(one).toMatchObject({
      chances: { agree: expect.closeTo(0.725, 12), differ: expect.closeTo(0.13, 12) },
    });
    if (one.type !== 'choice' || other.type !== 'choice') throw new Error('no words');
    for (const [word, chance] of Object.entries(one.chances))
      expect(other.chances[word]).toBeCloseTo(chance, 12);
    expect(Object.values(one.chances).reduce((sum, x) => sum + x, 0)).toBeCloseTo(1, 12);
  });

  it('tell which of the two shows none', () => {
    expect(agreement(tap(0, 0), tap(1, 0))).toMatchObject({ chances: { 'none|sign': 1 } });
    expect(clarity(tap(0.9, 0.05))).toBeCloseTo(0.95, 12);
  });
});

describe('a sign that has not shown', () => {
  const swings = (swing: 'plus' | 'nothing') => [
    { seen: { kind: 'tap', swing } } as unknown as Reading,
  ];
  it('leaves the next one the first', () => {
    expect(hasSign(swings('plus'), 'tap')).toBe(true);
    expect(hasSign(swings('plus'), 'pole')).toBe(false);
    expect(hasSign(swings('nothing'), 'tap')).toBe(false);
  });
});

// Ohms never show phase: what parts a pickup that is the wrong way round from the rest is a pair of taps (common practice, no source).
describe('two pickups that sound well alone and thin together', () => {
  it.each([
    'two-singles-three-position',
    'two-humbuckers-four-knobs',
    'two-wide-singles-four-knobs',
  ])('%s: steel is laid on one of them first', (id) => {
    const circuit = startingWirings.find((one) => one.id === id)!.build();
    const readings = switchSettings(circuit).map((setting, at): Reading => {
      const heard = setting.positions['selector'] === 'both' ? 'thin' : 'normal';
      return {
        id: `r${at}`,
        ask: { kind: 'listen', setting: { ...setting, plug: 'in' } },
        seen: { kind: 'listen', heard },
        at: '',
        round: 0,
      };
    });
    const { next, suspects } = assess({
      circuit,
      meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
      access: 'closed',
      readings,
      refused: [],
      repairs: [],
    });
    expect(next[0]?.ask.kind).toBe('tap');
    expect(suspects[0]?.repair).toMatch(/^turn:.* or /);
  });
});
