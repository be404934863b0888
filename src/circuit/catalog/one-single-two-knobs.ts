import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { single, singleLeads, singlePickup } from './singles.ts';

export function oneSingleTwoKnobs(): Circuit {
  return {
    id: 'one-single-two-knobs',
    title: 'one single coil, one volume and one tone',
    pickups: [singlePickup('bridge')],
    parts: [single('bridge', { resistance: 7000 }), ...sharedKnobs(250e3, 47e-9)],
    leads: leads([...singleLeads('bridge', 'volume.3', 'volume.case'), ...sharedKnobLeads]),
  };
}
