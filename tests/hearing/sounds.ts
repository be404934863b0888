// What may sound at a bench beside a meter: made here from seeded dice, so that every run hears the same.
import type { Dice } from '../simulated/dice.ts';

export const sampleRate = 48_000;

/**
 * Speech spectrum level of a normal voice, dB in third octaves from 160 Hz to 8 kHz: ANSI S3.5-1997, table
 * 3; the values from memory.
 */
const speechSpectrum: readonly (readonly [number, number])[] = [
  ...[160, 200, 250, 315, 400, 500, 630, 800, 1000].map(
    (hertz, i) =>
      [hertz, [32.41, 34.48, 34.75, 33.98, 34.59, 34.27, 32.06, 28.3, 25.01][i] ?? 0] as const,
  ),
  ...[1250, 1600, 2000, 2500, 3150, 4000, 5000, 6300, 8000].map(
    (hertz, i) =>
      [hertz, [23, 20.15, 17.32, 13.18, 11.55, 9.33, 5.31, 2.59, 1.13][i] ?? 0] as const,
  ),
];

/** Noise with the spectrum of speech, and, where `syllables`, its rise and fall of about 4 a second. RMS 1. */
export function speechShapedNoise(seconds: number, dice: Dice, syllables = false): Float32Array {
  const length = Math.round(seconds * sampleRate);
  const out = new Float32Array(length);
  for (const [hertz, level] of speechSpectrum) {
    const bandwidth = hertz * 0.2316;
    // Spectrum level is power in a hertz; white noise through a resonator of this width has its share.
    addBand(out, hertz, bandwidth, 10 ** (level / 20) * Math.sqrt(bandwidth), dice);
  }
  if (syllables) {
    let gain = 1;
    let goal = 1;
    for (let i = 0; i < length; i++) {
      if (i % Math.round(sampleRate / 8) === 0)
        goal = dice.throw() < 0.3 ? 0.1 : 0.5 + dice.throw();
      gain += (goal - gain) / (0.02 * sampleRate);
      out[i] = (out[i] ?? 0) * gain;
    }
  }
  return levelled(out);
}

/** Third-octave noise of this RMS by a two-pole resonator on white noise. */
function addBand(out: Float32Array, hertz: number, width: number, rms: number, dice: Dice): void {
  const r = Math.exp((-Math.PI * width) / sampleRate);
  const a1 = -2 * r * Math.cos((2 * Math.PI * hertz) / sampleRate);
  const a2 = r * r;
  const band = new Float32Array(out.length);
  let [y1, y2, sum] = [0, 0, 0];
  for (let i = 0; i < out.length; i++) {
    const y = dice.normal() - a1 * y1 - a2 * y2;
    [y2, y1] = [y1, y];
    band[i] = y;
    sum += y * y;
  }
  const gain = rms / Math.sqrt(sum / out.length);
  for (let i = 0; i < out.length; i++) out[i] = (out[i] ?? 0) + gain * (band[i] ?? 0);
}

/**
 * Music: chords, a melody up to the B three octaves above middle C's (1975 Hz: higher than a guitar goes), a
 * drum on the beat; every note with its harmonics, held or struck. RMS 1.
 */
export function music(seconds: number, dice: Dice): Float32Array {
  const out = new Float32Array(Math.round(seconds * sampleRate));
  const scale = [0, 2, 4, 5, 7, 9, 11];
  const pitch = (low: number, octaves: number) =>
    low *
    2 ** (Math.floor(dice.throw() * octaves) + (scale[Math.floor(dice.throw() * 7)] ?? 0) / 12);
  for (let beat = 0; beat < seconds; beat += 0.5) {
    if (dice.throw() < 0.5)
      for (let voice = 0; voice < 3; voice++) addNote(out, beat, 1, pitch(130.81, 2), 0.3, dice);
    addNote(out, beat, 0.2 + dice.throw() * 0.6, pitch(261.63, 3), 0.5, dice);
    addDrum(out, beat, dice);
  }
  return levelled(out);
}

function addNote(
  out: Float32Array,
  from: number,
  seconds: number,
  hertz: number,
  loudness: number,
  dice: Dice,
): void {
  const start = Math.round(from * sampleRate);
  const struck = dice.throw() < 0.5;
  const brightness = 0.5 + 1.5 * dice.throw();
  for (let harmonic = 1; harmonic <= 12 && harmonic * hertz < 0.45 * sampleRate; harmonic++) {
    const gain = loudness / harmonic ** brightness;
    const phase = dice.throw() * 2 * Math.PI;
    for (let i = 0; i < seconds * sampleRate && start + i < out.length; i++) {
      const t = i / sampleRate;
      const envelope = Math.min(1, t / 0.01) * (struck ? Math.exp(-3 * harmonic * t) : 1);
      const wave = Math.sin(2 * Math.PI * harmonic * hertz * t + phase);
      out[start + i] = (out[start + i] ?? 0) + gain * envelope * wave;
    }
  }
}

function addDrum(out: Float32Array, from: number, dice: Dice): void {
  const start = Math.round(from * sampleRate);
  for (let i = 0; i < 0.1 * sampleRate && start + i < out.length; i++) {
    const fall = Math.exp((-40 * i) / sampleRate);
    out[start + i] = (out[start + i] ?? 0) + 0.3 * fall * dice.normal();
  }
}

/** Clicks of a switch or a hot iron: a few thousandths of a second, all frequencies. Peak 1. */
export function clicks(seconds: number, dice: Dice): Float32Array {
  const out = new Float32Array(Math.round(seconds * sampleRate));
  for (let at = 0; at < seconds; at += 0.2 + dice.throw()) {
    const start = Math.round(at * sampleRate);
    for (let i = 0; i < 0.02 * sampleRate && start + i < out.length; i++)
      out[start + i] = Math.exp((-400 * i) / sampleRate) * (2 * dice.throw() - 1);
  }
  return out;
}

/** Harmonics of hum, in amplitude: odd ones of transformers' fields, even ones of rectifiers (shape ours, no source). */
export const humShape: readonly number[] = [1, 0.7, 0.8, 0.25, 0.6, 0.2, 0.35, 0.1, 0.2, 0.08];

/** Mains hum with this fundamental. RMS 1. */
export function humming(seconds: number, hertz: number, dice: Dice): Float32Array {
  const phases = humShape.map(() => dice.between(0, 2 * Math.PI));
  const out = new Float32Array(Math.round(seconds * sampleRate));
  for (let i = 0; i < out.length; i++) {
    let sum = 0;
    for (const [k, gain] of humShape.entries())
      sum += gain * Math.sin((2 * Math.PI * (k + 1) * hertz * i) / sampleRate + (phases[k] ?? 0));
    out[i] = sum;
  }
  return levelled(out);
}

export const mixed = (one: Float32Array, gain: number, other: Float32Array): Float32Array =>
  one.map((x, i) => gain * x + (other[i] ?? 0));

/** Adds a sounder's tone of this RMS: a sine, or with the odd harmonics of a square wave. */
export function addTone(out: Float32Array, { from, seconds, hertz, rms, square }: ToneShape): void {
  const start = Math.round(from * sampleRate);
  const gain = rms * Math.SQRT2;
  for (let i = 0; i < seconds * sampleRate && start + i < out.length; i++) {
    const turn = (2 * Math.PI * hertz * i) / sampleRate;
    const wave = square ? (Math.sin(turn) + Math.sin(3 * turn) / 3) / 1.054 : Math.sin(turn);
    out[start + i] = (out[start + i] ?? 0) + gain * wave;
  }
}

export interface ToneShape {
  /** Seconds. */
  readonly from: number;
  readonly seconds: number;
  readonly hertz: number;
  readonly rms: number;
  readonly square: boolean;
}

export function levelled(sound: Float32Array, rms = 1): Float32Array {
  const now = Math.sqrt(sound.reduce((sum, x) => sum + x * x, 0) / sound.length);
  return sound.map((x) => (x * rms) / (now || 1));
}

/** Mono 16-bit PCM in a RIFF file. Samples beyond full scale are clipped, as a microphone would. */
export function wavOf(sound: Float32Array): Buffer {
  const data = Buffer.alloc(44 + 2 * sound.length);
  data.write('RIFF', 0);
  data.writeUInt32LE(36 + 2 * sound.length, 4);
  data.write('WAVEfmt ', 8);
  data.writeUInt32LE(16, 16);
  data.writeUInt16LE(1, 20);
  data.writeUInt16LE(1, 22);
  data.writeUInt32LE(sampleRate, 24);
  data.writeUInt32LE(2 * sampleRate, 28);
  data.writeUInt16LE(2, 32);
  data.writeUInt16LE(16, 34);
  data.write('data', 36);
  data.writeUInt32LE(2 * sound.length, 40);
  for (const [i, x] of sound.entries())
    data.writeInt16LE(Math.round(32_767 * Math.max(-1, Math.min(1, x))), 44 + 2 * i);
  return data;
}
