import { readdirSync } from 'node:fs';
import { dutch } from '../../src/words/nl/index.ts';

/** Every string of a catalogue, and what its functions say where they only put in what they are given. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') {
    try {
      return textsOf(value('1', '1', '1', '1', '1'));
    } catch {
      return [];
    }
  }
  return typeof value === 'object' && value !== null && !(value instanceof RegExp)
    ? Object.values(value).flatMap(textsOf)
    : [];
}

export const wordsOf = (texts: readonly string[]): ReadonlySet<string> =>
  new Set(texts.flatMap((text) => text.toLowerCase().match(/\p{L}{3,}/gu) ?? []));

/** Words of English messages that no Dutch message has. To be asked for before another language is spoken. */
export async function englishWords(): Promise<ReadonlySet<string>> {
  const folder = new URL('../../src/words/en/', import.meta.url);
  const areas = await Promise.all(
    readdirSync(folder).map((file) => import(new URL(file, folder).href) as Promise<object>),
  );
  const english = areas.flatMap((area) =>
    Object.values(area).flatMap((words: () => object) => textsOf(words())),
  );
  const both = wordsOf(textsOf(dutch));
  return new Set([...wordsOf(english)].filter((word) => !both.has(word)));
}
