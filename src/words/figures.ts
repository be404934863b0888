import { tongue } from './area.ts';
import { commonWords } from './en/common.ts';

/**
 * How a figure is rounded, by the names that ECMA-402 gives to the options of a number format. Without any it has at most twelve
 * decimals.
 */
export interface Rounding {
  readonly minimumFractionDigits?: number;
  readonly maximumFractionDigits?: number;
  readonly minimumSignificantDigits?: number;
  readonly maximumSignificantDigits?: number;
}

/**
 * The decimal signs of the locales that most phones with a language of the bench have; `figures.test.ts` holds them to the Unicode
 * CLDR. Whichever is not here is asked of the browser, which reads its rules for figures and holds up the screen while it does: a
 * hundred milliseconds and more on a slow phone.
 */
export const SIGNS: Readonly<Record<string, string>> = {
  en: '.',
  'en-US': '.',
  'en-GB': '.',
  'en-AU': '.',
  'en-CA': '.',
  'en-IE': '.',
  'en-IN': '.',
  'en-NZ': '.',
  'en-ZA': ',',
  nl: ',',
  'nl-NL': ',',
  'nl-BE': ',',
};

const asked = new Map<string, string>();

/** Between whole and parts: "." or ",". */
export function decimalSign(): string {
  const { locale } = tongue();
  const known = SIGNS[locale] ?? asked.get(locale);
  if (known) return known;
  const sign = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).format(1.5).charAt(1);
  asked.set(locale, sign);
  return sign;
}

/** A figure with the decimal sign of the person's locale and no sign between thousands: "7.85", "7,85". */
export function figure(value: number, rounding: Rounding = {}): string {
  if (!Number.isFinite(value)) return Number.isNaN(value) ? 'NaN' : value < 0 ? '-∞' : '∞';
  const { digits, point } = rounded(shortest(Math.abs(value)), rounding);
  const whole = point > 0 ? digits.slice(0, point).padEnd(point, '0') : '0';
  const parts = point > 0 ? digits.slice(point) : '0'.repeat(-point) + digits;
  const least = rounding.minimumSignificantDigits ?? 0;
  const zeros = Math.max(rounding.minimumFractionDigits ?? 0, least - point);
  const shown = parts.replace(/0+$/, '').padEnd(zeros, '0');
  const minus = value < 0 || Object.is(value, -0) ? '-' : '';
  return `${minus}${whole}${shown && decimalSign() + shown}`;
}

/** With just so many decimals, as `toFixed`. */
export const fixed = (value: number, decimals: number): string =>
  figure(value, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });

/** A day, written so that no other day can be meant: "31 Dec 2026". */
export function dateText(moment: string): string {
  const day = new Date(moment);
  return commonWords().day(day.getDate(), day.getMonth(), day.getFullYear());
}

/** Decimal digits, and how many of them stand before the decimal sign; below 0.1 that is less than none. */
interface Decimal {
  readonly digits: string;
  readonly point: number;
}

/** The shortest decimal that is read back as this number (ECMA-262, Number::toString). */
function shortest(value: number): Decimal {
  const [mantissa = '', exponent = '0'] = value.toExponential().split('e');
  return { digits: mantissa.replace('.', ''), point: Number(exponent) + 1 };
}

/** Rounded half away from zero, as ECMA-402 has it where nothing else is said. */
function rounded({ digits, point }: Decimal, rounding: Rounding): Decimal {
  const { maximumSignificantDigits: significant, maximumFractionDigits = 12 } = rounding;
  const kept =
    significant ?? point + Math.max(maximumFractionDigits, rounding.minimumFractionDigits ?? 0);
  if (kept >= digits.length) return { digits, point };
  if (kept < 0) return { digits: '0', point: 1 };
  const up = digits.charAt(kept) >= '5';
  const head = digits.slice(0, kept);
  if (!up) return { digits: head || '0', point: head ? point : 1 };
  // One more in the last place that is kept; a carry out of the first makes it longer.
  const more = (BigInt(head || '0') + 1n).toString().padStart(kept, '0');
  return { digits: more, point: point + (more.length - kept) };
}
