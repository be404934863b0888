import { framesOf, highestTone, lowestTone, meterOf, type Tone } from './tone.ts';

/** Share of a frame's power that a tone must have while it is learned: nothing else may sound. */
const clearShare = 0.6;

/** Frames in a row in which the same tone must stand, about a second: longer than a note of a tune. */
const steadyFrames = 90;

/** Within a run the tone may wander by this much, Hz. */
const wander = 20;

/**
 * Learns a meter's tone from what is heard while the probes touch. Blocks of mono samples are pushed in;
 * null until one tone has carried most of the power for a second.
 */
export function toneLearner(sampleRate: number): (block: Float32Array) => Tone | null {
  const meters = new Map<number, ReturnType<typeof meterOf>>();
  let run: Tone[] = [];
  let learned: Tone | null = null;

  const listen = framesOf(sampleRate, (frame) => {
    if (learned) return;
    const hertz = crossingRate(frame, sampleRate);
    // In tens of hertz, so that few tables are made; the share loses nothing by it.
    const near = 10 * Math.round(hertz / 10);
    if (near < lowestTone || near > highestTone) {
      run = [];
      return;
    }
    let meter = meters.get(near);
    if (!meter) {
      meter = meterOf(near, sampleRate);
      meters.set(near, meter);
    }
    const { tone, whole } = meter(frame);
    const strays = run.length > 0 && Math.abs(hertz - median(run.map((one) => one.hertz))) > wander;
    if (strays || tone < clearShare * whole) run = [];
    if (whole === 0 || tone < clearShare * whole) return;
    run.push({ hertz, power: tone });
    if (run.length < steadyFrames) return;
    learned = {
      hertz: median(run.map((one) => one.hertz)),
      power: median(run.map((one) => one.power)),
    };
  });
  return (block) => {
    listen(block);
    return learned;
  };
}

/**
 * Half the rate at which a frame changes its sign, Hz: the fundamental, where one tone is all there is.
 * Crossings are placed between samples by the line through both.
 */
function crossingRate(frame: Float32Array, sampleRate: number): number {
  let [first, last, count] = [0, 0, 0];
  let before = frame[0] ?? 0;
  for (let i = 1; i < frame.length; i++) {
    const now = frame[i] ?? 0;
    if (before < 0 !== now < 0) {
      last = i - 1 + before / (before - now);
      if (count === 0) first = last;
      count += 1;
    }
    before = now;
  }
  return count < 2 ? 0 : ((count - 1) * sampleRate) / (2 * (last - first));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}
