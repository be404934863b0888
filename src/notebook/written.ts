import { notebookWords } from '../words/en/notebook.ts';
import { jsonSpot } from './json-spot.ts';

/** Far above the largest job; a longer file of one is refused before it is parsed. */
export const LONGEST_FILE = 2_000_000;

export type Refused = {
  readonly ok: false;
  /** One line that says what is wrong and where; fit to show. */
  readonly sentence: string;
};

/** The JSON in the text of a file. Never throws. */
export function parsed(
  text: string,
  longest = LONGEST_FILE,
): { readonly ok: true; readonly raw: unknown } | Refused {
  if (text.length > longest)
    return refused(notebookWords().theFileIsTooLargeCountCharacters(text.length, longest));
  if (text.trim() === '') return refused(notebookWords().theFileIsEmpty);
  const json = text.replace(/^\uFEFF/, '');
  try {
    return { ok: true, raw: JSON.parse(json) };
  } catch {
    const { line, character } = jsonSpot(json);
    return refused(notebookWords().theFileIsNotJSONLineLine(line, character));
  }
}

export const refused = (sentence: string): Refused => ({ ok: false, sentence: oneLine(sentence) });

export const oneLine = (text: string): string => text.replace(/\s+/g, ' ').slice(0, 400);
