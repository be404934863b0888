import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { hold, tongue } from './area.ts';
import { dateText, decimalSign, figure, fixed, SIGNS } from './figures.ts';
import { speakIn } from './speak.ts';

const dutch = { language: 'nl', locale: 'nl-NL' } as const;

afterEach(() => hold({ language: 'en', locale: 'en' }, {}));

describe('figures', () => {
  it('have the decimal sign of the locale, and no sign between thousands', async () => {
    expect([fixed(7.85, 2), fixed(12345, 1)]).toEqual(['7.85', '12345.0']);
    await speakIn(dutch);
    expect(tongue()).toEqual(dutch);
    expect([fixed(7.85, 2), fixed(12345, 1)]).toEqual(['7,85', '12345,0']);
  });

  /** As the JavaScript engine formats it, by ECMA-402. */
  const standard = (value: number, rounding: object): string =>
    new Intl.NumberFormat('en', {
      numberingSystem: 'latn',
      useGrouping: false,
      maximumFractionDigits: 12,
      ...rounding,
    }).format(value);

  it('are written as the number format of ECMA-402 writes them', () => {
    const roundings = [
      {},
      { maximumFractionDigits: 1 },
      ...[1, 2, 3, 4, 5].map((digits) => ({ maximumSignificantDigits: digits })),
      ...[0, 1, 2].map((digits) => ({
        minimumFractionDigits: digits,
        maximumFractionDigits: digits,
      })),
      { minimumSignificantDigits: 3, maximumSignificantDigits: 3 },
    ];
    const values = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.double({ min: -1e7, max: 1e7, noNaN: true }),
      // Halves, where rounding can go either way.
      fc.integer({ min: -200_000, max: 200_000 }).map((whole) => whole / 200),
      fc.integer({ min: -100_000, max: 100_000 }),
      fc.constantFrom(0, -0, 0.999, 9.995, 99.95, 999.5, 1.005, 0.05, 0.5, 1e-12, 5e-13, 1e21),
    );
    fc.assert(
      fc.property(values, fc.constantFrom(...roundings), (value, rounding) => {
        expect(figure(value, rounding)).toBe(standard(value, rounding));
      }),
      { numRuns: 2000 },
    );
  });

  it('know the sign of a locale as the Unicode CLDR has it', () => {
    for (const [locale, sign] of Object.entries({ ...SIGNS, 'en-DE': ',', 'nl-SR': ',' })) {
      const language = locale.startsWith('nl') ? 'nl' : 'en';
      hold({ language, locale }, {});
      expect(decimalSign(), locale).toBe(sign);
      const format = new Intl.NumberFormat(locale, { numberingSystem: 'latn' });
      expect(format.formatToParts(1.5).find(({ type }) => type === 'decimal')?.value).toBe(sign);
    }
  });
});

describe('a day', () => {
  it('is written with its month in words', async () => {
    const moment = new Date(2026, 2, 31, 12).toISOString();
    expect(dateText(moment)).toBe('31\u00a0Mar\u00a02026');
    await speakIn(dutch);
    expect(dateText(moment)).toBe('31\u00a0mrt\u00a02026');
  });
});
