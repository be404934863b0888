import type { Circuit } from '../circuit.ts';
import { leads, outputJack, pot, strings } from './build.ts';
import { single, singleLeads, singlePickup } from './singles.ts';

export function oneSingleOneKnob(): Circuit {
  return {
    id: 'one-single-one-knob',
    title: 'one single coil, one volume',
    pickups: [singlePickup('bridge')],
    parts: [
      single('bridge', { resistance: 6800 }),
      pot('volume', 'volume', 'volume', 250e3),
      outputJack,
      strings,
    ],
    leads: leads([
      ...singleLeads('bridge', 'volume.3', 'volume.case'),
      ['volumeGround', 'wire', 'volume.1', 'volume.case'],
      ['jackHot', 'wire', 'volume.2', 'jack.tip'],
      ['jackGround', 'wire', 'volume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'volume.case'],
    ]),
  };
}
