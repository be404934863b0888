import { notebookWords } from '../words/en/notebook.ts';
/** Says what is wrong with a file or a stored record, and where: `readings[3].seen.ohms: expected ..., got ...`. */
export class JobShapeError extends Error {
  /** The place in the job, in the notation of the sentence; empty for the job as a whole. */
  readonly place: string;
  constructor(place: string, sentence: string) {
    super(place === '' ? sentence : notebookWords().placeSentence(place, sentence));
    this.name = 'JobShapeError';
    this.place = place;
  }
}

/** Throws JobShapeError where a value is not of the shape. Data is left as it is, key order included. */
export type Check = (value: unknown, place: string) => void;

const wrong = (place: string, expected: string, got: unknown): never => {
  throw new JobShapeError(place, notebookWords().expectedExpectedGotShown(expected, shown(got)));
};

/** A value in a sentence: short, on one line. */
export function shown(value: unknown): string {
  if (value === undefined) return notebookWords().nothing;
  if (Array.isArray(value)) return notebookWords().aList;
  if (typeof value === 'object' && value !== null) return notebookWords().anObject;
  const text = JSON.stringify(value) ?? typeof value;
  return text.length > 40 ? `${text.slice(0, 37)}..."` : text;
}

export const text =
  (what: () => string, longest: number, pattern?: RegExp): Check =>
  (value, place) => {
    if (typeof value !== 'string') wrong(place, what(), value);
    const string = value as string;
    if (string.length > longest)
      throw new JobShapeError(
        place,
        notebookWords().expectedWhatOfAtMostLongest(what(), longest, string.length),
      );
    if (pattern && !pattern.test(string)) wrong(place, what(), value);
  };

export const oneOf =
  (...allowed: readonly (string | number | boolean)[]): Check =>
  (value, place) => {
    if (!allowed.includes(value as string))
      wrong(place, allowed.map((one) => JSON.stringify(one)).join(notebookWords().or), value);
  };

/** A finite number from `least` to `most`; `words` are other answers allowed in its place. */
export const number =
  (what: () => string, least: number, most: number, ...words: readonly string[]): Check =>
  (value, place) => {
    if (words.includes(value as string)) return;
    if (!(typeof value === 'number' && value >= least && value <= most)) {
      const others = words
        .map((word) => notebookWords().orStringify(JSON.stringify(word)))
        .join('');
      wrong(
        place,
        notebookWords().whatFromLeastToMostOthers(what(), figure(least), figure(most), others),
        value,
      );
    }
  };

const figure = (value: number): string =>
  value >= 1e6 ? value.toExponential().replace('+', '') : String(value);

export const whole =
  (what: () => string, least: number, most: number): Check =>
  (value, place) => {
    number(what, least, most)(value, place);
    if (!Number.isInteger(value)) wrong(place, notebookWords().aWholeNumber, value);
  };

export const list =
  (check: Check, most: number, least = 0): Check =>
  (value, place) => {
    if (!Array.isArray(value)) return wrong(place, notebookWords().aList, value);
    if (value.length > most || value.length < least)
      throw new JobShapeError(
        place,
        notebookWords().expectedAListOfLeastToMost(least, most, value.length),
      );
    for (let index = 0; index < value.length; index++) check(value[index], `${place}[${index}]`);
  };

/** A list of fixed length, each place with its own check. */
export const tuple =
  (...checks: readonly Check[]): Check =>
  (value, place) => {
    list(() => {}, checks.length, checks.length)(value, place);
    checks.forEach((check, index) => {
      check((value as unknown[])[index], `${place}[${index}]`);
    });
  };

const plain = (value: unknown, place: string): Readonly<Record<string, unknown>> => {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return wrong(place, notebookWords().anObject, value);
  return value as Readonly<Record<string, unknown>>;
};

const inside = (place: string, key: string): string => (place === '' ? key : `${place}.${key}`);

/** An object with exactly these keys; a key that ends in `?` may be missing. Other keys are refused by name. */
export function object(keys: Readonly<Record<string, Check>>): Check {
  const checks = new Map(
    Object.entries(keys).map(([key, check]) => [
      key.replace(/\?$/, ''),
      { check, optional: key.endsWith('?') },
    ]),
  );
  return (value, place) => {
    const object = plain(value, place);
    for (const key of Object.keys(object))
      if (!checks.has(key))
        throw new JobShapeError(place, notebookWords().shownIsNotAKeyThatIs(shown(key)));
    for (const [key, { check, optional }] of checks) {
      if (Object.hasOwn(object, key)) check(object[key], inside(place, key));
      else if (!optional) throw new JobShapeError(inside(place, key), notebookWords().isMissing);
    }
  };
}

/** An object whose keys are names. */
export const record =
  (name: Check, check: Check, most: number): Check =>
  (value, place) => {
    const entries = Object.entries(plain(value, place));
    if (entries.length > most)
      throw new JobShapeError(
        place,
        notebookWords().expectedAtMostMostKeysGot(most, entries.length),
      );
    for (const [key, one] of entries) {
      name(key, notebookWords().placeTheKeyShown(place, shown(key)));
      check(one, inside(place, key));
    }
  };

/** One of several shapes, told apart by `kind`. */
export const byKind =
  (shapes: Readonly<Record<string, Check>>): Check =>
  (value, place) => {
    const { kind } = plain(value, place);
    oneOf(...Object.keys(shapes))(kind, inside(place, 'kind'));
    shapes[kind as string]?.(value, place);
  };
