import type { Circuit } from '../circuit.ts';
import { braided, braidedLeads, braidedPickup } from './braided.ts';
import { leads, outputJack, strings } from './build.ts';
import { ownKnobLeads, ownKnobs, selectorToJack } from './knobs.ts';
import { toggle3 } from './selectors.ts';

const sides = ['neck', 'bridge'] as const;

/** Wide single coils with a lead and a braid; the braid is the cold end and grounds the base plate. The bridge pickup is reverse-wound with reversed polarity. */
export function twoWideSinglesFourKnobs(): Circuit {
  return {
    id: 'two-wide-singles-four-knobs',
    title: 'two wide single coils, 3-position toggle, two volumes and two tones',
    pickups: sides.map(braidedPickup),
    parts: [
      ...braided('neck', { resistance: 7600, inductance: 5.5, covered: false }),
      ...braided('bridge', { resistance: 8300, inductance: 5.5, covered: false, reversed: true }),
      ...sides.flatMap((side) => ownKnobs(side, 500e3)),
      toggle3,
      outputJack,
      strings,
    ],
    leads: leads([
      ...sides.flatMap((side) => [
        ...braidedLeads(side, `${side}Volume.3`, `${side}Volume.case`),
        ...ownKnobLeads(side, side === 'neck' ? 'selector.A' : 'selector.B'),
      ]),
      ...selectorToJack,
    ]),
  };
}
