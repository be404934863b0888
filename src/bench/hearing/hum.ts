/** What the mains swing at, Hz. */
export type Mains = 50 | 60;

/** Hum as one microphone hears it. Powers are mean squares of samples, full scale 1. */
export interface Hum {
  readonly mains: Mains;
  /** The fundamental as found, Hz. */
  readonly hertz: number;
  /** Fundamental first; what the noise beside each leaves in its place is taken off. */
  readonly harmonics: readonly number[];
  /** Their sum, and what noise of the room has in the same places. */
  readonly power: number;
  readonly noise: number;
  /** Whether it is hum at all, and not what noise looks like by chance. */
  readonly clear: boolean;
}

/** Ten harmonics, to 500 or 600 Hz: what hum there is above them is lost in speech. */
export const harmonicCount = 10;

/** The mains stay within half a hertz of 50 Hz for 99.5 % of a year (EN 50160: 1 %; from memory); looked for as far at 60. */
const wander = 0.5;

/** Beside each harmonic, Hz: past the window's own skirts, short of the other mains' harmonics. */
const beside = [-7, -6, -5, -4, -3, 3, 4, 5, 6, 7];

/**
 * Noise alone scores about as many as there are harmonics, +- their root, and the best of some hundred looks rarely twice that. Three
 * and a half times as many is hum.
 */
const clearScore = 3.5 * harmonicCount;

/**
 * Power of a sine at one frequency, whole periods or not: Goertzel's recurrence over samples under a window, |X|^2 = s1^2 + s2^2 -
 * 2 cos(w) s1 s2, and a sine of amplitude A has |X| = A/2 sum(w) and power A^2/2.
 *
 * @param windowed samples times the window, whose values sum to `weight`
 */
export function powerAt(windowed: Float64Array, weight: number, cyclesPerSample: number): number {
  const twice = 2 * Math.cos(2 * Math.PI * cyclesPerSample);
  let [s1, s2] = [0, 0];
  for (let i = 0; i < windowed.length; i++) {
    const s = (windowed[i] as number) + twice * s1 - s2;
    s2 = s1;
    s1 = s;
  }
  return (2 * (s1 * s1 + s2 * s2 - twice * s1 * s2)) / weight ** 2;
}

/** A stretch of sound under its Hann window. */
interface Stretch {
  readonly windowed: Float64Array;
  readonly weight: number;
  readonly rate: number;
}

function stretchOf(samples: Float64Array, rate: number): Stretch {
  const windowed = new Float64Array(samples.length);
  for (let i = 0; i < samples.length; i++)
    windowed[i] =
      (samples[i] as number) * (0.5 - 0.5 * Math.cos((2 * Math.PI * i) / samples.length));
  return { windowed, weight: samples.length / 2, rate };
}

const at = ({ windowed, weight, rate }: Stretch, hertz: number): number =>
  powerAt(windowed, weight, hertz / rate);

const numbers = Array.from({ length: harmonicCount }, (_, index) => index + 1);

/** Noise in each harmonic's place: the median of what lies beside it, as powers of noise are spread exponentially. */
const noiseBeside = (stretch: Stretch, hertz: number): readonly number[] =>
  numbers.map((number) => {
    const powers = beside.map((off) => at(stretch, number * hertz + off)).sort((a, b) => a - b);
    const middle = powers.length / 2;
    const median = ((powers[middle - 1] as number) + (powers[middle] as number)) / 2;
    return Math.max(median / Math.LN2, 1e-16);
  });

/** How far the harmonics of this fundamental stand out of noise: the sum over them of power over noise. */
const scoreOf = (stretch: Stretch, hertz: number, noise: readonly number[]): number =>
  numbers.reduce(
    (sum, number, index) => sum + at(stretch, number * hertz) / (noise[index] as number),
    0,
  );

/** The best of the fundamentals about `middle`, by the mean of their scores over the stretches. */
function bestAbout(
  stretches: readonly Stretch[],
  noises: readonly (readonly number[])[],
  middle: number,
  reach: number,
  step: number,
): { readonly hertz: number; readonly score: number } {
  let best = { hertz: middle, score: 0 };
  for (let off = -reach; off <= reach + step / 2; off += step) {
    const score =
      stretches.reduce(
        (sum, stretch, index) =>
          sum + scoreOf(stretch, middle + off, noises[index] as readonly number[]),
        0,
      ) / stretches.length;
    if (score > best.score) best = { hertz: middle + off, score };
  }
  return best;
}

/**
 * Hum in a stretch of at least a second. The fundamental is looked for second by second in coarse steps, then over the whole, whose
 * places are the narrower the longer it is, in fine ones.
 *
 * @param mains null to find out which
 */
export function humIn(samples: Float64Array, rate: number, mains: Mains | null): Hum {
  const second = Math.floor(rate);
  const count = Math.max(1, Math.floor(samples.length / second));
  const seconds = Array.from({ length: count }, (_, index) =>
    stretchOf(samples.subarray(index * second, (index + 1) * second), rate),
  );
  const whole = stretchOf(samples, rate);
  const found = (mains === null ? ([50, 60] as const) : [mains]).map((kind) => {
    const noises = seconds.map((stretch) => noiseBeside(stretch, kind));
    return { kind, ...bestAbout(seconds, noises, kind, wander, 0.1) };
  });
  const { kind, hertz: near } = found.reduce((x, y) => (y.score > x.score ? y : x));
  const noise = noiseBeside(whole, near);
  // A place is 1 / length wide, hertz; the highest harmonic moves by one of them for this much of the fundamental.
  const place = rate / samples.length / harmonicCount;
  const { hertz: nearer } = bestAbout([whole], [noise], near, 0.1, place);
  const { hertz, score } = bestAbout([whole], [noise], nearer, place, place / 5);
  const harmonics = numbers.map((number, index) =>
    Math.max(0, at(whole, number * hertz) - (noise[index] as number)),
  );
  return {
    mains: kind,
    hertz,
    harmonics,
    power: harmonics.reduce((sum, power) => sum + power, 0),
    noise: noise.reduce((sum, power) => sum + power, 0),
    clear: score > clearScore,
  };
}
