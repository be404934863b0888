import { decimalSign } from '../words/figures.ts';

/** A reading that means one of several things: the screen shows `sentence` and lets the person choose. */
export interface Choice<V> {
  readonly title: string;
  readonly value: V;
}

/** Text that was not taken. `choices` is empty where nothing sensible can be offered. */
export interface Refusal<V> {
  readonly ok: false;
  readonly sentence: string;
  readonly choices: readonly Choice<V>[];
}

export const refuse = <V>(sentence: string, choices: readonly Choice<V>[] = []): Refusal<V> => ({
  ok: false,
  sentence,
  choices,
});

/** Longer than any display or any marking on a part. */
const LONGEST_ENTRY = 48;

/** A number with what stands behind it, as typed: `7,42` and `k` of "7,42 k". */
export interface Amount {
  readonly number: number;
  /** The letters behind the number without spaces, case kept: "k", "Mohm", "µF"; empty for a bare number. */
  readonly suffix: string;
  /** The number if its sign groups thousands: 5900 for "5,900", beside 5.9; in a locale of decimal commas for "5.900". */
  readonly grouped?: number;
}

/**
 * One spelling for what looks the same: compatibility forms (the ohm sign and omega, the micro sign
 * and mu, hard spaces) by Unicode NFKC, then single spaces, then no "about" in front.
 * Returns undefined where the text is longer than an entry can be.
 */
export function tidy(text: string): string | undefined {
  if (text.length > LONGEST_ENTRY) return undefined;
  return text
    .normalize('NFKC')
    .replace(/\u2212/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^(?:about |around |circa |ca\.? |~ ?|\u2248 ?)/i, '');
}

/**
 * Reads "7.42k", "7,42 k", "5 900" and the form with the letter in the place of the decimal point,
 * "7k42", "4M7", "1n5", "R47", which is the marking code of IEC 60062 (its letters from memory).
 * Points and commas are decimal; spaces group thousands. A sign that may do either is told by `grouped`. Never returns a number that is not finite.
 */
export function readAmount(text: string, markers: RegExp): Amount | undefined {
  const coded = /^(\d{0,4})(\p{L})(\d{1,4}) ?([\p{L} ]*)$/u.exec(text);
  if (coded) {
    const [, whole = '', letter = '', part = '', unit = ''] = coded;
    if (!markers.test(letter)) return undefined;
    return { number: Number(`${whole || '0'}.${part}`), suffix: closeUp(letter + unit) };
  }
  const plain = /^([+-]?(?:\d+|\d{1,3}(?: \d{3})+)?(?:[.,]\d*)?) ?([\p{L}' ]*\.?)$/u.exec(text);
  const digits = plain?.[1] ?? '';
  if (!plain || !/\d/.test(digits)) return undefined;
  const number = Number(digits.replace(/ /g, '').replace(',', '.'));
  if (!Number.isFinite(number)) return undefined;
  const suffix = closeUp(plain[2] ?? '');
  // "5,900" is 5.9 to one half of the world and 5900 to the other.
  // The decimal sign of the person's own locale is no question.
  const [, sign] = /^[+-]?[1-9]\d{0,2}([.,])\d{3}$/.exec(digits) ?? [];
  return sign === undefined || sign === decimalSign()
    ? { number, suffix }
    : { number, suffix, grouped: Number(digits.replace(sign, '')) };
}

/**
 * A marking without the letter for its tolerance behind it: "4K7J", "1n5K", "223J". Letters of IEC 60062: G 2 %, J 5 %, K 10 %, M 20 % (from
 * memory); F, 1 %, is left out, as it is the farad. The letter only counts where another one, or a three-digit code, gives the value.
 */
export function withoutTolerance(entry: string): {
  readonly text: string;
  readonly marked: boolean;
} {
  const [, coded] = /^(\d{0,3}[RKMpnuμ]\d{1,3})[GJKM]$/i.exec(entry) ?? [];
  const [, digits] = /^([1-9]\d[0-6])[GJKM]$/i.exec(entry) ?? [];
  return { text: coded ?? digits ?? entry, marked: digits !== undefined };
}

const closeUp = (letters: string): string => letters.replace(/[ '.]/g, '');
