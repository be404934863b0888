import { framesOf, framingAt, meterOf, type Tone } from './tone.ts';

/** The tone began or ended, seconds of sound since the ear was made. */
export interface ToneChange {
  readonly sounds: boolean;
  readonly at: number;
}

/**
 * Share of the power above the high-pass that must be the tone's. A tone 5 dB over noise that is as
 * strong up there as the whole of it still has three quarters.
 */
const leastShare = 0.45;

/** The phone stays where it learned the tone, the probes move about: this far from its power, dB. */
const softer = 20;
const louder = 14;

/** Hops that must agree, of the last ones: a click of a switch or of a hot iron is shorter. */
const window = 7;
const enough = 6;

/** Hears one tone in a stream of mono samples; each call gives what began or ended in that block. */
export function toneEar(
  { hertz, power }: Tone,
  sampleRate: number,
): (block: Float32Array) => ToneChange[] {
  const measure = meterOf(hertz, sampleRate);
  const { size, hop } = framingAt(sampleRate);
  const [least, most] = [power / 10 ** (softer / 10), power * 10 ** (louder / 10)];
  const recent: boolean[] = [];
  let sounds = false;
  let frames = 0;
  let changes: ToneChange[] = [];

  const listen = framesOf(sampleRate, (frame) => {
    const { tone, whole } = measure(frame);
    frames += 1;
    recent.push(tone >= leastShare * whole && tone >= least && tone <= most);
    if (recent.length > window) recent.shift();
    const heard = recent.filter(Boolean).length;
    const now = sounds ? heard > window - enough : heard >= enough;
    if (now === sounds) return;
    sounds = now;
    // The change is noticed after the hops that prove it.
    const at = Math.max(0, (size + (frames - 1 - enough) * hop) / sampleRate);
    changes.push({ sounds, at });
  });
  return (block) => {
    changes = [];
    listen(block);
    return changes;
  };
}
