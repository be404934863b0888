import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { entropyOf, expectedEdges, expectedEntropy, type Foreseen } from './worth.ts';

const h = (weights: readonly number[]) => {
  const total = weights.reduce((sum, x) => sum + x, 0);
  return -weights
    .filter((x) => x > 0)
    .reduce((sum, x) => sum + (x / total) * Math.log(x / total), 0);
};
const word = (chances: Record<string, number>) =>
  ({ prediction: { type: 'choice', chances }, shift: 0, variance: 0 }) as const;
const level = (mean: number, deviation: number, shift = 0) =>
  ({
    prediction: {
      type: 'level',
      mean,
      slopes: new Float64Array(1),
      noise: 0,
      ohms: ohms(Math.exp(mean)),
    },
    shift,
    variance: deviation ** 2,
  }) as const;
const over = { prediction: { type: 'over' }, shift: 0, variance: 0 } as const;
const massOf = (list: readonly Foreseen[], groups: number) => {
  const mass = Array<number>(groups).fill(0);
  for (const { weight, group } of list) mass[group]! += weight;
  return mass;
};

/** Expected entropy of discrete answers, straight from the definition: sum over answers of P(answer) H(group | answer). */
function byDefinition(
  answers: readonly { weight: number; group: number; chances: Record<string, number> }[],
  groups: number,
): number {
  const words = new Set(answers.flatMap(({ chances }) => Object.keys(chances)));
  let total = 0;
  for (const answer of words) {
    const mass = Array<number>(groups).fill(0);
    for (const { weight, group, chances } of answers)
      mass[group]! += weight * (chances[answer] ?? 0);
    const sum = mass.reduce((x, y) => x + y, 0);
    if (sum > 0) total += sum * h(mass);
  }
  return total / answers.reduce((sum, { weight }) => sum + weight, 0);
}

const share = fc.double({ min: 0.01, max: 1, noNaN: true });
const answers = fc.array(
  fc.record({
    weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
    group: fc.integer({ min: 0, max: 2 }),
    chances: fc
      .tuple(share, share, share)
      .map(([a, b, c]) => ({ a: a / (a + b + c), b: b / (a + b + c), c: c / (a + b + c) })),
  }),
  { minLength: 1, maxLength: 6 },
);

describe('expected entropy', () => {
  it('of words is that of the definition', () => {
    fc.assert(
      fc.property(answers, (list) => {
        const foreseen = list.map(({ weight, group, chances }) => ({
          weight,
          group,
          parts: [word(chances)],
        }));
        expect(expectedEntropy(foreseen, 3)).toBeCloseTo(byDefinition(list, 3), 10);
      }),
      { numRuns: 100, seed: 1 },
    );
  });

  it('of two words at once is that of their pairs', () => {
    fc.assert(
      fc.property(answers, answers, (first, second) => {
        const count = Math.min(first.length, second.length);
        const list = first
          .slice(0, count)
          .map((one, at) => ({ ...one, other: second[at]!.chances }));
        const pairs = list.map(({ weight, group, chances, other }) => ({
          weight,
          group,
          chances: Object.fromEntries(
            Object.entries(chances).flatMap(([x, p]) =>
              Object.entries(other).map(([y, q]) => [`${x}${y}`, p * q]),
            ),
          ),
        }));
        const foreseen = list.map(({ weight, group, chances, other }) => ({
          weight,
          group,
          parts: [word(chances), word(other)],
        }));
        expect(expectedEntropy(foreseen, 3)).toBeCloseTo(byDefinition(pairs, 3), 10);
      }),
      { numRuns: 50, seed: 2 },
    );
  });

  it('never exceeds the entropy before (a reading cannot hurt on average)', () => {
    fc.assert(
      fc.property(
        answers,
        fc.array(fc.double({ min: 0, max: 14, noNaN: true }), { minLength: 6, maxLength: 6 }),
        (list, means) => {
          const foreseen = list.map(({ weight, group }, at) => ({
            weight,
            group,
            parts: [level(means[at]!, 0.1)],
          }));
          expect(expectedEntropy(foreseen, 3)).toBeLessThanOrEqual(
            entropyOf(massOf(foreseen, 3)) + 1e-9,
          );
        },
      ),
      { numRuns: 100, seed: 3 },
    );
  });

  it('stays as it was where all foresee the same', () => {
    const list = [0.5, 0.3, 0.2].map((weight, group) => ({
      weight,
      group,
      parts: [level(9, 0.05)],
    }));
    expect(expectedEntropy(list, 3)).toBeCloseTo(h([0.5, 0.3, 0.2]), 9);
  });

  it('falls to nothing where a figure, over-range and a beep tell all apart', () => {
    const far = [level(0, 0.05), level(9, 0.05), over].map((part, group) => ({
      weight: 1 / 3,
      group,
      parts: [part],
    }));
    expect(expectedEntropy(far, 3)).toBeCloseTo(0, 6);
  });

  it.each([0.15, 0.3, 0.6, 1.2])(
    'of two figures %d nat apart with 0.2 of spread is near the integral of the definition',
    (gap) => {
      const list = [
        { weight: 0.6, group: 0, parts: [level(8, 0.2)] },
        { weight: 0.4, group: 1, parts: [level(8, 0.2, gap)] },
      ];
      let integral = 0;
      const density = (x: number, mean: number) =>
        Math.exp(-0.5 * ((x - mean) / 0.2) ** 2) / (0.2 * Math.sqrt(2 * Math.PI));
      for (let x = 5; x < 12; x += 0.001) {
        const [p, q] = [0.6 * density(x, 8), 0.4 * density(x, 8 + gap)];
        if (p + q > 0) integral += (p + q) * h([p, q]) * 0.001;
      }
      expect(Math.abs(expectedEntropy(list, 2) - integral)).toBeLessThan(0.015);
    },
  );

  it('falls to nothing for figures five of their deviations apart', () => {
    const list = [level(8, 0.02), level(8.1, 0.02)].map((part, group) => ({
      weight: 0.5,
      group,
      parts: [part],
    }));
    expect(expectedEntropy(list, 2)).toBeLessThan(0.02);
  });

  it('of a beep knows that thresholds of meters differ', () => {
    const beep = (value: number, group: number) => ({
      weight: 0.5,
      group,
      parts: [
        { prediction: { type: 'threshold', ohms: ohms(value) }, shift: 0, variance: 0 } as const,
      ],
    });
    const told = (x: number, y: number) => Math.LN2 - expectedEntropy([beep(x, 0), beep(y, 1)], 2);
    expect(told(0.3, 7000)).toBeGreaterThan(0.68);
    expect(told(40, 70)).toBeLessThan(0.1);
    expect(told(7000, 8000)).toBeLessThan(1e-4);
  });
});

describe('entropy', () => {
  it('is that of the definition, whatever the weights sum to', () => {
    expect(entropyOf([1, 1, 1, 1])).toBeCloseTo(Math.log(4), 12);
    expect(entropyOf([5, 0, 0])).toBeCloseTo(0, 12);
    expect(entropyOf([])).toBe(0);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.001, max: 10, noNaN: true }), { minLength: 1 }),
        (list) => {
          expect(entropyOf(list)).toBeCloseTo(h(list), 9);
        },
      ),
      { numRuns: 100, seed: 5 },
    );
  });
});

describe('expected edges', () => {
  it('are none after a reading that parts all answers, and as before after one that parts none', () => {
    const part = (weight: number, group: number, answer: string): Foreseen => ({
      weight,
      group,
      parts: [word({ [answer]: 1 })],
    });
    expect(expectedEdges([part(0.5, 0, 'x'), part(0.5, 1, 'y')], 2)).toBe(0);
    // Two guitars drawn at random differ in one of two cases: 1 - 1/4 - 1/4.
    expect(expectedEdges([part(0.5, 0, 'x'), part(0.5, 1, 'x')], 2)).toBeCloseTo(0.5, 12);
    expect(
      expectedEdges([part(0.25, 0, 'x'), part(0.25, 1, 'x'), part(0.5, 2, 'y')], 3),
    ).toBeCloseTo(0.25, 12);
  });
});
