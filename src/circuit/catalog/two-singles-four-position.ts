import type { Circuit } from '../circuit.ts';
import { leads } from './build.ts';
import { sharedKnobLeads, sharedKnobs } from './knobs.ts';
import { steppedBlade } from './selectors.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

/** The neck's hot end is on the output throughout; pole B takes its cold end nowhere, to ground, or on top of the bridge. The neck is reverse-wound with reversed polarity. */
export function twoSinglesFourPosition(): Circuit {
  return {
    id: 'two-singles-four-position',
    title: 'two single coils, 4-position blade with both in series, one volume and one tone',
    pickups: [singlePickup('bridge'), singlePickup('neck')],
    parts: [
      single('bridge', { resistance: 7100 }),
      single('neck', { resistance: 6700, ...reversed }),
      steppedBlade('AB', ['bridge', 'both pickups', 'neck', 'both pickups in series']),
      ...sharedKnobs(250e3, 47e-9),
    ],
    leads: leads([
      ...singleLeads('bridge', 'selector.A1', 'volume.case'),
      ...singleLeads('neck', 'selector.AC', 'selector.BC'),
      ['bridgeJumper', 'wire', 'selector.A1', 'selector.A2'],
      ['bridgeSeries', 'wire', 'selector.A2', 'selector.B4'],
      ['neckJumper', 'wire', 'selector.B2', 'selector.B3'],
      ['neckGround', 'wire', 'selector.B3', 'volume.case'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ...sharedKnobLeads,
    ]),
  };
}
