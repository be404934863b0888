import type { commonWords as English } from '../en/common.ts';
import { de } from './nouns.ts';

export const common: ReturnType<typeof English> = {
  and: (words: readonly string[]) => listed(words, 'en'),
  or: (words: readonly string[]) => listed(words, 'of'),
  probes: /^(.*?)\bR op (.+), B op (.+?)(?:\. ([A-Z].*)|\.?)$/s,
  on: 'op',
  day: (day: number, month: number, year: number) =>
    `${day}\u00a0${months[month] ?? ''}\u00a0${year}`,
  theTitled: (title: string) => (/^\p{Ll}/u.test(title) ? de(title) : title),
  bare: (place: string) => place.replace(/^(de|het) /, ''),
};

const months = ['jan', 'feb', 'mrt', 'apr', 'mei', 'jun', 'jul', 'aug', 'sep', 'okt', 'nov', 'dec'];

const listed = (words: readonly string[], last: string): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
