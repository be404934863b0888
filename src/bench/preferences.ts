import { type Signal, signal } from '@preact/signals';
import { isLanguage, type Language } from '../words/tongue.ts';
import type { Tone } from './hearing/tone.ts';

/** How this person works at this bench. Kept on this phone, and no part of any job. */
export interface Preferences {
  /** The continuity tone of the meter as this phone hears it; null until it was learned. */
  readonly tone: Tone | null;
  /** Whether beeps are answered by ear. Only ever true after the person said so. */
  readonly hears: boolean;
  /** Seconds without a beep that count as silent; null leaves silence to the key. */
  readonly patience: number | null;
  readonly speaks: boolean;
  /** Speed of the voice, 1 as the phone's own. */
  readonly rate: number;
  /** Short sounds and a buzz when an answer was taken. */
  readonly confirms: boolean;
  readonly light: 'phone' | 'bright' | 'dark';
  readonly language: 'phone' | Language;
  /** The guitar lies the other way: the drawings are turned by half a turn. */
  readonly turned: boolean;
  readonly leftHanded: boolean;
  /** How to have the app on the home screen was told, or taken up. */
  readonly toldToInstall: boolean;
}

const standard: Preferences = {
  tone: null,
  hears: false,
  patience: 10,
  speaks: false,
  rate: 1,
  confirms: true,
  light: 'phone',
  language: 'phone',
  turned: false,
  leftHanded: false,
  toldToInstall: false,
};

const KEY = 'lugwise-bench';

/** What is damaged, or not known here, is as if it had never been set. */
function read(): Preferences {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return isObject(kept) ? sound(kept) : standard;
  } catch {
    return standard;
  }
}

function sound(kept: Record<string, unknown>): Preferences {
  const flag = (
    key: 'hears' | 'speaks' | 'confirms' | 'turned' | 'leftHanded' | 'toldToInstall',
  ) => (typeof kept[key] === 'boolean' ? kept[key] : standard[key]);
  const tone = isTone(kept['tone']) ? kept['tone'] : null;
  return {
    tone,
    hears: flag('hears') && tone !== null,
    patience:
      kept['patience'] === null || within(kept['patience'], 2, 60)
        ? kept['patience']
        : standard.patience,
    speaks: flag('speaks'),
    rate: within(kept['rate'], 0.5, 2) ? kept['rate'] : standard.rate,
    confirms: flag('confirms'),
    light: kept['light'] === 'bright' || kept['light'] === 'dark' ? kept['light'] : 'phone',
    language: isLanguage(kept['language']) ? kept['language'] : 'phone',
    turned: flag('turned'),
    leftHanded: flag('leftHanded'),
    toldToInstall: flag('toldToInstall'),
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const within = (value: unknown, low: number, high: number): value is number =>
  typeof value === 'number' && value >= low && value <= high;

const isTone = (value: unknown): value is Tone =>
  isObject(value) && within(value['hertz'], 1000, 6000) && within(value['power'], 0, 10);

export const preferences: Signal<Preferences> = signal(read());

/** Changes some of them; what cannot be kept on the disk holds until the page is closed. */
export function prefer(some: Partial<Preferences>): void {
  preferences.value = { ...preferences.value, ...some };
  try {
    localStorage.setItem(KEY, JSON.stringify(preferences.value));
  } catch {
    // A private window, or a full disk: the bar on every screen says so already.
  }
}

window.addEventListener('storage', ({ key }) => {
  if (key === KEY) preferences.value = read();
});
