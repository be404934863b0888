import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatOhms, parseOhms } from './entry.ts';

const ohmsOf = (text: string): number | 'open' | string => {
  const entry = parseOhms(text);
  return entry.ok ? entry.ohms : entry.sentence;
};

describe('a reading in ohms as people type it', () => {
  // Spellings met in public repair threads, with the value meant there; the others are common practice, no source.
  it.each([
    ['7.42k', 7420],
    ['7,42 k', 7420],
    ['7.48k ohms', 7480],
    ['430 K', 430e3],
    ['430 Kohm', 430e3],
    ['0.43M', 430e3],
    ['0.260 megohm', 260e3],
    ['5.7 kilohm', 5700],
    ['6 kohm', 6000],
    ['4.9kohms', 4900],
    ['11.5K ohms', 11500],
    ['around 3k ohms', 3000],
    ['5000 ohms', 5000],
    ['5900', 5900],
    ['5 900', 5900],
    ['0.3', 0.3],
    ['.47', 0.47],
    ['3.86 kΩ', 3860],
    ['3.86 k\u2126', 3860],
    ['1 Mohm', 1e6],
    ['1 ohm', 1],
    ['1k', 1000],
    ['0', 0],
    ['zero', 0],
    ['0.0 ohm', 0],
    ['22 M', 22e6],
  ])('%s is %d ohm', (text, value) => {
    expect(ohmsOf(text)).toBe(value);
  });

  // IEC 60062, the letter as decimal marker: R47 = 0.47 ohm, 4R7 = 4.7 ohm, 47R = 47 ohm, 4K7 = 4.7 kilohm, 4M7 = 4.7 megohm (values from memory).
  it.each([
    ['R47', 0.47],
    ['4R7', 4.7],
    ['47R', 47],
    ['470R', 470],
    ['1K0', 1000],
    ['4K7', 4700],
    ['47K', 47e3],
    ['7k42', 7420],
    ['M47', 470e3],
    ['4M7', 4.7e6],
    ['2k2 ohm', 2200],
    // A letter behind it is the tolerance: J 5 %, K 10 %.
    ['4K7J', 4700],
    ['R47K', 0.47],
    ['1M0G', 1e6],
  ])('the marking %s is %d ohm', (text, value) => {
    expect(ohmsOf(text)).toBe(value);
  });

  it.each([
    'OL',
    'ol',
    'O.L',
    '0L',
    '.OL',
    'open',
    'infinite',
    'infinity',
    '∞',
    'no reading',
    'blank',
    'over range',
  ])('%s is open', (text) => {
    expect(ohmsOf(text)).toBe('open');
  });

  it.each(['none', 'nothing', 'nil', 'dead', 'no continuity', '---', 'O'])(
    '%s is asked about, zero or open, and never guessed',
    (text) => {
      const entry = parseOhms(text);
      expect(entry).toMatchObject({
        ok: false,
        sentence: `What does the display show for "${text}": a zero, or no number at all?`,
      });
      expect(!entry.ok && entry.choices.map(({ value }) => value)).toEqual(['open', 0]);
    },
  );

  it('asks about a bare 1, which many displays show for over-range', () => {
    for (const text of ['1', '1.', ' 1 ']) {
      const entry = parseOhms(text);
      expect(!entry.ok && entry.choices.map(({ value }) => value)).toEqual(['open', 1]);
      expect(ohmsOf(text)).toBe('Is it a lone 1 at the left edge of the display, or one ohm?');
    }
  });

  it('asks about a small m, and takes a large M', () => {
    const entry = parseOhms('1m');
    expect(!entry.ok && entry.choices.map(({ value }) => value)).toEqual([1e6, 1e-3]);
    expect(ohmsOf('1M')).toBe(1e6);
    expect(ohmsOf('2 MOhm')).toBe(2e6);
  });

  it('asks about a comma that may group thousands', () => {
    const entry = parseOhms('5,900');
    expect(entry).toMatchObject({
      ok: false,
      sentence: 'Does the comma of "5,900" stand for a decimal point?',
      choices: [
        { title: 'Yes: 5.9 Ω', value: 5.9 },
        { title: 'No: 5.9 kΩ', value: 5900 },
      ],
    });
    expect(ohmsOf('0,470k')).toBe(470);
  });

  it.each([
    ['', 'Type what the display shows. If it shows no number, press OL.'],
    [
      '-5',
      '"-5" is below zero, which no resistance is. Check that the meter is set to ohms and that the guitar is unplugged.',
    ],
    [
      '5 volts',
      '"volts" is not a unit of resistance. Type k for thousands of ohms, M for millions, or nothing for ohm.',
    ],
    [
      'fine',
      '"fine" is not a reading. Type a number, with k or M if the display shows one, or OL.',
    ],
    ['5.4k 5.6k', '"5.4k 5.6k" is not a reading.'],
    ['7.4.2', '"7.4.2" is not a reading.'],
    ['22n', '"n" is not a unit of resistance.'],
    ['5e3', '"5e3" is not a reading.'],
    ['99999 M', '"99999 M" is more than any hand meter shows. If it shows no number, press OL.'],
    ['9'.repeat(60), 'That is too long for a reading. Type the one number.'],
  ])('%j is refused in words', (text, sentence) => {
    const entry = parseOhms(text);
    expect(entry.ok).toBe(false);
    expect(!entry.ok && entry.sentence).toContain(sentence);
  });

  it('reads back what it shows, at four figures', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-2, max: 9e8, noNaN: true }), (value) => {
        const entry = parseOhms(formatOhms(value as never, 4));
        // A bare "1 Ω" carries its unit, so nothing is in doubt.
        expect(entry.ok && entry.ohms !== 'open' && entry.ohms / value).toBeCloseTo(1, 2.9);
      }),
    );
  });
});
