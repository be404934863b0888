import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { rotary6 } from './selectors.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

const sides = ['bridge', 'middle', 'neck'] as const;

/** Pole A brings one pickup, pole B a second one in every other position. The middle is reverse-wound with reversed polarity. */
export function threeSinglesSixPosition(): Circuit {
  return {
    id: 'three-singles-six-position',
    title: 'three single coils, 6-position rotary, one volume and one tone',
    pickups: sides.map(singlePickup),
    parts: [
      single('bridge', { resistance: 6600 }),
      single('middle', { resistance: 6100, ...reversed }),
      single('neck', { resistance: 5900 }),
      rotary6([
        'bridge',
        'bridge and middle',
        'middle',
        'middle and neck',
        'neck',
        'neck and bridge',
      ]),
      ...sharedKnobs(250e3, 22e-9),
    ],
    leads: leads([
      ...sides.flatMap((side, at) => singleLeads(side, `selector.A${2 * at + 1}`, 'volume.case')),
      ['bridgeJumper', 'wire', 'selector.A1', 'selector.A2'],
      ['bridgeSecond', 'wire', 'selector.A2', 'selector.B6'],
      ['middleJumper', 'wire', 'selector.A3', 'selector.A4'],
      ['middleSecond', 'wire', 'selector.A4', 'selector.B2'],
      ['neckJumper', 'wire', 'selector.A5', 'selector.A6'],
      ['neckSecond', 'wire', 'selector.A6', 'selector.B4'],
      ['poleLink', 'wire', 'selector.BC', 'selector.AC'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ...sharedKnobLeads,
    ]),
  };
}
