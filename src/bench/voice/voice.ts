import { type Signal, signal } from '@preact/signals';
import { preferences } from '../preferences.ts';

/** Whether this phone has a voice for the page's language; it may find its voices late. */
export type VoiceState = 'unknown' | 'has voice' | 'no voice';
export const voiceState: Signal<VoiceState> = signal('unknown');

/** A phone without voices sends no word of it: after this long it counts as having none. Milliseconds. */
const voicesComeWithin = 3000;

/** Whether something is being said: what is heard meanwhile answers no question. */
export const talking: Signal<boolean> = signal(false);

const synth: SpeechSynthesis | undefined = globalThis.speechSynthesis;
let looked = false;

/** Looks for a voice, once. */
export function findVoice(): void {
  if (looked) return;
  looked = true;
  if (!synth) {
    voiceState.value = 'no voice';
    return;
  }
  const look = () => {
    if (voices().length > 0) voiceState.value = 'has voice';
  };
  look();
  synth.addEventListener?.('voiceschanged', look);
  setTimeout(() => {
    if (voiceState.value === 'unknown') voiceState.value = 'no voice';
  }, voicesComeWithin);
}

/** Voices of the page's language that the phone has itself: any other would send what is said to whoever made it. */
function voices(): readonly SpeechSynthesisVoice[] {
  const language = document.documentElement.lang.slice(0, 2);
  return (synth?.getVoices() ?? []).filter(
    ({ lang, localService }) => localService && lang.startsWith(language),
  );
}

/** Longest that one word of a sentence takes at rate 1, ms: a phone that never says "end" is not waited for. */
const longestWord = 900;

/**
 * Says these sentences, in place of what is being said. Resolves when they are over, were cut off by others,
 * or cannot be said: nothing waits for a voice that is not there.
 */
export function speak(text: string): Promise<void> {
  if (!preferences.value.speaks || !synth || text === '') return Promise.resolve();
  findVoice();
  if (voiceState.value === 'no voice') return Promise.resolve();
  synth.cancel();
  const spoken = new SpeechSynthesisUtterance(text);
  const { rate } = preferences.value;
  spoken.rate = rate;
  spoken.lang = document.documentElement.lang;
  const [voice] = voices();
  // Without one the browser would take what it likes.
  if (!voice) return Promise.resolve();
  spoken.voice = voice;
  talks += 1;
  const own = talks;
  talking.value = true;
  return new Promise((resolve) => {
    const over = () => {
      clearTimeout(limit);
      if (own === talks) talking.value = false;
      resolve();
    };
    const limit = setTimeout(over, 2000 + (text.split(/\s+/).length * longestWord) / rate);
    spoken.onend = over;
    spoken.onerror = over;
    synth.speak(spoken);
  });
}

/** Counts what was said, so that what was cut off does not end what cut it off. */
let talks = 0;

export function hush(): void {
  talks += 1;
  talking.value = false;
  synth?.cancel();
}
