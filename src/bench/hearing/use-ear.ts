import { useEffect } from 'preact/hooks';
import { preferences } from '../preferences.ts';
import { hearing, listenFor, stopHearing } from './hearing.ts';

/** Holds the microphone open while this screen stands and has `need` of it, if the person wants to be heard. */
export function useEar(need = true): void {
  const { hears, tone } = preferences.value;
  useEffect(() => {
    if (!need || !hears || !tone) return;
    if (hearing.value.is !== 'listening') void listenFor(tone);
    return stopHearing;
  }, [need, hears, tone]);
}

/** Lets go of the microphone, or gives it back to the ear for beeps where the person wants to be heard. */
export function endHum(): void {
  const { hears, tone } = preferences.value;
  if (hears && tone) void listenFor(tone);
  else stopHearing();
}
