import type { Circuit } from '../circuit.ts';
import { capacitor, coil, leads, outputJack, pot, strings } from './build.ts';
import { blade3 } from './selectors.ts';

/** Only pole A is used; pole B's lugs stay empty. A control plate carries both pots, the selector and the jack; the bridge pickup has a metal plate, the neck pickup a metal cover. */
export function twoSinglesThreePosition(): Circuit {
  return {
    id: 'two-singles-three-position',
    title: 'two single coils, 3-position blade, one volume and one tone',
    pickups: [
      { id: 'bridgePickup', title: 'bridge pickup', coils: ['bridgeCoil'], plate: 'bridgePlate' },
      { id: 'neckPickup', title: 'neck pickup', coils: ['neckCoil'], cover: 'neckCover' },
    ],
    parts: [
      coil('bridgeCoil', 'bridge pickup', { resistance: 7000, ends: 'eyelets' }),
      {
        kind: 'metal',
        id: 'bridgePlate',
        title: 'base plate of the bridge pickup',
        role: 'plate',
        outside: false,
      },
      coil('neckCoil', 'neck pickup', { resistance: 6600, winding: -1, magnet: -1 }),
      {
        kind: 'metal',
        id: 'neckCover',
        title: 'cover of the neck pickup',
        role: 'cover',
        outside: true,
      },
      blade3,
      pot('volume', 'volume', 'volume', 250e3),
      pot('tone', 'tone', 'tone', 250e3),
      capacitor('toneCap', 'tone capacitor', 47e-9),
      {
        kind: 'metal',
        id: 'controlPlate',
        title: 'control plate',
        role: 'control-plate',
        outside: true,
      },
      outputJack,
      strings,
    ],
    leads: leads([
      ['bridgeHot', 'pickup', 'bridgeCoil.finish', 'selector.A1'],
      ['bridgeCold', 'pickup', 'bridgeCoil.start', 'volume.case'],
      ['bridgePlateLink', 'pickup', 'bridgePlate.metal', 'bridgeCoil.start'],
      ['neckHot', 'pickup', 'neckCoil.finish', 'selector.A3'],
      ['neckCold', 'pickup', 'neckCoil.start', 'volume.case'],
      ['neckCoverWire', 'pickup', 'neckCover.metal', 'volume.case'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['toneWire', 'wire', 'volume.3', 'tone.2'],
      ['capHotLeg', 'leg', 'toneCap.a', 'tone.1'],
      ['capGroundLeg', 'leg', 'toneCap.b', 'tone.case'],
      ['volumeGround', 'wire', 'volume.1', 'volume.case'],
      ['caseLink', 'wire', 'volume.case', 'tone.case'],
      ['volumeMount', 'mount', 'volume.case', 'controlPlate.metal'],
      ['selectorMount', 'mount', 'selector.frame', 'controlPlate.metal'],
      ['jackHot', 'wire', 'volume.2', 'jack.tip'],
      ['jackGround', 'wire', 'tone.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'volume.case'],
    ]),
  };
}
