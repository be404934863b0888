import type { LugRef, Pickup } from '../circuit.ts';
import type { Coil, Metal } from '../parts/part.ts';
import { henries } from '../units.ts';
import { coil, type LeadRow } from './build.ts';

export type Spot = 'neck' | 'middle' | 'bridge';

interface Values {
  readonly resistance: number;
  readonly inductance: number;
  /** Reverse-wound with reversed polarity. */
  readonly reversed?: boolean;
  /** A cover that a probe reaches stands on the base plate. */
  readonly covered: boolean;
}

/** A pickup with two conductors: one hot core, and a braid that is both the cold end and the ground of its metal. */
export const braidedPickup = (spot: Spot): Pickup => ({
  id: `${spot}Pickup`,
  title: `${spot} pickup`,
  coils: [`${spot}Coil`],
  plate: `${spot}Plate`,
});

/** What lies inside is one coil to a meter, however many it is wound as. */
export function braided(spot: Spot, values: Values): readonly (Coil | Metal)[] {
  const sense = values.reversed ? -1 : 1;
  return [
    coil(`${spot}Coil`, `${spot} pickup`, {
      resistance: values.resistance,
      henries: henries(values.inductance),
      winding: sense,
      magnet: sense,
    }),
    {
      kind: 'metal',
      id: `${spot}Plate`,
      title: values.covered
        ? `base plate and cover of the ${spot} pickup`
        : `base plate of the ${spot} pickup`,
      role: 'plate',
      outside: values.covered,
    },
  ];
}

export const braidedLeads = (spot: Spot, hot: LugRef, cold: LugRef): readonly LeadRow[] => [
  [`${spot}Hot`, 'pickup', `${spot}Coil.finish`, hot],
  [`${spot}Braid`, 'pickup', `${spot}Coil.start`, cold],
  [`${spot}PlateLink`, 'pickup', `${spot}Plate.metal`, `${spot}Coil.start`],
];
