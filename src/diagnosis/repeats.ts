import { settingKey } from '../circuit/setting.ts';
import type { Ask, Reading } from '../readings/reading.ts';

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
