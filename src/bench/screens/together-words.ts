import { togetherWords } from '../../words/en/together.ts';
/** What is left of the hum, in words. */
export const humWords = (hum: number): string =>
  hum < 0.15
    ? togetherWords().cancelHum
    : hum > 0.85
      ? togetherWords().hum
      : togetherWords().humLess;
