import type { Circuit } from '../circuit.ts';
import { braided, braidedLeads, braidedPickup } from './braided.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { toggle3 } from './selectors.ts';

/** 300 k: common practice, no source. The bridge pickup is reverse-wound with reversed polarity. */
export function twoWideSinglesSharedControls(): Circuit {
  return {
    id: 'two-wide-singles-shared-controls',
    title: 'two wide single coils, 3-position toggle, shared volume and tone',
    pickups: [braidedPickup('neck'), braidedPickup('bridge')],
    parts: [
      ...braided('neck', { resistance: 7500, inductance: 5.4, covered: false }),
      ...braided('bridge', { resistance: 8100, inductance: 5.6, covered: false, reversed: true }),
      toggle3,
      ...sharedKnobs(300e3, 22e-9),
    ],
    leads: leads([
      ...braidedLeads('neck', 'selector.A', 'volume.case'),
      ...braidedLeads('bridge', 'selector.B', 'volume.case'),
      ['selectorOut', 'wire', 'selector.C', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
