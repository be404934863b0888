import { type Farads, farads } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import {
  type Choice,
  type Refusal,
  readAmount,
  refuse,
  tidy,
  withoutTolerance,
} from './entry-amount.ts';
import { formatFarads } from './entry-format.ts';

/** A capacitance from a display or from the marking on a part. */
export type FaradsEntry =
  | { readonly ok: true; readonly farads: Farads | 'open' | 'short' }
  | Refusal<Farads | 'open' | 'short'>;

/** Nothing in a guitar, and no hand meter's range, lies above. */
const LARGEST_FARADS = 1e-3;

/**
 * Factor of each suffix in lower case. `mfd` is the old trade spelling of microfarad
 * (common practice, no source); a lone `m` is refused, because it has been used for both.
 */
const SUFFIXES: ReadonlyMap<string, number> = new Map([
  ...each(1e-12, ['p', 'pf', 'pfd', 'picofarad', 'picofarads', 'μμf', 'uuf', 'mmf', 'mmfd']),
  ...each(1e-9, ['n', 'nf', 'nfd', 'nanofarad', 'nanofarads']),
  ...each(1e-6, ['u', 'uf', 'ufd', 'μ', 'μf', 'μfd', 'mfd', 'microfarad', 'microfarads']),
  ...each(1, ['f', 'farad', 'farads']),
]);

function each(factor: number, names: readonly string[]): [string, number][] {
  return names.map((name) => [name, factor]);
}

/**
 * Reads "22n", "0.022 µF", "1n5", "470p", "open", "short". A bare number is refused with choices:
 * it can be picofarads, microfarads or the three-digit code of IEC 60062 (two figures and the
 * number of zeros, in picofarads; from memory). `OL` on a capacitance range is asked about, because
 * it means too much capacitance or a leak there and not an open part.
 */
export function parseFarads(text: string): FaradsEntry {
  const entry = tidy(text);
  if (entry === undefined) return refuse(readingWords().thatIsTooLongForAValue);
  if (entry === '') return refuse(readingWords().typeTheCapacitanceWithIts);
  const word = entry.toLowerCase().replace(/ /g, '');
  if (word === 'open') return { ok: true, farads: 'open' };
  if (word === 'short' || word === 'shorted') return { ok: true, farads: 'short' };
  if (['ol', 'o.l', '0l', '0.l', '1', '1.', 'over', 'overload'].includes(word)) {
    return refuse(readingWords().entryOnACapacitanceRangeMeans(entry), [
      { title: readingWords().overRangeShorted, value: 'short' },
    ]);
  }
  const { text: unmarked, marked } = withoutTolerance(entry);
  const amount = readAmount(unmarked, /[pnuμ]/i);
  if (!amount) return refuse(readingWords().entryIsNotACapacitanceType(entry));
  if (amount.number < 0) return refuse(readingWords().entryIsBelowZeroWhichNoCapacitance(entry));
  if (amount.number === 0) {
    return refuse(readingWords().zeroCapacitanceDoesTheMeter, [
      { title: readingWords().yesOpen, value: 'open' },
    ]);
  }
  // With a tolerance behind it, three digits are nothing but the code.
  if (marked) return { ok: true, farads: coded(amount.number) };
  if (amount.suffix === '') return bareNumber(entry, amount.number);
  const factor = SUFFIXES.get(amount.suffix.toLowerCase());
  if (factor === undefined) {
    return refuse(readingWords().suffixIsNotAUnitOfCapacitance(amount.suffix));
  }
  const value = farads(amount.number * factor);
  if (value > LARGEST_FARADS) {
    return refuse(readingWords().entryIsMoreThanAnyCapacitor(entry));
  }
  if (amount.grouped === undefined) return { ok: true, farads: value };
  return refuse(
    readingWords().doesTheCommaOfEntryStandFor(entry),
    within([value, farads(amount.grouped * factor)]),
  );
}

/** Two figures and the number of zeros behind them, in picofarads. */
const coded = (digits: number): Farads =>
  farads(Math.floor(digits / 10) * 10 ** (digits % 10) * 1e-12);

function bareNumber(entry: string, number: number): FaradsEntry {
  const code = /^([1-9]\d)([0-6])$/.exec(entry);
  const readings = code ? [coded(number)] : [];
  readings.push(...(number < 10 ? [farads(number * 1e-6)] : []), farads(number * 1e-9));
  readings.push(...(number >= 10 ? [farads(number * 1e-12)] : []));
  return refuse(readingWords().entryOfWhatChooseTheUnit(entry), within(readings));
}

/** Each value once, and only those that a part can have. */
function within(values: readonly Farads[]): Choice<Farads>[] {
  const byTitle = new Map(
    values
      .filter((value) => value <= LARGEST_FARADS)
      .map((value) => [formatFarads(value, 4), value]),
  );
  return [...byTitle].map(([title, value]) => ({ title, value }));
}
