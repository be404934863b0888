import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { toggle3 } from './selectors.ts';

export function twoHumbuckersSharedControls(): Circuit {
  return {
    id: 'two-humbuckers-shared-controls',
    title: 'two humbuckers, 3-position toggle, shared volume and tone',
    pickups: [humbuckerPickup('neck'), humbuckerPickup('bridge')],
    parts: [
      ...humbucker('neck', { resistance: 3900, inductance: 2.3 }),
      ...humbucker('bridge', { resistance: 4600, inductance: 2.8 }),
      toggle3,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('neck', 'selector.A', 'volume.case'),
      ...humbuckerLeads('bridge', 'selector.B', 'volume.case'),
      ['selectorOut', 'wire', 'selector.C', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
