import type { Circuit } from '../circuit.ts';
import { braided, braidedLeads, braidedPickup } from './braided.ts';
import { leads } from './build.ts';
import { sharedKnobs } from './knobs.ts';
import { toggle3 } from './selectors.ts';

export function twoPickupsSharedControls(): Circuit {
  const sides = ['neck', 'bridge'] as const;
  return {
    id: 'two-pickups-shared-controls',
    title: 'two two-conductor pickups, 3-position toggle, shared volume and tone',
    pickups: sides.map(braidedPickup),
    parts: [
      ...braided('neck', { resistance: 7500, inductance: 4.4, covered: true }),
      ...braided('bridge', { resistance: 8200, inductance: 4.4, covered: true }),
      toggle3,
      ...sharedKnobs(500e3, 22e-9),
    ],
    leads: leads([
      ...braidedLeads('neck', 'selector.A', 'volume.case'),
      ...braidedLeads('bridge', 'selector.B', 'volume.case'),
      ['selectorOut', 'wire', 'selector.C', 'volume.3'],
      ['capHotLeg', 'leg', 'toneCap.a', 'volume.3'],
      ['capToneLeg', 'leg', 'toneCap.b', 'tone.2'],
      ['toneGround', 'wire', 'tone.1', 'tone.case'],
      ['volumeGround', 'wire', 'volume.1', 'volume.case'],
      ['caseLink', 'wire', 'volume.case', 'tone.case'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ['jackHot', 'wire', 'volume.2', 'jack.tip'],
      ['jackGround', 'wire', 'volume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'tone.case'],
    ]),
  };
}
