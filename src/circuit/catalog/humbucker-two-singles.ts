import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { humbucker, humbuckerLeads, humbuckerPickup } from './humbucker.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { blade5 } from './selectors.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

/** The bridge's two coils stay in series in every position; the middle is reverse-wound with reversed polarity. */
export function humbuckerTwoSingles(): Circuit {
  return {
    id: 'humbucker-two-singles',
    title: 'bridge humbucker, two single coils, 5-position blade, one volume and one tone',
    pickups: [humbuckerPickup('bridge'), singlePickup('middle'), singlePickup('neck')],
    parts: [
      ...humbucker('bridge', { resistance: 4200, inductance: 2.5 }),
      single('middle', { resistance: 6000, ...reversed }),
      single('neck', { resistance: 5800 }),
      blade5,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...humbuckerLeads('bridge', 'selector.A1', 'volume.case'),
      ...singleLeads('middle', 'selector.A2', 'volume.case'),
      ...singleLeads('neck', 'selector.A3', 'volume.case'),
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
