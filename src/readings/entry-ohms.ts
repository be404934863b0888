import { type Ohms, ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import {
  type Amount,
  type Choice,
  type Refusal,
  readAmount,
  refuse,
  tidy,
  withoutTolerance,
} from './entry-amount.ts';
import { formatOhms } from './entry-format.ts';

/** A resistance as shown by a display: ohms, or `open` for the over-range sign. */
export type OhmsEntry =
  | { readonly ok: true; readonly ohms: Ohms | 'open' }
  | Refusal<Ohms | 'open'>;

/** Above this no hand meter shows a figure. */
const LARGEST_OHMS = 1e9;

/**
 * What displays show, or people say, for "more than I can measure". Zero and L are drawn alike on a
 * seven-segment display, hence `0l`. Common practice, no source.
 */
const OPEN_WORDS = new Set(
  'ol o.l .ol 0l 0.l .0l open oc inf infinite infinity ∞ blank over overrange overload noreading nofigure nonumber'.split(
    ' ',
  ),
);

/** Words that some people use for zero ohm and others for no reading at all. Never guessed. */
const ZERO_OR_OPEN_WORDS = new Set(
  'none nothing nil null no o zip dead nocontinuity nocontact - -- --- ----'.split(' '),
);

/** Factor of each suffix, in lower case; `m` alone is settled by its own question. */
const SUFFIXES: ReadonlyMap<string, number> = new Map([
  ...each(1, ['', 'r', 'ohm', 'ohms', 'ω']),
  ...each(1e3, ['k', 'kω', 'kohm', 'kohms', 'kilohm', 'kilohms', 'kiloohm', 'kiloohms', 'kilo']),
  ...each(1e6, ['meg', 'megs', 'mega', 'megohm', 'megohms', 'megaohm', 'megaohms', 'megω']),
  ...each(1e9, ['g', 'gω', 'gohm', 'gohms', 'gigaohm', 'gigaohms', 'gigohm']),
]);
const MEGA_OR_MILLI = new Set(['m', 'mω', 'mohm', 'mohms']);

function each(factor: number, names: readonly string[]): [string, number][] {
  return names.map((name) => [name, factor]);
}

/**
 * Reads what a person typed for an ohms reading. Text with one meaning is taken; text with two is
 * refused with a question and both answers as choices; zero is zero ohm and never open.
 * A bare "1" is such a question: many displays show a lone 1 at the left edge for over-range.
 * Never throws, never returns a number that is not finite, never a negative one.
 */
export function parseOhms(text: string): OhmsEntry {
  const entry = tidy(text);
  if (entry === undefined) return refuse(readingWords().thatIsTooLongForAReading);
  if (entry === '') {
    return refuse(readingWords().typeWhatTheDisplayShowsIf);
  }
  const word = entry.toLowerCase().replace(/ /g, '');
  if (OPEN_WORDS.has(word) || readingWords().openWords.includes(word))
    return { ok: true, ohms: 'open' };
  if (ZERO_OR_OPEN_WORDS.has(word) || readingWords().zeroOrOpenWords.includes(word))
    return zeroOrOpen(entry);
  if (word === 'zero') return { ok: true, ohms: ohms(0) };
  if (word === '1' || word === '1.') return overRangeOrOne();
  // A three-digit code with a K behind it would be kilohms here: the letter counts behind a decimal letter alone.
  const { text: unmarked, marked } = withoutTolerance(entry);
  const amount = readAmount(marked ? entry : unmarked, /[rkmgω]/i);
  if (!amount) {
    return refuse(readingWords().entryIsNotAReadingTypeA(entry));
  }
  if (amount.number < 0) {
    return refuse(readingWords().entryIsBelowZeroWhichNoResistance(entry));
  }
  return scaled(entry, amount);
}

function scaled(entry: string, amount: Amount): OhmsEntry {
  const suffix = amount.suffix.toLowerCase();
  if (MEGA_OR_MILLI.has(suffix)) {
    if (amount.suffix.startsWith('M')) return withFactor(entry, amount, 1e6);
    const [mega, milli] = [ohms(amount.number * 1e6), ohms(amount.number / 1e3)];
    if (mega === 0) return { ok: true, ohms: mega };
    return refuse(readingWords().isTheMOfEntryALarge(entry), [
      ...(mega <= LARGEST_OHMS ? [{ title: formatOhms(mega), value: mega }] : []),
      { title: readingWords().milliMilliohm(formatOhms(milli)), value: milli },
    ]);
  }
  const factor = SUFFIXES.get(suffix);
  if (factor === undefined) {
    return refuse(readingWords().suffixIsNotAUnitOfResistance(amount.suffix));
  }
  return withFactor(entry, amount, factor);
}

function withFactor(entry: string, amount: Amount, factor: number): OhmsEntry {
  const value = ohms(amount.number * factor);
  if (value > LARGEST_OHMS) {
    return refuse(readingWords().entryIsMoreThanAnyHandMeter(entry));
  }
  if (amount.grouped === undefined) return { ok: true, ohms: value };
  const large = ohms(amount.grouped * factor);
  const choices: Choice<Ohms | 'open'>[] = [
    { title: readingWords().yesValue(formatOhms(value, 4)), value },
  ];
  if (large <= LARGEST_OHMS)
    choices.push({ title: readingWords().noLarge(formatOhms(large, 4)), value: large });
  return refuse(readingWords().doesTheCommaOfEntryStandFor(entry), choices);
}

const question = (sentence: string, choices: readonly Choice<Ohms | 'open'>[]): OhmsEntry =>
  refuse(sentence, choices);

function zeroOrOpen(entry: string): OhmsEntry {
  return question(readingWords().whatDoesTheDisplayShowFor(entry), [
    { title: readingWords().olALone1OrNoNumber, value: 'open' },
    { title: readingWords().n0AZero, value: ohms(0) },
  ]);
}

function overRangeOrOne(): OhmsEntry {
  return question(readingWords().isItALone1AtThe, [
    { title: readingWords().aLone1OverRange, value: 'open' },
    { title: '1 Ω', value: ohms(1) },
  ]);
}
