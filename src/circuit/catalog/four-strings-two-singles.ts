import type { Circuit } from '../circuit.ts';
import { henries } from '../units.ts';
import { leads } from './build.ts';
import { mixedVolumeLeads, twoVolumesOneTone } from './knobs.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

const sides = ['neck', 'bridge'] as const;

/** No selector: each pickup on the wiper of its own volume, both volumes on the tone and the jack. The bridge pickup is reverse-wound with reversed polarity. */
export function fourStringsTwoSingles(): Circuit {
  return {
    id: 'four-strings-two-singles',
    title: 'four strings, two single coils, two volumes and one tone',
    pickups: sides.map(singlePickup),
    parts: [
      single('neck', { resistance: 7100, henries: henries(3.6) }),
      single('bridge', { resistance: 7600, henries: henries(3.6), ...reversed }),
      ...twoVolumesOneTone(250e3, 47e-9),
    ],
    leads: leads([
      ...sides.flatMap((side) => singleLeads(side, `${side}Volume.2`, `${side}Volume.case`)),
      ...mixedVolumeLeads,
    ]),
  };
}
