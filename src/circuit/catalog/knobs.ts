import type { LugRef } from '../circuit.ts';
import type { Part } from '../parts/part.ts';
import { capacitor, type LeadRow, outputJack, pot, strings } from './build.ts';

type Side = 'neck' | 'bridge';

/** A volume and a tone for one pickup; the tone hangs on the volume's input. */
export const ownKnobs = (side: Side, track: number): readonly Part[] => [
  pot(`${side}Volume`, `${side} volume`, 'volume', track),
  pot(`${side}Tone`, `${side} tone`, 'tone', track),
  capacitor(`${side}Cap`, `${side} tone capacitor`, 22e-9),
];

/** All but what leaves the wiper. */
export const ownToneLeads = (side: Side): readonly LeadRow[] => [
  [`${side}VolumeGround`, 'wire', `${side}Volume.1`, `${side}Volume.case`],
  [`${side}CapHotLeg`, 'leg', `${side}Cap.a`, `${side}Volume.3`],
  [`${side}CapToneLeg`, 'leg', `${side}Cap.b`, `${side}Tone.2`],
  [`${side}ToneGround`, 'wire', `${side}Tone.1`, `${side}Tone.case`],
  [`${side}CaseLink`, 'wire', `${side}Volume.case`, `${side}Tone.case`],
];

/** The wiper is the output. */
export const ownKnobLeads = (side: Side, output: LugRef): readonly LeadRow[] => [
  ...ownToneLeads(side),
  [`${side}Output`, 'wire', `${side}Volume.2`, output],
];

/** Two volumes and two tones on a 3-position selector: what lies beyond the wipers. */
export const selectorToJack: readonly LeadRow[] = [
  ['volumesGround', 'wire', 'neckVolume.case', 'bridgeVolume.case'],
  ['selectorGround', 'wire', 'selector.frame', 'neckVolume.case'],
  ['jackHot', 'wire', 'selector.C', 'jack.tip'],
  ['jackGround', 'wire', 'bridgeVolume.case', 'jack.sleeve'],
  ['stringGround', 'wire', 'strings.metal', 'bridgeVolume.case'],
];

/** One volume and one tone for the whole guitar, then the jack. What comes in is soldered to `volume.3`. */
export const sharedKnobs = (track: number, toneFarads: number): readonly Part[] => [
  pot('volume', 'volume', 'volume', track),
  pot('tone', 'tone', 'tone', track),
  capacitor('toneCap', 'tone capacitor', toneFarads),
  outputJack,
  strings,
];

export const sharedKnobLeads: readonly LeadRow[] = [
  ['capHotLeg', 'leg', 'toneCap.a', 'volume.3'],
  ['capToneLeg', 'leg', 'toneCap.b', 'tone.2'],
  ['toneGround', 'wire', 'tone.1', 'tone.case'],
  ['volumeGround', 'wire', 'volume.1', 'volume.case'],
  ['caseLink', 'wire', 'volume.case', 'tone.case'],
  ['jackHot', 'wire', 'volume.2', 'jack.tip'],
  ['jackGround', 'wire', 'volume.case', 'jack.sleeve'],
  ['stringGround', 'wire', 'strings.metal', 'volume.case'],
];

const sides = ['neck', 'bridge'] as const;

/** Two volumes and one tone, then the jack. */
export const twoVolumesOneTone = (track: number, toneFarads: number): readonly Part[] => [
  ...sides.map((side) => pot(`${side}Volume`, `${side} volume`, 'volume', track)),
  pot('tone', 'tone', 'tone', track),
  capacitor('toneCap', 'tone capacitor', toneFarads),
  outputJack,
  strings,
];

const volumeGrounds: readonly LeadRow[] = sides.map((side) => [
  `${side}VolumeGround`,
  'wire',
  `${side}Volume.1`,
  `${side}Volume.case`,
]);

/** No selector: each pickup comes to the wiper of its own volume, lug 3 of both goes to the tone and the jack. */
export const mixedVolumeLeads: readonly LeadRow[] = [
  ...volumeGrounds,
  ['outputsLink', 'wire', 'neckVolume.3', 'bridgeVolume.3'],
  ['toneWire', 'wire', 'bridgeVolume.3', 'tone.2'],
  ['capHotLeg', 'leg', 'toneCap.a', 'tone.1'],
  ['capGroundLeg', 'leg', 'toneCap.b', 'tone.case'],
  ['volumesGround', 'wire', 'neckVolume.case', 'bridgeVolume.case'],
  ['toneCase', 'wire', 'bridgeVolume.case', 'tone.case'],
  ['jackHot', 'wire', 'bridgeVolume.3', 'jack.tip'],
  ['jackGround', 'wire', 'tone.case', 'jack.sleeve'],
  ['stringGround', 'wire', 'strings.metal', 'tone.case'],
];

/** Each volume feeds a 3-position toggle from its wiper; the tone hangs on the selector's output. */
export const toggledVolumeLeads: readonly LeadRow[] = [
  ...volumeGrounds,
  ['neckOutput', 'wire', 'neckVolume.2', 'selector.A'],
  ['bridgeOutput', 'wire', 'bridgeVolume.2', 'selector.B'],
  ['toneWire', 'wire', 'selector.C', 'tone.2'],
  ['capHotLeg', 'leg', 'toneCap.a', 'tone.1'],
  ['capGroundLeg', 'leg', 'toneCap.b', 'tone.case'],
  ['selectorGround', 'wire', 'selector.frame', 'neckVolume.case'],
  ['volumesGround', 'wire', 'neckVolume.case', 'bridgeVolume.case'],
  ['toneCase', 'wire', 'bridgeVolume.case', 'tone.case'],
  ['jackHot', 'wire', 'tone.2', 'jack.tip'],
  ['jackGround', 'wire', 'tone.case', 'jack.sleeve'],
  ['stringGround', 'wire', 'strings.metal', 'tone.case'],
];
