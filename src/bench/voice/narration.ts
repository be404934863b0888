import { useEffect } from 'preact/hooks';
import { preferences } from '../preferences.ts';
import { spokenOf } from './spoken.ts';
import { findVoice, hush, speak } from './voice.ts';

/** What the bench says where a conversation stands. A new key is said once. */
export interface Narration {
  readonly key: string;
  /** Worked out where it is said: read it no sooner. */
  readonly text: string;
}

/** Where there is nothing to say. */
export const nothingSaid: Narration = { key: '', text: '' };

/** After a reading that was heard or spoken the conversation goes on by itself, seconds after the result was said. */
const lookFor = 2.5;

/**
 * Says where the conversation stands.
 * @param onwards goes on from here once it was said, while the phone hears
 */
export function useNarration(narration: Narration, onwards?: () => void): void {
  const { key } = narration;
  const { speaks, hears } = preferences.value;
  useEffect(() => {
    if (speaks) findVoice();
  }, [speaks]);
  useEffect(() => {
    let gone = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const said = speaks ? speak(spokenOf(narration.text)) : Promise.resolve();
    void said.then(() => {
      if (!onwards || !hears || gone) return;
      timer = setTimeout(onwards, 1000 * lookFor);
    });
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [key]);
  useEffect(() => hush, []);
}
