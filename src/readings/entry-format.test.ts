import { describe, expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { speakIn } from '../words/speak.ts';
import { formatOhms } from './entry.ts';

describe('ohms in words', () => {
  it.each([
    [7420, '7.42 kΩ'],
    [430e3, '430 kΩ'],
    [0.3, '0.3 Ω'],
    [0, '0 Ω'],
    [999.9, '1 kΩ'],
    [999.4, '999 Ω'],
    [999_999, '1 MΩ'],
    [11_340, '11.3 kΩ'],
    [4.7e6, '4.7 MΩ'],
    [1e9, '1 GΩ'],
    [7.1e-9, '0.0000000071 Ω'],
  ])('%d is %s', (value, text) => {
    expect(formatOhms(ohms(value))).toBe(text);
  });

  it('says both what the display shows and what it means', () => {
    expect(formatOhms('open')).toBe('OL (open)');
  });

  it('follows the locale, and shows four figures where asked', async () => {
    await speakIn({ language: 'en', locale: 'de' });
    expect(formatOhms(ohms(7425), 4)).toBe('7,425 kΩ');
    await speakIn({ language: 'en', locale: 'en' });
    expect(formatOhms(ohms(7425), 4)).toBe('7.425 kΩ');
  });
});
