import type { Circuit } from '../circuit.ts';
import { henries } from '../units.ts';
import { leads } from './build.ts';
import { mixedVolumeLeads, twoVolumesOneTone } from './knobs.ts';
import { single, singleLeads, singlePickup } from './singles.ts';
import { splitHalves, splitLeads, splitPickup } from './split-pickup.ts';

/** No selector: each pickup on the wiper of its own volume. */
export function fourStringsSplitAndSingle(): Circuit {
  return {
    id: 'four-strings-split-and-single',
    title: 'four strings, a split pickup and a single coil, two volumes and one tone',
    pickups: [splitPickup('neck'), singlePickup('bridge')],
    parts: [
      ...splitHalves('neck', 5300),
      single('bridge', { resistance: 7400, henries: henries(3.6) }),
      ...twoVolumesOneTone(250e3, 47e-9),
    ],
    leads: leads([
      ...splitLeads('neck', 'neckVolume.2', 'neckVolume.case'),
      ...singleLeads('bridge', 'bridgeVolume.2', 'bridgeVolume.case'),
      ...mixedVolumeLeads,
    ]),
  };
}
