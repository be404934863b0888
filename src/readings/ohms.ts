import { readingWords } from '../words/en/readings.ts';
import type { ReadingKind } from './kind.ts';
import { levelBetween, logShown } from './level.ts';
import { ohmsText, probesText } from './words.ts';

export const ohmsReading: ReadingKind<'ohms'> = {
  predict: (view, ask, instrument) => [levelBetween(view, ask.red, ask.black, instrument)],
  like: (guitar, ask) => guitar.in(ask.setting).between(ask.red, ask.black),
  observe: (seen) => [
    seen.ohms === 'open' ? { type: 'over' } : { type: 'level', value: logShown(seen.ohms) },
  ],
  askText: (layout, ask) =>
    readingWords().readTheOhmsProbes(probesText(layout, ask.red, ask.black)),
  seenText: (seen) => ohmsText(seen.ohms),
};
