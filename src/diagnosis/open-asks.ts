import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';
import { isDoneAnew } from './repeats.ts';

/**
 * How often the same is done under the same probes: a loose joint may hold once or twice, a swing is easily misjudged, and a probe
 * that slips looks like a worn track. */
const AT_MOST = 3;

/**
 * Asks that were answered or refused are not asked again, but for a movement that showed nothing, a swing, a knob that scratched, and a
 * figure, which may have been read at another lug or entered wrong.
 */
export function openAsks(
  asks: readonly Ask[],
  readings: readonly Reading[],
  refused: readonly Ask[],
): readonly Ask[] {
  const done = new Set(refused.map(askKey));
  const often = new Map<string, number>();
  for (const reading of readings) {
    const { ask, seen } = reading;
    const key = askKey(ask);
    const times = (often.get(key) ?? 0) + 1;
    const again =
      seen.kind === 'ohms' ||
      (isDoneAnew(reading) && !(seen.kind === 'flex' && seen.how === 'jumps'));
    if (!again || times >= AT_MOST) done.add(key);
    else often.set(key, times);
  }
  return asks.filter((ask) => !done.has(askKey(ask)));
}
