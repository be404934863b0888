import type { Circuit } from '../circuit.ts';
import { fourStringsHumbuckerMiniToggle } from './four-strings-humbucker-mini-toggle.ts';
import { fourStringsSplitAndSingle } from './four-strings-split-and-single.ts';
import { fourStringsSplitPickup } from './four-strings-split-pickup.ts';
import { fourStringsTwoSingles } from './four-strings-two-singles.ts';
import { fourStringsTwoSinglesFourKnobs } from './four-strings-two-singles-four-knobs.ts';
import { fourStringsTwoSplitPickups } from './four-strings-two-split-pickups.ts';
import { humbuckerSingleHumbucker } from './humbucker-single-humbucker.ts';
import { humbuckerTwoSingles } from './humbucker-two-singles.ts';
import { humbuckerTwoSinglesSplit } from './humbucker-two-singles-split.ts';
import { oneHumbuckerOneKnob } from './one-humbucker-one-knob.ts';
import { oneSingleOneKnob } from './one-single-one-knob.ts';
import { oneSingleTwoKnobs } from './one-single-two-knobs.ts';
import { oneThreeConductorHumbucker } from './one-three-conductor-humbucker.ts';
import { oneWideSingleTwoKnobs } from './one-wide-single-two-knobs.ts';
import { threeSinglesFivePosition } from './three-singles-five-position.ts';
import { threeSinglesOneTone } from './three-singles-one-tone.ts';
import { threeSinglesSixPosition } from './three-singles-six-position.ts';
import { threeTwoConductorPickups } from './three-two-conductor-pickups.ts';
import { twoHumbuckersFivePosition } from './two-humbuckers-five-position.ts';
import { twoHumbuckersFourKnobs } from './two-humbuckers-four-knobs.ts';
import { twoHumbuckersSharedControls } from './two-humbuckers-shared-controls.ts';
import { twoHumbuckersSixPosition } from './two-humbuckers-six-position.ts';
import { twoHumbuckersStereoJack } from './two-humbuckers-stereo-jack.ts';
import { twoPickupsSharedControls } from './two-pickups-shared-controls.ts';
import { twoSinglesFourPosition } from './two-singles-four-position.ts';
import { twoSinglesThreePosition } from './two-singles-three-position.ts';
import { twoThreeConductorHumbuckers } from './two-three-conductor-humbuckers.ts';
import { twoWideSinglesFourKnobs } from './two-wide-singles-four-knobs.ts';
import { twoWideSinglesSharedControls } from './two-wide-singles-shared-controls.ts';

/** Under which headings wirings are offered, in that order. */
export const families = ['twoPickups', 'threePickups', 'onePickup', 'fourStrings'] as const;

export interface StartingWiring {
  readonly id: string;
  readonly title: string;
  readonly family: (typeof families)[number];
  build(): Circuit;
}

const byPickups = { 1: 'onePickup', 2: 'twoPickups', 3: 'threePickups' } as const;

const of = (build: () => Circuit): StartingWiring => {
  const { id, title, pickups } = build();
  const family = id.startsWith('four-strings')
    ? 'fourStrings'
    : byPickups[pickups.length as 1 | 2 | 3];
  return { id, title, family, build };
};

/** Wirings to start from; all are meant to be edited. */
export const startingWirings: readonly StartingWiring[] = [
  of(twoHumbuckersFourKnobs),
  of(threeSinglesFivePosition),
  of(twoSinglesThreePosition),
  of(oneHumbuckerOneKnob),
  of(twoPickupsSharedControls),
  of(twoHumbuckersSharedControls),
  of(twoWideSinglesFourKnobs),
  of(threeSinglesOneTone),
  of(humbuckerTwoSingles),
  of(oneSingleTwoKnobs),
  of(oneThreeConductorHumbucker),
  of(fourStringsSplitPickup),
  of(fourStringsTwoSingles),
  of(twoThreeConductorHumbuckers),
  of(twoHumbuckersFivePosition),
  of(twoHumbuckersSixPosition),
  of(twoHumbuckersStereoJack),
  of(humbuckerTwoSinglesSplit),
  of(humbuckerSingleHumbucker),
  of(threeSinglesSixPosition),
  of(twoSinglesFourPosition),
  of(threeTwoConductorPickups),
  of(twoWideSinglesSharedControls),
  of(oneWideSingleTwoKnobs),
  of(oneSingleOneKnob),
  of(fourStringsSplitAndSingle),
  of(fourStringsTwoSplitPickups),
  of(fourStringsTwoSinglesFourKnobs),
  of(fourStringsHumbuckerMiniToggle),
];
