import { readdirSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { parseOhms } from '../../src/readings/entry.ts';
import { enterOhms } from '../../src/readings/expression.ts';
import { hold } from '../../src/words/area.ts';
import { faultWords } from '../../src/words/en/faults.ts';
import { speakIn } from '../../src/words/speak.ts';

const folder = (language: string) => new URL(`../../src/words/${language}/`, import.meta.url);
const dutch = { language: 'nl', locale: 'nl-NL' } as const;

afterEach(() => hold({ language: 'en', locale: 'en' }, {}));

describe('the catalogues', () => {
  // The type check holds that no message is missing; that an area is asked for by its own name it cannot see.
  it.each(readdirSync(folder('en')))('give another language in %s', async (file) => {
    const english = (await import(new URL(file, folder('en')).href)) as Record<
      string,
      () => object
    >;
    const [messages] = Object.values(english);
    const before = messages?.();
    await speakIn(dutch);
    const after = messages?.();
    expect(after).not.toBe(before);
    expect(Object.keys(after ?? {}).sort()).toEqual(Object.keys(before ?? {}).sort());
  });

  it('speak as they are asked at the time', async () => {
    expect(faultWords().leadIsBroken('the wire')).toBe('the wire is broken');
    await speakIn(dutch);
    expect(faultWords().leadIsBroken('de draad')).toBe('de draad is gebroken');
  });
});

describe('figures as they are typed', () => {
  it.each(['7,85 k', '7.85k', '7k85', '7850', '7 850'])(
    'are understood as %s in both',
    async (text) => {
      expect(parseOhms(text)).toEqual({ ok: true, ohms: 7850 });
      await speakIn(dutch);
      expect(parseOhms(text)).toEqual({ ok: true, ohms: 7850 });
    },
  );

  it('are summed in the words of the language, and in English', async () => {
    await speakIn(dutch);
    for (const sum of ['2x220k in serie', '2x220k in series', '100k en 340k in serie'])
      expect(await enterOhms(sum)).toEqual({ ok: true, ohms: 440e3 });
    for (const sum of ['2x220k parallel', '220k en 220k in parallel'])
      expect(await enterOhms(sum)).toEqual({ ok: true, ohms: 110e3 });
    await speakIn({ language: 'en', locale: 'en' });
    expect(await enterOhms('2x220k in serie')).toMatchObject({ ok: false });
  });

  it('that are none are open in the words of the language', async () => {
    expect(parseOhms('geen getal')).toMatchObject({ ok: false });
    await speakIn(dutch);
    expect(parseOhms('geen getal')).toEqual({ ok: true, ohms: 'open' });
    expect(parseOhms('niets')).toMatchObject({
      ok: false,
      choices: [{ value: 'open' }, { value: 0 }],
    });
  });

  it('are asked about where the other sign may group thousands', async () => {
    expect(parseOhms('1.500')).toEqual({ ok: true, ohms: 1.5 });
    expect(parseOhms('1,500')).toMatchObject({
      ok: false,
      sentence: 'Does the comma of "1,500" stand for a decimal point?',
    });
    await speakIn(dutch);
    expect(parseOhms('1,500')).toEqual({ ok: true, ohms: 1.5 });
    expect(parseOhms('1.500')).toMatchObject({
      ok: false,
      choices: [
        { title: 'Ja: 1,5 Ω', value: 1.5 },
        { title: 'Nee: 1,5 kΩ', value: 1500 },
      ],
    });
  });
});
