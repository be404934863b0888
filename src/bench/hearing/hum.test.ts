import { describe, expect, it } from 'vitest';
import {
  humming,
  humShape,
  mixed,
  sampleRate,
  speechShapedNoise,
} from '../../../tests/hearing/sounds.ts';
import { Dice } from '../../../tests/simulated/dice.ts';
import { type Hum, type Mains, powerAt } from './hum.ts';
import { type HumHeard, humEar, humSeconds } from './hum-ear.ts';

/** One position, listened to as the phone does: in blocks of 128, at its own rate. */
function measured(sound: Float32Array, mains: Mains | null): HumHeard {
  const ear = humEar(sampleRate, mains);
  ear.measure();
  for (let from = 0; from < sound.length; from += 128) {
    const heard = ear.push(sound.subarray(from, from + 128));
    if (heard?.measured) return heard;
  }
  throw new Error('The ear came to no figure.');
}

/** Talk is dear to make: one stretch of it, from which every run hears another piece. */
const talks = speechShapedNoise(14, new Dice('talk'), true);
const talkOf = (rms: number, dice: Dice): Float32Array => {
  const length = Math.ceil((humSeconds + 0.1) * sampleRate);
  const from = Math.floor(dice.between(0, talks.length - length));
  return talks.slice(from, from + length).map((x) => rms * x);
};

const decibels = (ratio: number): number => 10 * Math.log10(ratio);

describe('the power of a sine', () => {
  it('is that of the discrete Fourier transform, where the frequency is one of its own', () => {
    // Textbook: an impulse has |X| = 1 everywhere; a sine of k whole periods has |X| = N/2 at k and 0 elsewhere.
    const impulse = Float64Array.of(1, 0, 0, 0, 0, 0, 0, 0);
    for (const k of [0, 1, 2, 3]) expect(powerAt(impulse, 1, k / 8)).toBeCloseTo(2, 12);
    const sine = Float64Array.from(
      { length: 64 },
      (_, i) => 3 * Math.sin((2 * Math.PI * 5 * i) / 64),
    );
    expect(powerAt(sine, 64, 5 / 64)).toBeCloseTo(4.5, 10);
    for (const k of [1, 4, 6, 20]) expect(powerAt(sine, 64, k / 64)).toBeCloseTo(0, 10);
  });

  it('is the same by the sum written out, at any frequency', () => {
    const dice = new Dice('any frequency');
    const samples = Float64Array.from({ length: 500 }, () => dice.normal());
    for (const cycles of [0.0131, 0.2, 0.4567]) {
      let [re, im] = [0, 0];
      samples.forEach((x, i) => {
        re += x * Math.cos(2 * Math.PI * cycles * i);
        im -= x * Math.sin(2 * Math.PI * cycles * i);
      });
      expect(powerAt(samples, 500, cycles)).toBeCloseTo((2 * (re * re + im * im)) / 500 ** 2, 10);
    }
  });
});

describe('hum', () => {
  it.each([
    [50, 49.83],
    [50, 50.2],
    [60, 60.05],
    [60, 59.7],
  ] as const)('of %i Hz mains at %f Hz is found with its harmonics', (mains, hertz) => {
    const dice = new Dice(`found ${hertz}`);
    const { hum: found, cut } = measured(
      humming(humSeconds + 0.1, hertz, dice).map((x) => 0.1 * x),
      null,
    );
    expect(found.mains).toBe(mains);
    expect(found.hertz).toBeCloseTo(hertz, 1);
    expect(found.clear).toBe(true);
    expect(cut).toBe(false);
    expect(Math.abs(decibels(found.power) + 20)).toBeLessThan(0.3);
    const whole = humShape.reduce((sum, gain) => sum + gain ** 2, 0);
    found.harmonics.forEach((power, k) => {
      expect(decibels(power / 0.01)).toBeCloseTo(decibels((humShape[k] as number) ** 2 / whole), 0);
    });
  });

  it('is not found in speech, and one that is chosen is not taken for the other', () => {
    const dice = new Dice('no hum');
    for (let run = 0; run < 5; run++)
      expect(measured(talkOf(0.05, dice), null).hum.clear).toBe(false);
    const sixty = humming(humSeconds + 0.1, 60, dice);
    const fifty = measured(mixed(sixty, 0.05, talkOf(0.05, dice)), 50).hum;
    // 300 Hz is in both: the sixth of 50 and the fifth of 60.
    expect(fifty.mains).toBe(50);
    expect(Math.max(...fifty.harmonics.filter((_, k) => k !== 5))).toBeLessThan(
      0.1 * (fifty.harmonics[5] as number),
    );
  });

  it('too loud for the microphone is said so', () => {
    const dice = new Dice('cut');
    const loud = humming(humSeconds + 0.1, 50, dice).map((x) => Math.max(-1, Math.min(1, x)));
    expect(measured(loud, null).cut).toBe(true);
  });

  /** What this ear promises: a difference of levels as far off as this, decibels, root mean square and at worst. */
  it.each([
    ['as loud as the louder position', 0, 0.5, 1.2],
    ['10 dB louder than the louder position', 10, 1.2, 3],
  ] as const)('a difference of N dB is found under talk %s', (_, talk, usual, worst) => {
    const errors: number[] = [];
    for (const [run, difference] of [0, 3, 6, 9, 12, 12].entries()) {
      const dice = new Dice(`difference ${talk} ${run}`);
      const hertz = dice.pick([50, 60]) + dice.between(-0.2, 0.2);
      const [here, there] = [0, -difference].map((level) => {
        const sound = humming(humSeconds + 0.1, hertz, dice);
        const noise = talkOf(0.03 * 10 ** (talk / 20), dice);
        return measured(mixed(sound, 0.03 * 10 ** (level / 20), noise), null).hum;
      }) as [Hum, Hum];
      errors.push(decibels(here.power / there.power) - difference);
    }
    const rms = Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);
    expect(rms).toBeLessThan(usual);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(worst);
  });
});
