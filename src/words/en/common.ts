import { area } from '../area.ts';

/** Ways of putting words together that every area needs. */
const common = {
  /** "a, b and c". */
  and: (words: readonly string[]) => listed(words, 'and'),
  /** "a, b or c". */
  or: (words: readonly string[]) => listed(words, 'or'),
  /**
   * Finds in an act what stands before the probes, the place of the red and of the black one, and what comes after.
   */
  probes: /^(.*?)\bR on (.+), B on (.+?)(?:\. ([A-Z].*)|\.?)$/s,
  on: 'on',
  /** A day in a list; months count from 0. */
  day: (day: number, month: number, year: number) =>
    `${day}\u00a0${months[month] ?? ''}\u00a0${year}`,
  /** A title of the person's or the app's inside a sentence. */
  theTitled: (title: string) => (/^\p{Ll}/u.test(title) ? `the ${title}` : title),
  /** A place without its article, for the first word of a table. */
  bare: (place: string) => place.replace(/^the /, ''),
};

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

const listed = (words: readonly string[], last: string): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;

export const commonWords = area('common', common);
