import { drawingWords } from '../../../words/en/drawings.ts';

/**
 * The colour a lead is drawn in, from the words a person uses for what they see; undefined where the words name no
 * colour. Of several ("green and white") the first counts: the words themselves stand beside the lead.
 */
export function insulationOf(words: string | undefined): string | undefined {
  return words
    ?.toLowerCase()
    .match(/\p{L}+/gu)
    ?.map((word) => COLOURS[inEnglish(word)])
    .find((colour) => colour !== undefined);
}

function inEnglish(word: string): string {
  const more = Object.entries(drawingWords().colours);
  return more.find(([, words]) => words.includes(word))?.[0] ?? word;
}

/** Plain words for colours; a table of what a colour means there is none. */
const COLOURS: Readonly<Record<string, string>> = {
  black: '#2A2D2E',
  white: '#F7F5EF',
  grey: '#8D9496',
  silver: '#B8BDBF',
  bare: '#C39A6B',
  copper: '#B87333',
  braid: '#B8BDBF',
  red: '#C4302B',
  orange: '#E07B1F',
  yellow: '#E3B81C',
  green: '#2E8B45',
  blue: '#2F6DB5',
  purple: '#7B4AA8',
  brown: '#7A4B26',
  pink: '#E58BA6',
  tan: '#CBA97A',
  turquoise: '#2BA5A0',
};
