import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbuckerPickup, threeConductorHumbucker, threeConductorLeads } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';

/** The middle lead is taped off; a split uses it. */
export function oneThreeConductorHumbucker(): Circuit {
  return {
    id: 'one-three-conductor-humbucker',
    title: 'one three-conductor humbucker, one volume and one tone',
    pickups: [humbuckerPickup('bridge')],
    parts: [
      ...threeConductorHumbucker('bridge', { resistance: 4100, inductance: 2.4 }, ''),
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...threeConductorLeads('bridge', 'volume.3', 'volume.case', ''),
      ...sharedKnobLeads,
    ]),
  };
}
