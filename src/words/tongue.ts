/** A language that the bench speaks. */
export type Language = 'en' | 'nl';

/** How a person is spoken to. */
export interface Tongue {
  readonly language: Language;
  /** Whose decimal sign figures have, as a BCP 47 tag. */
  readonly locale: string;
}

/** Each language in its own name. */
export const languageNames: Readonly<Record<Language, string>> = {
  en: 'English',
  nl: 'Nederlands',
};

export const isLanguage = (code: unknown): code is Language =>
  typeof code === 'string' && Object.hasOwn(languageNames, code);
const languageOf = (tag: string): string => tag.split('-', 1)[0]?.toLowerCase() ?? '';

/**
 * The language to speak: the chosen one, or the first of the phone's that the bench knows, or English. Figures are written as the phone's
 * own tag of that language has it.
 * @param tags the phone's languages, the dearest first (`navigator.languages`)
 */
export function tongueFor(chosen: Language | 'phone', tags: readonly string[]): Tongue {
  const language = chosen === 'phone' ? (tags.map(languageOf).find(isLanguage) ?? 'en') : chosen;
  return { language, locale: tags.find((tag) => languageOf(tag) === language) ?? language };
}
