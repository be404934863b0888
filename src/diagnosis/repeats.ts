import { settingKey } from '../circuit/setting.ts';
import { observe } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { askKey } from './ask-key.ts';

/**
 * What is moved, pulled off or turned once more is done anew, and what was seen before may be seen otherwise. A knob that turned smoothly
 * tells its track's highest figure once.
 */
export const isDoneAnew = ({ seen }: Pick<Reading, 'seen'>): boolean =>
  seen.kind === 'flex' || seen.kind === 'tap' || (seen.kind === 'turn' && seen.how === 'jumps');

/** Equal for measurements of the same difference in hum, whichever of the two settings was the first. Null for every other reading. */
const sameHum = (ask: Ask): string | null =>
  ask.kind === 'hum' ? [settingKey(ask.setting), settingKey(ask.against)].sort().join(' ') : null;

/**
 * What each reading counts for. How pickups are wound and how room and guitar lie make a difference in hum another than was foretold,
 * and make it so again when it is measured again: all measurements of one difference count together as one.
 */
export function sharesOf(readings: readonly Pick<Reading, 'ask'>[]): readonly number[] {
  const names = readings.map(({ ask }) => sameHum(ask));
  return names.map((name) =>
    name === null ? 1 : 1 / names.filter((other) => other === name).length,
  );
}

/** A reading with how often it was made, each time with the same outcome; once where left out. */
export interface Counted extends Reading {
  readonly times?: number;
}

/**
 * Readings ready to be scored: a repeat that agrees makes no second reading, as it would share a slip of the first, but a slip less likely.
 * A wire moved again is moved anew, steel pulled off again swings the figure anew, and a knob that scratched is turned anew.
 */
export function distinct(readings: readonly Reading[]): readonly Counted[] {
  const kept: Counted[] = [];
  for (const reading of readings) {
    const key = askKey(reading.ask);
    const same = isDoneAnew(reading)
      ? -1
      : kept.findIndex((other) => askKey(other.ask) === key && agrees(other, reading));
    const before = kept[same];
    if (before) kept[same] = { ...before, times: (before.times ?? 1) + 1 };
    else kept.push(reading);
  }
  return kept;
}

/** Shares of ln ohm within which two readings of the same are one figure. */
const SAME = 0.03;

function agrees(one: Reading, other: Reading): boolean {
  const [a, b] = [observe(one.seen), observe(other.seen)];
  return a.every((x, at) => {
    const y = b[at];
    if (x?.type === 'level' && y?.type === 'level') return Math.abs(x.value - y.value) < SAME;
    return JSON.stringify(x) === JSON.stringify(y);
  });
}
