import { addIn } from './add-in.ts';
import { bassCut } from './bass-cut.ts';
import { bassCutKnob } from './bass-cut-knob.ts';
import { blend } from './blend.ts';
import { coilSplit } from './coil-split.ts';
import { independentVolumes } from './independent-volumes.ts';
import { killButton } from './kill-button.ts';
import { leftHandedPots } from './left-handed-pots.ts';
import { masterTone } from './master-tone.ts';
import { masterVolume } from './master-volume.ts';
import type { Modification } from './modification.ts';
import { noLoadTone } from './no-load-tone.ts';
import { ownGround } from './own-ground.ts';
import { partialSplit } from './partial-split.ts';
import { phaseOfCoil } from './phase-of-coil.ts';
import { phaseOfPickup } from './phase-of-pickup.ts';
import { pickupsInSeries } from './pickups-in-series.ts';
import { potValue } from './pot-value.ts';
import { seriesParallel } from './series-parallel.ts';
import { splitBoth } from './split-both.ts';
import { straightToJack } from './straight-to-jack.ts';
import { sweptSplit } from './swept-split.ts';
import { toneSide } from './tone-side.ts';
import { trebleBleed } from './treble-bleed.ts';

/**
 * In the order in which they are put on: from the controls inward to the single coil, so that each takes hold of
 * leads that nothing further in has moved. The kill button stays across the jack. Left-handed pots are last: the others take hold of
 * lugs as they are on the usual ones.
 */
export const modifications: readonly Modification[] = [
  potValue,
  noLoadTone,
  ownGround,
  toneSide,
  independentVolumes,
  trebleBleed,
  bassCut,
  bassCutKnob,
  addIn,
  blend,
  masterVolume,
  masterTone,
  straightToJack,
  pickupsInSeries,
  phaseOfPickup,
  seriesParallel,
  coilSplit,
  partialSplit,
  sweptSplit,
  splitBoth,
  phaseOfCoil,
  killButton,
  leftHandedPots,
];
