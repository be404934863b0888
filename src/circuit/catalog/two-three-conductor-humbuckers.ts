import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbuckerPickup, threeConductorHumbucker, threeConductorLeads } from './humbucker.ts';
import { toggledVolumeLeads, twoVolumesOneTone } from './knobs.ts';
import { toggle3 } from './selectors.ts';

const sides = ['neck', 'bridge'] as const;

/** The middle leads are taped off; splits use them. Volumes feed the selector from their wipers, the tone hangs on its output. */
export function twoThreeConductorHumbuckers(): Circuit {
  return {
    id: 'two-three-conductor-humbuckers',
    title: 'two three-conductor humbuckers, 3-position toggle, two volumes and one tone',
    pickups: sides.map(humbuckerPickup),
    parts: [
      ...threeConductorHumbucker('neck', { resistance: 3900, inductance: 2.2 }),
      ...threeConductorHumbucker('bridge', { resistance: 4300, inductance: 2.4 }),
      toggle3,
      ...twoVolumesOneTone(500e3, 22e-9),
    ],
    leads: leads([
      ...sides.flatMap((side) =>
        threeConductorLeads(side, `${side}Volume.3`, `${side}Volume.case`),
      ),
      ...toggledVolumeLeads,
    ]),
  };
}
