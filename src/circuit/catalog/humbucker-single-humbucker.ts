import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { blade5 } from './selectors.ts';
import { single, singleLeads, singlePickup } from './singles.ts';

/** Pole B grounds an outer pickup's series link where the middle is on with it. The middle is wound against the slug coils, which stay. */
export function humbuckerSingleHumbucker(): Circuit {
  return {
    id: 'humbucker-single-humbucker',
    title:
      'two humbuckers split in positions 2 and 4, a single coil between, 5-position blade, one volume and one tone',
    pickups: [humbuckerPickup('bridge'), singlePickup('middle'), humbuckerPickup('neck')],
    parts: [
      ...humbucker('bridge', { resistance: 4400, inductance: 2.6 }),
      single('middle', { resistance: 6200 }),
      ...humbucker('neck', { resistance: 3900, inductance: 2.3 }),
      blade5,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'selector.A1', 'volume.case'),
      ...singleLeads('middle', 'selector.A2', 'volume.case'),
      ...humbuckerLeads('neck', 'selector.A3', 'volume.case'),
      ['bridgeSplit', 'wire', 'bridgeLink.joint', 'selector.B1'],
      ['neckSplit', 'wire', 'neckLink.joint', 'selector.B3'],
      ['splitGround', 'wire', 'selector.B2', 'volume.case'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
