import type { Circuit } from '../circuit.ts';
import { braided, braidedLeads, braidedPickup } from './braided.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';

export function oneWideSingleTwoKnobs(): Circuit {
  return {
    id: 'one-wide-single-two-knobs',
    title: 'one wide single coil, one volume and one tone',
    pickups: [braidedPickup('bridge')],
    parts: [
      ...braided('bridge', { resistance: 8000, inductance: 5.5, covered: false }),
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([...braidedLeads('bridge', 'volume.3', 'volume.case'), ...sharedKnobLeads]),
  };
}
