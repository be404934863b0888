import { describe, expect, it } from 'vitest';
import type { Ask, Reading } from '../readings/reading.ts';
import { assess } from './assess.ts';
import { Bench } from './evidence.fixture.ts';
import { mixed, signsOf } from './known-signs.ts';

const bench = new Bench('two-humbuckers-shared-controls');
const swung = (coil: string, swing: 'plus' | 'minus'): Reading => {
  const ask: Ask = {
    kind: 'tap',
    coil,
    red: 'jack.tip',
    black: 'jack.sleeve',
    setting: bench.at('both'),
  };
  return bench.reading(ask, { kind: 'tap', swing });
};
const signs = (id: string, readings: readonly Reading[]) =>
  signsOf(bench.predictor, { hypothesis: bench.hypothesis(id), probability: 1 }, readings);
/** Two coils of one pickup against each other: which of them is the wrong one is still open. */
const against = [swung('neckScrew', 'plus'), swung('neckSlug', 'minus')];

describe('from which sign a guitar starts', () => {
  it('is open before the first swing', () => {
    expect(signs('coil-reversed:neckScrew', [])).toEqual({ tap: 0.5, pole: 0.5 });
  });

  it('is another one for each of two coils that may be the wrong one', () => {
    const [screw, slug] = ['neckScrew', 'neckSlug'].map(
      (coil) => signs(`coil-reversed:${coil}`, against).tap,
    ) as [number, number];
    expect(Math.min(screw, slug)).toBeLessThan(0.01);
    expect(Math.max(screw, slug)).toBeGreaterThan(0.99);
  });

  it('says nothing of the poles, which have their own', () => {
    expect(signs('coil-reversed:neckScrew', against).pole).toBe(0.5);
  });

  it('turns the chances of the next swing round', () => {
    const stated = {
      type: 'choice',
      chances: { plus: 0.9, minus: 0.1 },
      mirrored: { plus: 0.1, minus: 0.9 },
      latent: 'tap',
    } as const;
    expect(mixed(stated, { tap: 0, pole: 1 })).toEqual({
      type: 'choice',
      chances: stated.mirrored,
    });
    expect(mixed(stated, { tap: 1, pole: 0 })).toEqual({ type: 'choice', chances: stated.chances });
  });
});

// Which of two coils is the wrong one a coil of the other pickup tells (common practice, no source).
describe('two coils of a pickup that swing against each other', () => {
  it('have a coil of the other pickup asked next', () => {
    const heard = (position: string, word: 'normal' | 'thin' | 'weak') =>
      bench.reading(
        { kind: 'listen', setting: { ...bench.at(position), plug: 'in' } },
        { kind: 'listen', heard: word },
      );
    const { next } = assess(
      bench.evidence([
        heard('neck', 'thin'),
        heard('both', 'weak'),
        heard('bridge', 'normal'),
        bench.true([], bench.at('neck')),
        ...against,
      ]),
    );
    expect(next[0]?.ask).toMatchObject({
      kind: 'tap',
      coil: expect.stringMatching(/^bridge/),
    });
  });
});
