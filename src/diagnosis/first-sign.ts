import type { Prediction } from '../readings/prediction.ts';
import type { Ask, AskOf, Reading } from '../readings/reading.ts';

/** Readings of a sign whose start nobody knows: a first one tells nothing by itself, what counts is whether a second one agrees. */
export type SignAsk = AskOf<'tap'> | AskOf<'pole'>;

export const isSign = (ask: Ask): ask is SignAsk => ask.kind === 'tap' || ask.kind === 'pole';

const sameStand = (one: Ask, other: Ask): boolean =>
  JSON.stringify(one.setting.positions) === JSON.stringify(other.setting.positions);

/**
 * What could be asked second: of each other coil the same kind of reading, where `clarityOf` is highest, and of equally clear ones
 * that with the controls as they stand.
 */
export function secondSigns(
  first: SignAsk,
  asks: readonly Ask[],
  clarityOf: (ask: SignAsk) => number,
): readonly SignAsk[] {
  const best = new Map<string, { readonly ask: SignAsk; readonly worth: number }>();
  for (const ask of asks) {
    if (!isSign(ask) || ask.kind !== first.kind || ask.coil === first.coil) continue;
    const worth = clarityOf(ask) + (sameStand(ask, first) ? 0.05 : 0);
    const known = best.get(ask.coil);
    if (!known || worth > known.worth) best.set(ask.coil, { ask, worth });
  }
  return [...best.values()].map(({ ask }) => ask);
}

const NO_SIGN: ReadonlySet<string> = new Set(['nothing', 'none']);

/** Whether a sign has shown: until then the next one is a first one, however often nothing was seen. */
export const hasSign = (readings: readonly Reading[], kind: SignAsk['kind']): boolean =>
  readings.some(
    ({ seen }) =>
      (seen.kind === 'tap' && kind === 'tap' && !NO_SIGN.has(seen.swing)) ||
      (seen.kind === 'pole' && kind === 'pole' && !NO_SIGN.has(seen.pole)),
  );

/** Chance that such a reading shows a sign at all. */
export const clarity = (prediction: Prediction | undefined): number =>
  prediction?.type === 'choice'
    ? Object.entries(prediction.chances).reduce(
        (sum, [word, chance]) => (NO_SIGN.has(word) ? sum : sum + chance),
        0,
      )
    : 0;

/** Whether two signs agree, differ, or one of them does not show: the same from whichever sign the guitar starts. */
export function agreement(one: Prediction | undefined, other: Prediction | undefined): Prediction {
  const chances: Record<string, number> = { agree: 0, differ: 0 };
  if (one?.type === 'choice' && other?.type === 'choice')
    for (const [word, chance] of Object.entries(one.chances))
      for (const [second, part] of Object.entries(other.chances)) {
        const firstShows = !NO_SIGN.has(word);
        const secondShows = !NO_SIGN.has(second);
        const answer =
          firstShows && secondShows
            ? word === second
              ? 'agree'
              : 'differ'
            : `${firstShows ? 'sign' : 'none'}|${secondShows ? 'sign' : 'none'}`;
        chances[answer] = (chances[answer] ?? 0) + chance * part;
      }
  return { type: 'choice', chances };
}
