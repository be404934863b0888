import type { Circuit } from '../circuit.ts';
import { braided, braidedLeads, braidedPickup } from './braided.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { blade5 } from './selectors.ts';

const spots = ['bridge', 'middle', 'neck'] as const;

export function threeTwoConductorPickups(): Circuit {
  return {
    id: 'three-two-conductor-pickups',
    title: 'three two-conductor pickups, 5-position blade, one volume and one tone',
    pickups: spots.map(braidedPickup),
    parts: [
      ...braided('bridge', { resistance: 8300, inductance: 4.6, covered: true }),
      ...braided('middle', { resistance: 7800, inductance: 4.4, covered: true }),
      ...braided('neck', { resistance: 7500, inductance: 4.3, covered: true }),
      blade5,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...spots.flatMap((spot, at) => braidedLeads(spot, `selector.A${at + 1}`, 'volume.case')),
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
