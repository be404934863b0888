import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { families } from '../../src/faults/index.ts';
import { hold } from '../../src/words/area.ts';
import { speakIn } from '../../src/words/speak.ts';
import { englishWords, wordsOf } from './english-left.ts';

let english: ReadonlySet<string>;
beforeAll(async () => {
  english = await englishWords();
  await speakIn({ language: 'nl', locale: 'nl-NL' });
});
afterAll(() => hold({ language: 'en', locale: 'en' }, {}));

describe('sentences of the engine in Dutch', () => {
  it('are held against the words that English alone has', () => {
    expect(english.size).toBeGreaterThan(500);
    expect([...wordsOf(['the wire is broken'])].some((word) => english.has(word))).toBe(true);
  });

  it.each(startingWirings.map((wiring) => [wiring.id, wiring] as const))(
    'have no English word left for any fault of %s',
    (_, { build }) => {
      const circuit = build();
      const layout = layoutOf(circuit);
      const texts = families
        .flatMap((family) => family.list(circuit, layout))
        .flatMap(({ sentence, remedy }) => [sentence, remedy.title, remedy.proof, ...remedy.steps]);
      expect(texts.length).toBeGreaterThan(100);
      expect([...wordsOf(texts)].filter((word) => english.has(word))).toEqual([]);
    },
  );
});
