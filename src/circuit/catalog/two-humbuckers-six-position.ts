import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { rotary6 } from './selectors.ts';

/** Positions 4 to 6 take the signal from the series links: the screw coils alone, the slug coils hang at one end. */
export function twoHumbuckersSixPosition(): Circuit {
  return {
    id: 'two-humbuckers-six-position',
    title:
      'two humbuckers, 6-position rotary that takes whole pickups or single coils, one volume and one tone',
    pickups: [humbuckerPickup('bridge'), humbuckerPickup('neck')],
    parts: [
      ...humbucker('bridge', { resistance: 4200, inductance: 2.5 }),
      ...humbucker('neck', { resistance: 3800, inductance: 2.2 }),
      rotary6([
        'bridge',
        'both pickups',
        'neck',
        'screw coil of the bridge',
        'screw coils of both',
        'screw coil of the neck',
      ]),
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'selector.A1', 'volume.case'),
      ...humbuckerLeads('neck', 'selector.A3', 'volume.case'),
      ['bridgeJumper', 'wire', 'selector.A1', 'selector.A2'],
      ['neckJumper', 'wire', 'selector.A3', 'selector.B2'],
      ['bridgeTap', 'wire', 'bridgeLink.joint', 'selector.A4'],
      ['bridgeTapJumper', 'wire', 'selector.A4', 'selector.A5'],
      ['neckTap', 'wire', 'neckLink.joint', 'selector.A6'],
      ['neckTapJumper', 'wire', 'selector.A6', 'selector.B5'],
      ['poleLink', 'wire', 'selector.BC', 'selector.AC'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ...sharedKnobLeads,
    ]),
  };
}
