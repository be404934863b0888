import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { toggle3 } from './selectors.ts';
import { splitHalves, splitLeads, splitPickup } from './split-pickup.ts';

export function fourStringsTwoSplitPickups(): Circuit {
  return {
    id: 'four-strings-two-split-pickups',
    title: 'four strings, two split pickups, 3-position toggle, one volume and one tone',
    pickups: [splitPickup('neck'), splitPickup('bridge')],
    parts: [
      ...splitHalves('neck', 5200),
      ...splitHalves('bridge', 5600),
      toggle3,
      ...sharedKnobs(250e3, 47e-9),
    ],
    leads: leads([
      ...splitLeads('neck', 'selector.A', 'volume.case'),
      ...splitLeads('bridge', 'selector.B', 'volume.case'),
      ['selectorOut', 'wire', 'selector.C', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
