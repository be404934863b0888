// A bench with a meter that beeps or does not, forty times over, in one stream of sound.
import { type BeepAnswer, beepAnswer } from '../../src/bench/hearing/beep-answer.ts';
import type { ToneChange } from '../../src/bench/hearing/tone-ear.ts';
import { Dice } from '../simulated/dice.ts';
import { addTone, clicks, levelled, music, sampleRate, speechShapedNoise } from './sounds.ts';

export type Surroundings =
  | 'speech-shaped noise'
  | 'noise that rises and falls'
  | 'music'
  | 'clicks';

export interface Condition {
  readonly surroundings: Surroundings;
  /** Power of the tone over the power of everything else, both over the whole band, dB. */
  readonly decibels: number;
  /** Seconds that a beep lasts. */
  readonly beep: number;
}

/** Each surrounding at 20, 10 and 5 dB, with short and with long beeps. */
export const conditions: readonly Condition[] = (
  ['speech-shaped noise', 'noise that rises and falls', 'music', 'clicks'] as const
).flatMap((surroundings) =>
  [20, 10, 5].flatMap((decibels) => [0.3, 1.2].map((beep) => ({ surroundings, decibels, beep }))),
);

/** Root mean square of a tone in these streams, full scale 1. */
const toneRms = 0.1;

/** In the beginning the probes touch, so that the tone can be learned. Seconds. */
export const learning = 1.5;
const gap = 0.5;
/** A question is open this long. */
const question = 2;

export interface Stream {
  readonly condition: Condition;
  readonly hertz: number;
  readonly sound: Float32Array;
  readonly questions: readonly { readonly from: number; readonly beeps: boolean }[];
}

/** A stream of questions under one condition; the tone is anywhere from 1.8 to 4.5 kHz. */
export function streamOf(condition: Condition, seed: string, count: number): Stream {
  const dice = new Dice(`${seed} ${JSON.stringify(condition)}`);
  const hertz = dice.between(1800, 4500);
  const square = dice.chance(0.5);
  const start = learning + gap;
  const seconds = start + count * question;
  const sound = new Float32Array(Math.round(seconds * sampleRate));
  const around = surroundingsOf(condition.surroundings, count * question, dice);
  const rms = toneRms / 10 ** (condition.decibels / 20);
  levelled(around, rms).forEach((x, i) => {
    sound[Math.round(start * sampleRate) + i] = x;
  });
  addTone(sound, { from: 0, seconds: learning, hertz, rms: toneRms, square });
  const questions = Array.from({ length: count }, (_, i) => {
    const from = start + i * question;
    const beeps = dice.chance(0.5);
    const begins = from + dice.between(0.1, question - condition.beep - 0.2);
    if (beeps)
      addTone(sound, { from: begins, seconds: condition.beep, hertz, rms: toneRms, square });
    return { from, beeps };
  });
  return { condition, hertz, sound, questions };
}

export function surroundingsOf(kind: Surroundings, seconds: number, dice: Dice): Float32Array {
  switch (kind) {
    case 'speech-shaped noise':
      return speechShapedNoise(seconds, dice);
    case 'noise that rises and falls':
      return speechShapedNoise(seconds, dice, true);
    case 'music':
      return music(seconds, dice);
    case 'clicks':
      return clicks(seconds, dice);
  }
}

export interface Tally {
  readonly asked: number;
  readonly right: number;
  /** Beeped and was answered as silent or unsteady. */
  readonly missed: number;
  /** Was silent and was answered as a beep. */
  readonly false: number;
}

/** What the ear made of a stream: `changes` in seconds of that stream, in order. */
export function judge({ questions }: Stream, changes: readonly ToneChange[]): Tally {
  const answers = questions.map(({ from, beeps }): [boolean, BeepAnswer] => {
    const before = changes.filter(({ at }) => at < from).at(-1);
    const during = changes.filter(({ at }) => at >= from && at < from + question);
    const listening = { soundsAtStart: before?.sounds ?? false, from, patience: question - 0.05 };
    return [beeps, beepAnswer(listening, during, from + question)];
  });
  const count = (fits: (beeps: boolean, answer: BeepAnswer) => boolean) =>
    answers.filter(([beeps, answer]) => fits(beeps, answer)).length;
  return {
    asked: answers.length,
    right: count((beeps, answer) => answer === (beeps ? 'beeps' : 'silent')),
    missed: count((beeps, answer) => beeps && answer !== 'beeps'),
    false: count((beeps, answer) => !beeps && answer === 'beeps'),
  };
}
