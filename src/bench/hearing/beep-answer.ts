import type { ToneChange } from './tone-ear.ts';

/** A beep counts once it has stood this long, seconds: shorter ones are probes that scrape. */
export const steadyBeep = 0.2;

/** What a question that is answered by ear has come to. */
export type BeepAnswer = 'beeps' | 'silent' | 'unsteady' | null;

export interface BeepListening {
  /** Whether it sounded when the question was put: that beep is the last question's. */
  readonly soundsAtStart: boolean;
  /** When the question was put, and after how long without a beep it counts as silent, seconds. */
  readonly from: number;
  readonly patience: number | null;
}

/**
 * The answer that the beeps heard so far make, at the moment `now`, seconds; null while it is open.
 * A tone still sounding from the question before counts only when it has stopped and begun again.
 */
export function beepAnswer(
  { soundsAtStart, from, patience }: BeepListening,
  changes: readonly ToneChange[],
  now: number,
): BeepAnswer {
  let sounds = soundsAtStart;
  let stale = soundsAtStart;
  let began = from;
  let scrapes = 0;
  for (const { sounds: next, at } of changes) {
    if (at < from || next === sounds) continue;
    sounds = next;
    if (next) {
      began = at;
      stale = false;
    } else if (!stale) {
      if (at - began >= steadyBeep) return 'beeps';
      scrapes += 1;
    }
  }
  if (sounds && !stale && now - began >= steadyBeep) return 'beeps';
  if (patience === null || now - from < patience || sounds) return null;
  return scrapes > 0 ? 'unsteady' : 'silent';
}
