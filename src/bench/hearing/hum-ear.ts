import { type Hum, humIn, type Mains } from './hum.ts';

/** Sound is kept at about this rate, Hz: hum and its harmonics end at 600. */
const keptRate = 2000;

/** A position is listened to for so long, seconds: a place of a harmonic is then a third of a hertz wide. */
export const humSeconds = 5;
/** What is shown meanwhile is that of the last second, and comes four times a second. */
const shownSeconds = 1;
const showEvery = 0.25;

/** A sample this near full scale is cut off. */
const cutOff = 0.985;

/** What the ear makes of the stream: hum as it is now, or, when it was told to measure, of the whole stretch since. */
export interface HumHeard {
  readonly hum: Hum;
  readonly measured: boolean;
  /** Too loud for the microphone at some time of it. */
  readonly cut: boolean;
}

export interface HumEar {
  push(block: Float32Array): HumHeard | null;
  /** From here on `humSeconds` are listened to. */
  measure(): void;
}

export function humEar(sampleRate: number, mains: Mains | null): HumEar {
  const every = Math.max(1, Math.round(sampleRate / keptRate));
  const rate = sampleRate / every;
  const thin = thinner(every);
  const kept = new Float64Array(Math.round(humSeconds * rate));
  const shown = Math.round(shownSeconds * rate);
  const pause = Math.round(showEvery * rate);
  let filled = 0;
  let sinceShown = 0;
  let measuring = false;
  let cut = false;

  const take = (sample: number): HumHeard | null => {
    if (filled === kept.length) {
      kept.copyWithin(0, 1);
      filled -= 1;
    }
    kept[filled] = sample;
    filled += 1;
    sinceShown += 1;
    const done = measuring && filled === kept.length;
    if (!done && (sinceShown < pause || filled < shown)) return null;
    const stretch = done ? kept : kept.subarray(filled - shown, filled);
    const heard = { hum: humIn(stretch, rate, mains), measured: done, cut };
    sinceShown = 0;
    if (done) measuring = false;
    if (!measuring) cut = false;
    return heard;
  };
  return {
    push(block) {
      let heard: HumHeard | null = null;
      for (const sample of block) {
        if (Math.abs(sample) >= cutOff) cut = true;
        const kept = thin(sample);
        if (kept !== null) heard = take(kept) ?? heard;
      }
      return heard;
    },
    measure() {
      measuring = true;
      cut = false;
      filled = 0;
    },
  };
}

/**
 * One sample of `every`, after a low-pass that passes what is kept and stops what would fold onto it: a sinc under a Hann window, half
 * of its power at half of the new rate, eight new samples long.
 */
function thinner(every: number): (sample: number) => number | null {
  const length = 8 * every;
  const taps = Float64Array.from({ length }, (_, i) => {
    const x = (i - (length - 1) / 2) / every;
    const sinc = x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    return sinc * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length));
  });
  const sum = taps.reduce((total, tap) => total + tap, 0);
  const last = new Float64Array(length);
  let now = 0;
  return (sample) => {
    last[now % length] = sample;
    now += 1;
    if (now % every !== 0) return null;
    let out = 0;
    for (let i = 0; i < length; i++)
      out += (taps[i] as number) * (last[(now + i) % length] as number);
    return out / sum;
  };
}
