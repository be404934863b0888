import type { Circuit } from '../circuit.ts';
import type { Resistor } from '../parts/part.ts';
import { henries, ohms } from '../units.ts';
import { leads, outputJack, strings } from './build.ts';
import { ownKnobs, ownToneLeads } from './knobs.ts';
import { reversed, single, singleLeads, singlePickup } from './singles.ts';

const sides = ['neck', 'bridge'] as const;

/** 220 k: common practice, no source. */
const mixer = (side: 'neck' | 'bridge'): Resistor => ({
  kind: 'resistor',
  id: `${side}Mixer`,
  title: `${side} mixing resistor`,
  ohms: { nominal: ohms(220e3), tolerance: 0.1 },
});

/** No selector: the wipers meet behind a resistor each, so that one volume at 0 leaves the other pickup. The bridge pickup is reverse-wound with reversed polarity. */
export function fourStringsTwoSinglesFourKnobs(): Circuit {
  return {
    id: 'four-strings-two-singles-four-knobs',
    title: 'four strings, two single coils, two volumes and two tones, mixed by resistors',
    pickups: sides.map(singlePickup),
    parts: [
      single('neck', { resistance: 7200, henries: henries(3.6) }),
      single('bridge', { resistance: 7700, henries: henries(3.6), ...reversed }),
      ...sides.flatMap((side) => [...ownKnobs(side, 250e3), mixer(side)]),
      outputJack,
      strings,
    ],
    leads: leads([
      ...sides.flatMap((side) => [
        ...singleLeads(side, `${side}Volume.3`, `${side}Volume.case`),
        ...ownToneLeads(side),
        [`${side}MixerWiperLeg`, 'leg', `${side}Mixer.a`, `${side}Volume.2`] as const,
        [`${side}MixerJackLeg`, 'leg', `${side}Mixer.b`, 'jack.tip'] as const,
      ]),
      ['volumesGround', 'wire', 'neckVolume.case', 'bridgeVolume.case'],
      ['jackGround', 'wire', 'bridgeVolume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'bridgeVolume.case'],
    ]),
  };
}
