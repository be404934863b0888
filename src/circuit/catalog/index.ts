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

/** Its names are those of the circuit, which is built when somebody first asks for one: all of them together hold up a screen. */
function of(family: StartingWiring['family'], build: () => Circuit): StartingWiring {
  let built: Circuit | undefined;
  const named = () => {
    built ??= build();
    return built;
  };
  return {
    family,
    build,
    get id() {
      return named().id;
    },
    get title() {
      return named().title;
    },
  };
}

/** Wirings to start from; all are meant to be edited. */
export const startingWirings: readonly StartingWiring[] = [
  of('twoPickups', twoHumbuckersFourKnobs),
  of('threePickups', threeSinglesFivePosition),
  of('twoPickups', twoSinglesThreePosition),
  of('onePickup', oneHumbuckerOneKnob),
  of('twoPickups', twoPickupsSharedControls),
  of('twoPickups', twoHumbuckersSharedControls),
  of('twoPickups', twoWideSinglesFourKnobs),
  of('threePickups', threeSinglesOneTone),
  of('threePickups', humbuckerTwoSingles),
  of('onePickup', oneSingleTwoKnobs),
  of('onePickup', oneThreeConductorHumbucker),
  of('fourStrings', fourStringsSplitPickup),
  of('fourStrings', fourStringsTwoSingles),
  of('twoPickups', twoThreeConductorHumbuckers),
  of('twoPickups', twoHumbuckersFivePosition),
  of('twoPickups', twoHumbuckersSixPosition),
  of('twoPickups', twoHumbuckersStereoJack),
  of('threePickups', humbuckerTwoSinglesSplit),
  of('threePickups', humbuckerSingleHumbucker),
  of('threePickups', threeSinglesSixPosition),
  of('twoPickups', twoSinglesFourPosition),
  of('threePickups', threeTwoConductorPickups),
  of('twoPickups', twoWideSinglesSharedControls),
  of('onePickup', oneWideSingleTwoKnobs),
  of('onePickup', oneSingleOneKnob),
  of('fourStrings', fourStringsSplitAndSingle),
  of('fourStrings', fourStringsTwoSplitPickups),
  of('fourStrings', fourStringsTwoSinglesFourKnobs),
  of('fourStrings', fourStringsHumbuckerMiniToggle),
];
