import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { blade5 } from './selectors.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

/** Pole B grounds the bridge's series link where bridge and middle are on together. The neck is wound like the slug coil that stays, the middle against both. */
export function humbuckerTwoSinglesSplit(): Circuit {
  return {
    id: 'humbucker-two-singles-split',
    title:
      'bridge humbucker split in position 2, two single coils, 5-position blade, one volume and one tone',
    pickups: [humbuckerPickup('bridge'), singlePickup('middle'), singlePickup('neck')],
    parts: [
      ...humbucker('bridge', { resistance: 4300, inductance: 2.6 }),
      single('middle', { resistance: 6100 }),
      single('neck', { resistance: 5900, ...reversed }),
      blade5,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'selector.A1', 'volume.case'),
      ...singleLeads('middle', 'selector.A2', 'volume.case'),
      ...singleLeads('neck', 'selector.A3', 'volume.case'),
      ['bridgeSplit', 'wire', 'bridgeLink.joint', 'selector.B1'],
      ['splitGround', 'wire', 'selector.B2', 'volume.case'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
