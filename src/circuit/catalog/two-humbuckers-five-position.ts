import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { steppedBlade } from './selectors.ts';

/**
 * Poles A and D pick the pickups; poles B and C bring their series links to ground or to the output where one coil of each stays:
 * two of opposite winding, so that hum cancels.
 */
export function twoHumbuckersFivePosition(): Circuit {
  return {
    id: 'two-humbuckers-five-position',
    title:
      'two humbuckers split in positions 2 and 4, 5-position blade with four poles, one volume and one tone',
    pickups: [humbuckerPickup('bridge'), humbuckerPickup('neck')],
    parts: [
      ...humbucker('bridge', { resistance: 4500, inductance: 2.7 }),
      ...humbucker('neck', { resistance: 3900, inductance: 2.3 }),
      steppedBlade('ABCD', [
        'bridge',
        'slug coil of the bridge and screw coil of the neck',
        'both pickups',
        'screw coil of the bridge and slug coil of the neck',
        'neck',
      ]),
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'selector.A1', 'volume.case'),
      ...humbuckerLeads('neck', 'selector.D5', 'volume.case'),
      ['bridgeJumper2', 'wire', 'selector.A1', 'selector.A2'],
      ['bridgeJumper3', 'wire', 'selector.A2', 'selector.A3'],
      ['bridgeJumper4', 'wire', 'selector.A3', 'selector.A4'],
      ['neckJumper4', 'wire', 'selector.D5', 'selector.D4'],
      ['neckJumper3', 'wire', 'selector.D4', 'selector.D3'],
      ['neckJumper2', 'wire', 'selector.D3', 'selector.D2'],
      ['bridgeSplit', 'wire', 'bridgeLink.joint', 'selector.BC'],
      ['bridgeSplitGround', 'wire', 'selector.B2', 'volume.case'],
      ['bridgeSplitHot', 'wire', 'selector.B4', 'selector.DC'],
      ['neckSplit', 'wire', 'neckLink.joint', 'selector.CC'],
      ['neckSplitHot', 'wire', 'selector.C2', 'selector.DC'],
      ['neckSplitGround', 'wire', 'selector.C4', 'volume.case'],
      ['poleLink', 'wire', 'selector.DC', 'selector.AC'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
