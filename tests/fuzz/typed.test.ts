import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseFarads, parseOhms } from '../../src/readings/entry.ts';
import { enterFarads, enterOhms } from '../../src/readings/expression.ts';
import { expectSentence, UNHURRIED, underFire } from './under-fire.ts';

const anyOf = (letters: string): fc.Arbitrary<string> =>
  fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom(...letters.split('')), maxLength: 12 }),
  );

const value = (one: unknown, most: number): void => {
  if (one === 'open' || one === 'short') return;
  expect(one).toSatisfy((number: number) => number >= 0 && number <= most);
};

interface Entry {
  readonly ok: boolean;
  readonly sentence?: string;
  readonly choices?: readonly { readonly value: unknown }[];
  readonly ohms?: unknown;
  readonly farads?: unknown;
}

function expectEntry(entry: Entry, most: number): void {
  if (entry.ok) value('ohms' in entry ? entry.ohms : entry.farads, most);
  else {
    expectSentence(entry.sentence!);
    expect(entry.sentence).not.toContain('NaN');
    for (const choice of entry.choices!) value(choice.value, most);
  }
}

describe('what is typed', UNHURRIED, () => {
  it('as a resistance may be anything', async () => {
    await underFire(
      'typed resistance',
      anyOf("0123456789.,-+ kKmMRΩohmegOL∞'e"),
      (text) => expectEntry(parseOhms(text), Number.MAX_VALUE),
      { few: 1000 },
    );
  });

  it('as a capacitance may be anything', async () => {
    await underFire(
      'typed capacitance',
      anyOf('0123456789.,-+ pnuµmfFdOL'),
      (text) => {
        const entry = parseFarads(text);
        expectEntry(entry, 1e-3);
        // Nothing and not connected are words there.
        expect(entry.ok && entry.farads).not.toBe(0);
      },
      { few: 1000 },
    );
  });

  it('as values to work out may be anything, and is worked out to finite values alone', async () => {
    const pieces = fc.constantFrom(
      ...'0 1 2 4k7 220k 1M 22n 5.9 , . ( ) + - * / || x and [ ] ! ^ = ; in series parallel ohm V'.split(
        ' ',
      ),
      ' ',
      'in series',
      'in parallel',
    );
    await underFire(
      'typed sum',
      fc.array(pieces, { maxLength: 9 }),
      async (words) => {
        expectEntry(await enterOhms(words.join(' ')), Number.MAX_VALUE);
        expectEntry(await enterFarads(words.join('')), Number.MAX_VALUE);
      },
      { few: 400 },
    );
  });
});
