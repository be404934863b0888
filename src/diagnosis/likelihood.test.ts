import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { ROOMS } from '../readings/hearing.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';
import { meanOf } from '../readings/rooms.ts';
import { logAnything, logLikelihood } from './likelihood.ts';

const none = Float64Array.from([0.1, 0]);
const score = (...pairs: readonly (readonly [Prediction, Observation | undefined])[]) =>
  logLikelihood(
    pairs.map(([prediction, observation]) => ({
      predictions: [prediction],
      observations: [observation],
    })),
    none,
  );
const beep = (value: number): Prediction => ({ type: 'threshold', ohms: ohms(value) });
const heard = (beeps: boolean): Observation => ({ type: 'threshold', beeps });
const level = (value: number): Prediction => ({
  type: 'level',
  mean: Math.log(value),
  slopes: Float64Array.from([1, 0]),
  noise: 0.004,
  ohms: ohms(value),
});
const shown = (value: number): Observation => ({ type: 'level', value: Math.log(value) });
const over = { type: 'over' } as const;

describe('a beep', () => {
  it('is all but certain over wire and all but impossible over a coil', () => {
    expect(Math.exp(score([beep(0.5), heard(true)]))).toBeGreaterThan(0.95);
    expect(Math.exp(score([beep(7000), heard(true)]))).toBeLessThan(0.05);
  });

  it('and its silence sum to 1, whatever the resistance', () => {
    for (const value of [0.5, 25, 60, 100, 7000])
      expect(
        Math.exp(score([beep(value), heard(true)])) + Math.exp(score([beep(value), heard(false)])),
      ).toBeCloseTo(1, 12);
  });

  it('teaches what this meter does: beeping at 60 ohm, it beeps at 40', () => {
    const alone = score([beep(40), heard(true)]);
    const after =
      score([beep(60), heard(true)], [beep(40), heard(true)]) - score([beep(60), heard(true)]);
    expect(after).toBeGreaterThan(alone + 0.1);
    expect(Math.exp(after)).toBeGreaterThan(0.9);
  });

  it('at 60 ohm and silence at 40 do not go together', () => {
    const both = score([beep(60), heard(true)], [beep(40), heard(false)]);
    expect(both).toBeLessThan(score([beep(60), heard(true)]) + score([beep(40), heard(false)]) - 1);
  });
});

describe('a sign whose start is unknown', () => {
  const tap = (plus: number): Prediction => ({
    type: 'choice',
    chances: { plus, minus: 0.96 - plus, nothing: 0.04 },
    mirrored: { plus: 0.96 - plus, minus: plus, nothing: 0.04 },
    latent: 'tap',
  });
  const swing = (word: string): Observation => ({ type: 'choice', word });

  it('says nothing the first time', () => {
    expect(score([tap(0.93), swing('plus')])).toBeCloseTo(score([tap(0.93), swing('minus')]), 12);
    expect(score([tap(0.93), swing('plus')])).toBeCloseTo(score([tap(0.03), swing('plus')]), 12);
  });

  it('counts once a second one agrees or not', () => {
    const agree = score([tap(0.93), swing('plus')], [tap(0.93), swing('plus')]);
    const against = score([tap(0.93), swing('plus')], [tap(0.93), swing('minus')]);
    expect(agree - against).toBeGreaterThan(2);
    expect(score([tap(0.93), swing('minus')], [tap(0.93), swing('minus')])).toBeCloseTo(agree, 12);
    // (0.93^2 + 0.03^2) / 2 by hand.
    expect(agree).toBeCloseTo(Math.log((0.93 ** 2 + 0.03 ** 2) / 2), 12);
  });

  it('of taps tells nothing of poles', () => {
    const pole = { ...tap(0.93), latent: 'pole' } as Prediction;
    expect(score([tap(0.93), swing('plus')], [pole, swing('minus')])).toBeCloseTo(
      score([tap(0.93), swing('plus')]) + score([pole, swing('minus')]),
      12,
    );
  });
});

describe('over-range', () => {
  it('is expected where it is foretold, and rare where a figure is', () => {
    expect(Math.exp(score([over, over]))).toBeGreaterThan(0.9);
    expect(Math.exp(score([level(7000), over]))).toBeLessThan(0.05);
  });

  it('may show megohms of fingers, far less likely kilohms', () => {
    expect(score([over, shown(2e6)])).toBeGreaterThan(score([over, shown(7000)]) + 2);
  });
});

describe('a figure', () => {
  it('is likeliest where it is foretold and falls off on both sides', () => {
    const at = (value: number) => score([level(7000), shown(value)]);
    expect(at(7000)).toBeGreaterThan(at(7700));
    expect(at(7700)).toBeGreaterThan(at(12_000));
    expect(at(7000)).toBeGreaterThan(at(6300));
  });

  it('of 7 for 7 k is taken for a slip before it is taken for anything else', () => {
    expect(score([level(7000), shown(7)])).toBeGreaterThan(score([level(7000), shown(30)]) + 0.5);
  });

  // A body of 0.6 megohm beside 257 kohm shows 175 kohm; beside 700 ohm it shows 699 (parallel resistors, textbook).
  it('of hundreds of kilohms too low by a body beside it is taken for fingers, never one too high', () => {
    const at = (value: number) => score([level(257_000), shown(value)]);
    const byFingers = 1 / (1 / 257_000 + 1 / 600_000);
    expect(at(byFingers)).toBeGreaterThan(at(257_000 ** 2 / byFingers) + 1);
    const low = (value: number) => score([level(700), shown(value)]);
    expect(low(700 * (byFingers / 257_000))).toBeCloseTo(low(257_000 * (700 / byFingers)), 6);
  });

  it('of megohms is a density: over the range it sums to 1', () => {
    let sum = 0;
    for (let y = Math.log(0.01); y < Math.log(1e11); y += 0.01)
      sum += 0.01 * Math.exp(score([level(1e6), { type: 'level', value: y }]));
    // A slip anywhere is spread over 18 nats; this sum goes over 30, a third of SLIP more.
    expect(sum).toBeCloseTo(1 + (0.03 / 2) * ((Math.log(1e11) - Math.log(0.01)) / 18 - 1), 2);
  });

  it('that was not entered says nothing', () => {
    expect(score([level(7000), undefined])).toBeCloseTo(0, 12);
  });
});

describe('something else', () => {
  it('finds every figure alike, and a usual word no evidence', () => {
    const of = (observation: Observation, usual: number) =>
      logAnything([{ predictions: [level(7000)], observations: [observation] }], () => usual);
    expect(of(shown(7000), 0.5)).toBe(of(shown(3e5), 0.5));
    expect(of({ type: 'choice', word: 'normal' }, 0.9)).toBeGreaterThan(
      of({ type: 'choice', word: 'crackle' }, 0.02),
    );
  });

  it('is a density: figures over the range and over-range sum to 1', () => {
    const figure = Math.exp(
      logAnything([{ predictions: [], observations: [shown(7000)] }], () => 1),
    );
    const endless = Math.exp(logAnything([{ predictions: [], observations: [over] }], () => 1));
    expect(18 * figure + endless).toBeCloseTo(1, 12);
  });
});

describe('what is heard in one room', () => {
  /** Heard in a third of the rooms, and hardly in the others. */
  const rooms = ROOMS.map((_, at) =>
    at % 3 === 0 ? { hum: 0.9, normal: 0.1 } : { hum: 0.1, normal: 0.9 },
  );
  const sound: Prediction = { type: 'choice', chances: meanOf(rooms), rooms };
  const word = (name: string): Observation => ({ type: 'choice', word: name });

  it('comes with the chance of its words, once', () => {
    expect(Math.exp(score([sound, word('hum')]))).toBeCloseTo((0.9 + 0.1 + 0.1) / 3, 12);
  });

  it('goes together: hum in five positions is little more than hum in one', () => {
    const five = score(...Array.from({ length: 5 }, () => [sound, word('hum')] as const));
    // By hand: a third of the rooms hum in each position with 0.9, the others with 0.1.
    expect(Math.exp(five)).toBeCloseTo((0.9 ** 5 + 2 * 0.1 ** 5) / 3, 12);
    expect(five).toBeGreaterThan(5 * score([sound, word('hum')]) + 3);
  });

  it('does not go together: hum in one position and none in the other tells against it', () => {
    const both = score([sound, word('hum')], [sound, word('normal')]);
    expect(both).toBeLessThan(score([sound, word('hum')]) + score([sound, word('normal')]));
  });
});
