import { observe } from '../readings/index.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';
import type { Ask } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { logNormal, logSum } from './gauss.ts';
import { feelsFingers, HABIT, logUnsound, SLIP } from './levels.ts';
import { logMixed } from './likelihood.ts';
import type { Counted } from './repeats.ts';

/** A figure that was read before: what was seen, each figure once with how often it was. */
export type Before = readonly { readonly seen: Observation; readonly times: number }[];

/** Of some asks those whose figure was read before. @param readings each once, with how often it was made */
export function readBefore(
  asks: readonly Ask[],
  readings: readonly Counted[],
): ReadonlyMap<Ask, Before> {
  const figures = new Map<string, { readonly seen: Observation; readonly times: number }[]>();
  for (const { ask, seen, times = 1 } of readings) {
    if (seen.kind !== 'ohms') continue;
    const key = askKey(ask);
    const [first] = observe(seen);
    if (first) figures.set(key, [...(figures.get(key) ?? []), { seen: first, times }]);
  }
  const found = new Map<Ask, Before>();
  for (const ask of asks) {
    const before = ask.kind === 'ohms' ? figures.get(askKey(ask)) : undefined;
    if (before) found.set(ask, before);
  }
  return found;
}

/**
 * What is foretold of a figure that is read again by one who foretold `prediction` for the first time: one of the figures seen before,
 * or another one. A sound figure comes again. After a slip the figure is a new one, unless the slip is made again.
 * @param variance of the prediction, where it is a level
 */
export function againOf(prediction: Prediction, variance: number, before: Before): Prediction {
  const logs = before.map(({ seen, times }) => {
    const [sound, unsound] = soundOrNot(prediction, variance, seen);
    return { sound, unsound: unsound + (times - 1) * Math.log(HABIT) };
  });
  // One of the figures is sound and the others are slips, or all of them are.
  const ways = [...logs.keys(), -1].map((sound) =>
    logs.reduce((sum, one, at) => sum + (at === sound ? one.sound : one.unsound), 0),
  );
  const all = logSum(ways);
  // What nothing explains comes again or does not, as nobody knows.
  const shares = ways.map((way) => (Number.isFinite(all) ? Math.exp(way - all) : 1 / ways.length));
  const none = shares.at(-1) as number;
  const chances = Object.fromEntries(
    before.map((_, at) => [
      `seen${at}`,
      (1 - SLIP) * (shares[at] as number) + (none * HABIT) / before.length,
    ]),
  );
  const same = Object.values(chances).reduce((sum, chance) => sum + chance, 0);
  return { type: 'choice', chances: { ...chances, another: 1 - same } };
}

/** ln of the density of what was seen, as a sound reading and as none. */
function soundOrNot(
  prediction: Prediction,
  variance: number,
  seen: Observation,
): readonly [sound: number, unsound: number] {
  if (prediction.type === 'level' && seen.type === 'level') {
    const residual = seen.value - prediction.mean;
    const foretold = Math.log(prediction.ohms);
    return [
      Math.log(1 - SLIP) + logNormal(residual, variance),
      logUnsound(residual, variance, feelsFingers(foretold) ? foretold : null),
    ];
  }
  const mixed = logMixed(prediction, seen);
  return prediction.type === seen.type ? [mixed, -Infinity] : [-Infinity, mixed];
}
