/** The continuity tone of one meter, as one phone hears it. */
export interface Tone {
  /** Fundamental, Hz. */
  readonly hertz: number;
  /** Power of the tone with its harmonics where it was learned, full scale 1. */
  readonly power: number;
}

/** Lowest and highest fundamental that is looked for. Piezo sounders: common practice, no source. */
export const lowestTone: number = 1500;
export const highestTone: number = 5000;

/** Frames of about this long, seconds: a drift of 1 % of the tone costs a decibel, no more. */
const frameSeconds = 0.0213;
const hopsInFrame = 2;

/** Everything below is speech, mains hum and most of music, and no meter's tone. Hz. */
const highPass: number = 1200;

export interface Framing {
  readonly size: number;
  readonly hop: number;
}

export function framingAt(sampleRate: number): Framing {
  const hop = Math.round((sampleRate * frameSeconds) / hopsInFrame);
  return { size: hop * hopsInFrame, hop };
}

/** A second-order Butterworth high-pass: the state of one microphone, sample by sample. */
export function highPassAt(sampleRate: number): (sample: number) => number {
  const k = Math.tan((Math.PI * highPass) / sampleRate);
  const norm = 1 / (1 + Math.SQRT2 * k + k * k);
  const a1 = 2 * (k * k - 1) * norm;
  const a2 = (1 - Math.SQRT2 * k + k * k) * norm;
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  return (x) => {
    const y = norm * (x - 2 * x1 + x2) - a1 * y1 - a2 * y2;
    [x2, x1, y2, y1] = [x1, x, y1, y];
    return y;
  };
}

/** Power of a whole frame and of the tone in it, both under one Hann window. */
export interface FramePower {
  readonly whole: number;
  readonly tone: number;
}

/**
 * Measures frames for one tone: its fundamental and the harmonics below the highest frequency that the
 * microphone still passes, each by its discrete Fourier sum at that very frequency.
 *
 * @param hertz fundamental
 */
export function meterOf(hertz: number, sampleRate: number): (frame: Float32Array) => FramePower {
  const { size } = framingAt(sampleRate);
  const window = hann(size);
  const weight = window.reduce((sum, w) => sum + w, 0);
  const sums = [1, 2, 3]
    .map((harmonic) => harmonic * hertz)
    .filter((frequency) => frequency < 0.45 * sampleRate)
    .map((frequency) => waves(frequency / sampleRate, window));
  return (frame) => {
    let whole = 0;
    for (let i = 0; i < size; i++) whole += at(window, i) * at(frame, i) ** 2;
    let tone = 0;
    for (const { cosine, sine } of sums) {
      let [re, im] = [0, 0];
      for (let i = 0; i < size; i++) {
        re += at(cosine, i) * at(frame, i);
        im += at(sine, i) * at(frame, i);
      }
      tone += (2 * (re * re + im * im)) / weight ** 2;
    }
    return { whole: whole / weight, tone: Math.min(tone, whole / weight) };
  };
}

function waves(cyclesPerSample: number, window: Float64Array) {
  const cosine = window.map((w, i) => w * Math.cos(2 * Math.PI * cyclesPerSample * i));
  const sine = window.map((w, i) => w * Math.sin(2 * Math.PI * cyclesPerSample * i));
  return { cosine, sine };
}

const hann = (size: number): Float64Array =>
  Float64Array.from({ length: size }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / size));

const at = (list: Float64Array | Float32Array, index: number): number => list[index] ?? 0;

/** Cuts a stream into overlapping frames behind the high-pass. The frame handed over is used again. */
export function framesOf(sampleRate: number, onFrame: (frame: Float32Array) => void) {
  const { size, hop } = framingAt(sampleRate);
  const filter = highPassAt(sampleRate);
  const frame = new Float32Array(size);
  let filled = 0;
  return (block: Float32Array): void => {
    for (const sample of block) {
      frame[filled] = filter(sample);
      filled += 1;
      if (filled < size) continue;
      onFrame(frame);
      frame.copyWithin(0, hop);
      filled = size - hop;
    }
  };
}
