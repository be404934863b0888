import type { LugRef, Pickup } from '../circuit.ts';
import type { Coil } from '../parts/part.ts';
import { henries } from '../units.ts';
import { coil, type LeadRow } from './build.ts';

export type SplitSpot = 'split' | 'neck' | 'bridge';

const idOf = (spot: SplitSpot, half: 'low' | 'high'): string =>
  spot === 'split' ? `${half}Half` : `${spot}${half === 'low' ? 'Low' : 'High'}Half`;

/** A pickup in two halves, joined in series inside: one under the two low strings, one under the two high, of opposite winding and magnet. */
export const splitPickup = (spot: SplitSpot): Pickup => ({
  id: `${spot}Pickup`,
  title: `${spot} pickup`,
  coils: [idOf(spot, 'low'), idOf(spot, 'high')],
  stringsEach: true,
});

export function splitHalves(spot: SplitSpot, resistance: number): readonly Coil[] {
  const common = { resistance, henries: henries(3), ends: 'eyelets' } as const;
  return [
    coil(idOf(spot, 'low'), `low half of the ${spot} pickup`, { ...common, place: 'upper' }),
    coil(idOf(spot, 'high'), `high half of the ${spot} pickup`, {
      ...common,
      place: 'lower',
      winding: -1,
      magnet: -1,
    }),
  ];
}

export function splitLeads(spot: SplitSpot, hot: LugRef, cold: LugRef): readonly LeadRow[] {
  const [low, high] = [idOf(spot, 'low'), idOf(spot, 'high')];
  return [
    [`${spot}Hot`, 'pickup', `${high}.finish`, hot],
    [
      spot === 'split' ? 'halvesLink' : `${spot}HalvesLink`,
      'pickup',
      `${high}.start`,
      `${low}.finish`,
    ],
    [`${spot}Cold`, 'pickup', `${low}.start`, cold],
  ];
}
