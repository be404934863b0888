import { observe } from '../readings/index.ts';
import type { Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import { logSum } from './gauss.ts';
import type { Weighed } from './hypothesis.ts';
import type { Predictor } from './predictor.ts';

/** Chances that this guitar starts from the sign the circuit states, given the taps and the poles so far. */
export type Signs = Readonly<Record<'tap' | 'pole', number>>;

export function signsOf(
  predictor: Predictor,
  { hypothesis }: Weighed,
  readings: readonly Reading[],
): Signs {
  const logs = { tap: [0, 0], pole: [0, 0] };
  for (const reading of readings) {
    if (reading.seen.kind !== 'tap' && reading.seen.kind !== 'pole') continue;
    const [prediction] = predictor.predict(hypothesis, reading.ask);
    const [seen] = observe(reading.seen);
    if (prediction?.type !== 'choice' || seen?.type !== 'choice') continue;
    if (!prediction.latent || !prediction.mirrored) continue;
    const pair = logs[prediction.latent];
    pair[0] = (pair[0] as number) + Math.log(prediction.chances[seen.word] ?? 1e-6);
    pair[1] = (pair[1] as number) + Math.log(prediction.mirrored[seen.word] ?? 1e-6);
  }
  const stated = (pair: readonly number[]) => Math.exp((pair[0] as number) - logSum(pair));
  return { tap: stated(logs.tap), pole: stated(logs.pole) };
}

/** A sign whose start is known so far, as it will be seen; anything else as it is. */
export function mixed(prediction: Prediction, signs: Signs): Prediction {
  if (prediction.type !== 'choice' || !prediction.mirrored || !prediction.latent) return prediction;
  const { chances, mirrored, latent } = prediction;
  const stated = signs[latent];
  return {
    type: 'choice',
    chances: Object.fromEntries(
      Object.keys(chances).map((word) => [
        word,
        stated * (chances[word] as number) + (1 - stated) * (mirrored[word] as number),
      ]),
    ),
  };
}
