import { preferences } from '../preferences.ts';

/** What a short sound says. */
export type Confirmed = 'beeps' | 'silent' | 'taken' | 'unsteady';

/**
 * Notes in hertz and their lengths in seconds. All lie far below any meter's tone and below what the ear for
 * it lets through, so that the bench does not answer itself.
 */
const notes: Record<Confirmed, readonly (readonly [hertz: number, seconds: number])[]> = {
  taken: [[659, 0.08]],
  beeps: [
    [523, 0.07],
    [784, 0.1],
  ],
  silent: [[330, 0.18]],
  unsteady: [
    [330, 0.06],
    [330, 0.06],
    [330, 0.06],
  ],
};

/** Milliseconds of buzz and pause. */
const buzzes: Record<Confirmed, number[]> = {
  taken: [40],
  beeps: [40, 60, 40],
  silent: [150],
  unsteady: [30, 40, 30, 40, 30],
};

let context: AudioContext | undefined;

/** The continuity tone of a practice meter: half a second. */
export const soundMeter = (hertz: number): void => sound([[hertz, 0.5]]);

/** A short sound and a buzz, where the person wants them and the phone can. */
export function confirm(what: Confirmed): void {
  if (!preferences.value.confirms) return;
  navigator.vibrate?.(buzzes[what]);
  sound(notes[what]);
}

function sound(tune: (typeof notes)[Confirmed]): void {
  try {
    context ??= new AudioContext();
    if (context.state === 'suspended') void context.resume();
    play(context, tune);
  } catch {
    // No sound on this device: the screen says it too.
  }
}

function play(on: AudioContext, tune: (typeof notes)[Confirmed]): void {
  let at = on.currentTime;
  for (const [hertz, length] of tune) {
    const source = on.createOscillator();
    const gain = on.createGain();
    source.frequency.value = hertz;
    gain.gain.setValueAtTime(0, at);
    gain.gain.linearRampToValueAtTime(0.2, at + 0.01);
    gain.gain.setValueAtTime(0.2, at + length - 0.01);
    gain.gain.linearRampToValueAtTime(0, at + length);
    source.connect(gain).connect(on.destination);
    source.start(at);
    source.stop(at + length);
    at += length + 0.03;
  }
}
