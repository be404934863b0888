import type { Observation, Prediction } from './prediction.ts';

/** The word that is likeliest to be chosen; of equals the first. */
export const likeliestWord = (chances: Readonly<Record<string, number>>): string =>
  Object.entries(chances).reduce((best, one) => (one[1] > best[1] ? one : best), ['', 0] as [
    string,
    number,
  ])[0];

/** What would most likely be seen where this is foretold: the middle of a figure, the likeliest word. */
export function likeliest(prediction: Prediction): Observation {
  switch (prediction.type) {
    case 'level':
      return { type: 'level', value: prediction.mean };
    case 'over':
      return prediction;
    case 'threshold':
      return { type: 'threshold', beeps: prediction.ohms < 50 };
    case 'choice':
      return { type: 'choice', word: likeliestWord(prediction.chances) };
  }
}
