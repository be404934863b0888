import type { Page } from '@playwright/test';

/**
 * Puts a voice in the place of the one that this browser does not have, on every page opened from now on. What it is given is kept, and
 * told by what this returns.
 */
export async function withVoice(page: Page): Promise<() => Promise<string>> {
  await page.addInitScript(() => {
    const said: string[] = [];
    const voice = { lang: 'en-GB', localService: true, name: 'test' };
    Object.defineProperty(window, 'said', { value: said });
    Object.defineProperty(window, 'SpeechSynthesisUtterance', {
      value: class {
        onend: (() => void) | null = null;
        readonly text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
    });
    Object.defineProperty(window, 'speechSynthesis', {
      value: {
        getVoices: () => [voice],
        addEventListener: () => undefined,
        cancel: () => undefined,
        speak: (one: { text: string; onend: (() => void) | null }) => {
          said.push(one.text);
          setTimeout(() => one.onend?.(), 50);
        },
      },
    });
  });
  return () => page.evaluate(() => (window as unknown as { said: string[] }).said.join(' | '));
}
