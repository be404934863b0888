import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { splitHalves, splitLeads, splitPickup } from './split-pickup.ts';

export function fourStringsSplitPickup(): Circuit {
  return {
    id: 'four-strings-split-pickup',
    title: 'four strings, one split pickup, one volume and one tone',
    pickups: [splitPickup('split')],
    parts: [...splitHalves('split', 5300), ...sharedKnobs(250e3, 47e-9)],
    leads: leads([...splitLeads('split', 'volume.3', 'volume.case'), ...sharedKnobLeads]),
  };
}
