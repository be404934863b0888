/** Small letters without accents, so that a search finds what a thumb on a phone types. */
const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase();

/** Whether each word of `wanted` is somewhere in one of `texts`. Nothing wanted is found everywhere. */
export function isFound(wanted: string, texts: readonly string[]): boolean {
  const all = plain(texts.join('\n'));
  return plain(wanted)
    .split(/\s+/)
    .every((word) => all.includes(word));
}
