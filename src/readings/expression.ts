import type { ConstantNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import { type Farads, farads, type Ohms, ohms } from '../circuit/units.ts';
import { readingWords } from '../words/en/readings.ts';
import { refuse } from './entry-amount.ts';
import { type FaradsEntry, parseFarads } from './entry-farads.ts';
import { type OhmsEntry, parseOhms } from './entry-ohms.ts';
import type { Term } from './expression-math.ts';

type Maths = typeof import('./expression-math.ts');

/** Long enough for six resistors in a row. */
const LONGEST_EXPRESSION = 80;
/** What makes a text more than one value. */
const ARITHMETIC = /[+*/|∥()×]|\d\s?x\s?\d|.-|\b(?:and|in series|in parallel)\b/i;
/** A value with letters behind it or in it: "220k", "4k7", "5.9 kohm", "9 V". */
const VALUE = /\d[\d.,]*(?:\s?[\p{L}]+)?\d*/gu;
/** Units that may stand beside the short spellings, so that "9 V / 0.5 mA" works. */
const UNITS = new Set('ohm kohm Mohm V mV A mA uA F uF nF pF'.split(' '));

/** Not understood, in words. It never leaves this file. */
class Misread extends Error {}

/**
 * Reads a value or arithmetic on values: "2x220k in series", "1 Mohm || 500 kohm", "5.9k + 30 ohm",
 * "9 V / 0.5 mA". A single value goes the short way and loads nothing. `||` is "in parallel".
 */
export async function enterOhms(text: string): Promise<OhmsEntry> {
  const short = parseOhms(text);
  if (short.ok || short.choices.length > 0 || !ARITHMETIC.test(readingWords().sumInEnglish(text)))
    return short;
  return await calculated(text, 'ohm', (value) =>
    value <= 1e9
      ? { ok: true, ohms: ohms(value) }
      : refuse<Ohms | 'open'>(readingWords().textIsMoreThanAnyResistor(text)),
  );
}

/** As `enterOhms`, for capacitance: in series capacitors share, in parallel they add. */
export async function enterFarads(text: string): Promise<FaradsEntry> {
  const short = parseFarads(text);
  if (short.ok || short.choices.length > 0 || !ARITHMETIC.test(readingWords().sumInEnglish(text)))
    return short;
  return await calculated(text, 'farad', (value) =>
    value > 0 && value <= 1e-3
      ? { ok: true, farads: farads(value) }
      : refuse<Farads | 'open' | 'short'>(readingWords().textIsNoCapacitanceOfAGuitars(text)),
  );
}

async function calculated<Entry>(
  text: string,
  quantity: 'ohm' | 'farad',
  entryOf: (value: number) => Entry,
): Promise<Entry | ReturnType<typeof refuse<never>>> {
  if (text.length > LONGEST_EXPRESSION)
    return refuse(readingWords().thatIsLongerThan(LONGEST_EXPRESSION));
  try {
    const maths = await import('./expression-math.ts');
    return entryOf(amountOf(total(text, quantity, maths), quantity, maths));
  } catch (error) {
    if (error instanceof Misread) return refuse(error.message);
    return refuse(readingWords().textCouldNotBeWorkedOutType(text));
  }
}

/** "A and B in series", "3 x A in parallel", or plain arithmetic. */
function total(text: string, quantity: 'ohm' | 'farad', maths: Maths): Term {
  const [, list, how] =
    /^(.*\S)\s+in\s+(series|parallel)\s*$/i.exec(readingWords().sumInEnglish(text)) ?? [];
  if (list === undefined || how === undefined) return arithmetic(text, quantity, maths);
  const adds = (how.toLowerCase() === 'series') === (quantity === 'ohm');
  const parts = list.split(/\s+and\s+|;|,\s/i).flatMap((item) => copies(item, quantity, maths));
  if (parts.length < 2)
    throw new Misread(
      how === 'series'
        ? readingWords().onlyOneValueInSeries(text)
        : readingWords().onlyOneValueInParallel(text),
    );
  return parts.reduce((sum, part) => (adds ? maths.add(sum, part) : shared(sum, part, maths)));
}

function copies(item: string, quantity: 'ohm' | 'farad', maths: Maths): readonly Term[] {
  const [, count, one] = /^\s*(\d{1,2})\s?[x×*]\s?(.+)$/i.exec(item) ?? [];
  const term = arithmetic(one ?? item, quantity, maths);
  const times = count === undefined ? 1 : Number(count);
  if (times < 1) throw new Misread(readingWords().trimIsNoPartAtAll(item.trim()));
  return Array.from({ length: times }, () => term);
}

/** 1 / (1/a + 1/b), written so that a short stays a short. */
const shared = (a: Term, b: Term, maths: Maths): Term =>
  maths.divide(maths.multiply(a, b), maths.add(a, b));

function arithmetic(text: string, quantity: 'ohm' | 'farad', maths: Maths): Term {
  const spelled = text
    .normalize('NFKC')
    .replace(/\|\||∥/g, '|')
    .replace(/(\d)\s?[x×]\s?(?=[\d.(])/gi, '$1*')
    .replace(VALUE, (value) => spelledOut(value, quantity));
  return evaluate(maths.parse(spelled), quantity, maths);
}

/** The short spellings in full: "4k7" becomes "(4700 ohm)"; a bare number stays one. */
function spelledOut(value: string, quantity: 'ohm' | 'farad'): string {
  if (/^\d+(?:[.,]\d+)?$/.test(value)) return value.replace(',', '.');
  const entry = quantity === 'ohm' ? parseOhms(value) : parseFarads(value);
  if (!entry.ok) {
    if (entry.choices.length > 0) throw new Misread(entry.sentence);
    return value;
  }
  return `(${'ohms' in entry ? entry.ohms : entry.farads} ${quantity})`;
}

/** Walks the tree: only numbers, units, brackets and the operations below; everything else is refused by name. */
function evaluate(node: MathNode, quantity: 'ohm' | 'farad', maths: Maths): Term {
  const go = (child: MathNode): Term => evaluate(child, quantity, maths);
  switch (node.type) {
    case 'ConstantNode': {
      const { value } = node as ConstantNode<number>;
      if (typeof value !== 'number') throw new Misread(readingWords().aValueIsMissingOrIsNo);
      return value;
    }
    case 'ParenthesisNode':
      return go((node as ParenthesisNode).content);
    case 'SymbolNode': {
      const { name } = node as SymbolNode;
      if (!UNITS.has(name) && name !== 'farad')
        throw new Misread(readingWords().noUnitThatIsKnown(name));
      return maths.unit(name);
    }
    case 'OperatorNode': {
      const { fn, args } = node as OperatorNode;
      const [a, b] = args as MathNode[];
      if (a && b) {
        if (fn === 'add') return sameKind(maths.add, go(a), go(b));
        if (fn === 'subtract') return sameKind(maths.subtract, go(a), go(b));
        if (fn === 'multiply') return maths.multiply(go(a), go(b));
        if (fn === 'divide') return maths.divide(go(a), go(b));
        if (fn === 'bitOr') return parallel(a, b, quantity, maths);
      }
      throw new Misread(readingWords().onlySignsAre(asWritten(node)));
    }
    default:
      throw new Misread(readingWords().typeValuesWith(asWritten(node)));
  }
}

/** In a sentence, so on one line: the parts of "1; 2" stand on lines of their own. */
const asWritten = (node: MathNode): string => node.toString().replace(/\s+/g, ' ');

/** With + beside it and no brackets, || can be read in two ways; then it is not read at all. */
function parallel(a: MathNode, b: MathNode, quantity: 'ohm' | 'farad', maths: Maths): Term {
  for (const side of [a, b])
    if (side.type === 'OperatorNode' && /add|subtract/.test((side as OperatorNode).fn))
      throw new Misread(readingWords().putBracketsAroundWhatIsIn);
  const [x, y] = [evaluate(a, quantity, maths), evaluate(b, quantity, maths)];
  return quantity === 'farad' ? sameKind(maths.add, x, y) : shared(x, y, maths);
}

function sameKind(operate: (a: Term, b: Term) => Term, a: Term, b: Term): Term {
  if ((typeof a === 'number') !== (typeof b === 'number'))
    throw new Misread(readingWords().giveEveryValueOfTheSumIts);
  return operate(a, b);
}

function amountOf(term: Term, quantity: 'ohm' | 'farad', maths: Maths): number {
  const name = quantity === 'ohm' ? readingWords().aResistance : readingWords().aCapacitance;
  if (typeof term === 'number' && quantity === 'farad')
    throw new Misread(readingWords().giveTheValuesTheirUnitPN);
  if (typeof term !== 'number' && !term.equalBase(maths.unit(quantity)))
    throw new Misread(readingWords().thatDoesNotComeOutAsName(name));
  const value = typeof term === 'number' ? term : term.toNumber(quantity);
  if (!(Number.isFinite(value) && value >= 0))
    throw new Misread(readingWords().thatComesOutBelowZeroOrWithout(name));
  return Number(value.toPrecision(12));
}
