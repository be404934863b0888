import { useEffect } from 'preact/hooks';
import { preferences } from '../preferences.ts';
import { hearing, listenFor, stopHearing } from './hearing.ts';

/** Holds the microphone open while this screen stands, if the person wants to be heard. */
export function useEar(): void {
  const { hears, tone } = preferences.value;
  useEffect(() => {
    if (!hears || !tone) return;
    if (hearing.value.is !== 'listening') void listenFor(tone);
    return stopHearing;
  }, [hears, tone]);
}

/** Lets go of the microphone, or gives it back to the ear for beeps where the person wants to be heard. */
export function endHum(): void {
  const { hears, tone } = preferences.value;
  if (hears && tone) void listenFor(tone);
  else stopHearing();
}
