import { type CoilId, coilsOf, type SeenPickup } from '../circuit/seen-pickup.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { ON_THE_MAT } from './asks.ts';

/** Pole of the top of each coil: +1 north, -1 south. Left out where it was not read, or where the compass told nothing. */
export type Poles = Readonly<Partial<Record<CoilId, 1 | -1>>>;

/** The last word counts: a pole is read again because the one before was doubted. */
export function polesOf(readings: readonly Reading[]): Poles {
  const poles: Partial<Record<CoilId, 1 | -1>> = {};
  for (const { ask, seen } of readings) {
    if (ask.kind !== 'pole' || seen.kind !== 'pole') continue;
    if (seen.pole === 'none') delete poles[ask.coil as CoilId];
    else poles[ask.coil as CoilId] = seen.pole === 'north' ? 1 : -1;
  }
  return poles;
}

/** Poles that were not asked yet. */
export const poleAsks = (
  seen: SeenPickup,
  readings: readonly Reading[],
  refused: readonly Ask[],
): readonly Ask[] =>
  coilsOf(seen)
    .filter((coil) =>
      [...readings.map(({ ask }) => ask), ...refused].every(
        (ask) => ask.kind !== 'pole' || ask.coil !== coil,
      ),
    )
    .map((coil) => ({ kind: 'pole', coil, setting: ON_THE_MAT }));

/**
 * Whether the two coils, joined so that they add, cancel hum: by Faraday's law the signal has the sign of winding sense x pole, hum
 * that of the winding sense alone. Coils whose signals agree have opposite windings where their poles differ. Null where not known.
 */
export const cancelsHum = ({ a, b }: Poles): boolean | null =>
  a === undefined || b === undefined ? null : a !== b;
