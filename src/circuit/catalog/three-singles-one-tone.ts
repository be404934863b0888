import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { blade5 } from './selectors.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

const sides = ['bridge', 'middle', 'neck'] as const;
const lugs = { bridge: 'selector.A1', middle: 'selector.A2', neck: 'selector.A3' } as const;

/** Pole A picks the pickups; pole B's lugs stay empty. The middle is reverse-wound with reversed polarity. */
export function threeSinglesOneTone(): Circuit {
  return {
    id: 'three-singles-one-tone',
    title: 'three single coils, 5-position blade, one volume and one tone',
    pickups: sides.map(singlePickup),
    parts: [
      single('bridge', { resistance: 6400 }),
      single('middle', { resistance: 6000, ...reversed }),
      single('neck', { resistance: 5800 }),
      blade5,
      ...sharedKnobs(250e3, 22e-9),
    ],
    leads: leads([
      ...sides.flatMap((side) => singleLeads(side, lugs[side], 'volume.case')),
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
