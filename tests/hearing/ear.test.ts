import { describe, expect, it } from 'vitest';
import { toneLearner } from '../../src/bench/hearing/learn-tone.ts';
import type { Tone } from '../../src/bench/hearing/tone.ts';
import { type ToneChange, toneEar } from '../../src/bench/hearing/tone-ear.ts';
import { Dice } from '../simulated/dice.ts';
import { levelled, sampleRate } from './sounds.ts';
import { conditions, judge, learning, streamOf, surroundingsOf } from './trials.ts';

const block = 128;

function blocks(sound: Float32Array): Float32Array[] {
  return Array.from({ length: Math.ceil(sound.length / block) }, (_, i) =>
    sound.subarray(i * block, (i + 1) * block),
  );
}

function learn(sound: Float32Array): Tone {
  const learner = toneLearner(sampleRate);
  for (const one of blocks(sound.subarray(0, learning * sampleRate))) {
    const tone = learner(one);
    if (tone) return tone;
  }
  throw new Error('No tone was learned.');
}

function hear(tone: Tone, sound: Float32Array): ToneChange[] {
  const ear = toneEar(tone, sampleRate);
  return blocks(sound).flatMap((one) => ear(one));
}

describe('the ear for a meter', () => {
  it.each(conditions)('$surroundings at $decibels dB, beeps of $beep s', (condition) => {
    const stream = streamOf(condition, 'ear test', 8);
    const tone = learn(stream.sound);
    expect(Math.abs(tone.hertz - stream.hertz)).toBeLessThan(5);
    const tally = judge(stream, hear(tone, stream.sound));
    expect(tally.false).toBe(0);
    if (condition.decibels >= 10) expect(tally.right).toBe(tally.asked);
  });

  it.each(['speech-shaped noise', 'noise that rises and falls', 'music', 'clicks'] as const)(
    'hears no beep in twenty seconds of %s as loud as the meter',
    (surroundings) => {
      const dice = new Dice(`no beep ${surroundings}`);
      const sound = levelled(surroundingsOf(surroundings, 20, dice), 0.1);
      for (const hertz of [1800, 2350, 2700, 3200, 4100, 4500])
        expect(hear({ hertz, power: 0.01 }, sound)).toEqual([]);
    },
  );

  it('learns nothing from speech, music or silence', () => {
    for (const surroundings of ['noise that rises and falls', 'music'] as const) {
      const sound = levelled(surroundingsOf(surroundings, 10, new Dice('nothing')), 0.1);
      const learner = toneLearner(sampleRate);
      expect(
        blocks(sound)
          .map((one) => learner(one))
          .at(-1),
      ).toBeNull();
    }
    const learner = toneLearner(sampleRate);
    expect(learner(new Float32Array(sampleRate))).toBeNull();
  });
});
