import type { LugRef, Pickup } from '../circuit.ts';
import type { Coil } from '../parts/part.ts';
import { coil, type LeadRow } from './build.ts';

export type Spot = 'neck' | 'middle' | 'bridge';

export const singlePickup = (spot: Spot): Pickup => ({
  id: `${spot}Pickup`,
  title: `${spot} pickup`,
  coils: [`${spot}Coil`],
});

/** A single coil on eyelets. */
export const single = (spot: Spot, more: Partial<Coil> & { resistance: number }): Coil =>
  coil(`${spot}Coil`, `${spot} pickup`, { ends: 'eyelets', ...more });

/** Reverse-wound with reversed polarity. */
export const reversed = { winding: -1, magnet: -1 } as const;

export const singleLeads = (spot: Spot, hot: LugRef, cold: LugRef): readonly LeadRow[] => [
  [`${spot}Hot`, 'pickup', `${spot}Coil.finish`, hot],
  [`${spot}Cold`, 'pickup', `${spot}Coil.start`, cold],
];
