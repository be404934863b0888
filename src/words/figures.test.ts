import { afterEach, describe, expect, it } from 'vitest';
import { hold, tongue } from './area.ts';
import { fixed } from './figures.ts';
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
});
