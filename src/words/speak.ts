import { hold, tongue } from './area.ts';
import type { Language, Tongue } from './tongue.ts';

/** English comes with the screens; every other language in one piece, when it is first spoken. */
const translations: Readonly<Record<Language, () => Promise<Readonly<Record<string, object>>>>> = {
  en: async () => ({}),
  nl: async () => ({ ...(await import('./nl/index.ts')).dutch }),
};

/**
 * Changes what is spoken, once its messages are there; rejects where they cannot be fetched. What was said already stays as it
 * was said.
 */
export async function speakIn(wanted: Tongue): Promise<void> {
  const same = wanted.language === tongue().language;
  hold(wanted, same ? undefined : await translations[wanted.language]());
}
