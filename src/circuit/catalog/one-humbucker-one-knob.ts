import type { Circuit } from '../circuit.ts';
import { leads, outputJack, pot, strings } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';

export function oneHumbuckerOneKnob(): Circuit {
  return {
    id: 'one-humbucker-one-knob',
    title: 'one humbucker, one volume',
    pickups: [humbuckerPickup('bridge')],
    parts: [
      ...humbucker('bridge', { resistance: 4300, inductance: 2.5 }, ''),
      pot('volume', 'volume', 'volume', 500e3),
      outputJack,
      strings,
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'volume.3', 'volume.case', ''),
      ['volumeGround', 'wire', 'volume.1', 'volume.case'],
      ['jackHot', 'wire', 'volume.2', 'jack.tip'],
      ['jackGround', 'wire', 'volume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'volume.case'],
    ]),
  };
}
