import type { Circuit } from '../circuit.ts';
import type { Switch } from '../parts/part.ts';
import { leads, outputJack, strings } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { ownKnobLeads, ownKnobs } from './knobs.ts';

const sides = ['neck', 'bridge'] as const;

const outputs: Switch = {
  kind: 'switch',
  id: 'outputs',
  title: 'mono switch',
  style: 'mini-toggle',
  rows: [['1', '2']],
  positions: [
    { name: 'mono', title: 'both pickups on the tip', joins: [['1', '2']] },
    { name: 'stereo', title: 'bridge on the tip, neck on the ring', joins: [] },
  ],
  frame: false,
};

/** Each pickup has its own controls and its own lug of the jack; a switch joins the two. */
export function twoHumbuckersStereoJack(): Circuit {
  return {
    id: 'two-humbuckers-stereo-jack',
    title: 'two humbuckers, stereo jack with a mono switch, two volumes and two tones',
    pickups: sides.map(humbuckerPickup),
    parts: [
      ...humbucker('neck', { resistance: 3900, inductance: 2.2 }),
      ...humbucker('bridge', { resistance: 4200, inductance: 2.4 }),
      ...sides.flatMap((side) => ownKnobs(side, 500e3)),
      outputs,
      { ...outputJack, ring: true },
      strings,
    ],
    leads: leads([
      ...sides.flatMap((side) => [
        ...humbuckerLeads(side, `${side}Volume.3`, `${side}Volume.case`),
        ...ownKnobLeads(side, side === 'neck' ? 'outputs.1' : 'outputs.2'),
      ]),
      ['volumesGround', 'wire', 'neckVolume.case', 'bridgeVolume.case'],
      ['ringHot', 'wire', 'outputs.1', 'jack.ring'],
      ['jackHot', 'wire', 'outputs.2', 'jack.tip'],
      ['jackGround', 'wire', 'bridgeVolume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'bridgeVolume.case'],
    ]),
  };
}
