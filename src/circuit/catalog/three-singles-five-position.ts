import type { Circuit } from '../circuit.ts';
import { capacitor, coil, leads, outputJack, pot, strings } from './build.ts';
import { blade5 } from './selectors.ts';

const sides = ['bridge', 'middle', 'neck'] as const;

/** Pole A picks the pickup, pole B its tone control. One volume; one tone for the neck, one for the middle, sharing a capacitor. The middle is reverse-wound with reversed polarity. */
export function threeSinglesFivePosition(): Circuit {
  return {
    id: 'three-singles-five-position',
    title: 'three single coils, 5-position blade, one volume and two tones',
    pickups: sides.map((side) => ({
      id: `${side}Pickup`,
      title: `${side} pickup`,
      coils: [`${side}Coil`],
    })),
    parts: [
      coil('bridgeCoil', 'bridge pickup', { resistance: 6300, ends: 'eyelets' }),
      coil('middleCoil', 'middle pickup', {
        resistance: 5900,
        ends: 'eyelets',
        winding: -1,
        magnet: -1,
      }),
      coil('neckCoil', 'neck pickup', { resistance: 5700, ends: 'eyelets' }),
      blade5,
      pot('volume', 'volume', 'volume', 250e3),
      pot('neckTone', 'neck tone', 'tone', 250e3),
      pot('middleTone', 'middle tone', 'tone', 250e3),
      capacitor('toneCap', 'tone capacitor', 22e-9),
      outputJack,
      strings,
    ],
    leads: leads([
      ['bridgeHot', 'pickup', 'bridgeCoil.finish', 'selector.A1'],
      ['middleHot', 'pickup', 'middleCoil.finish', 'selector.A2'],
      ['neckHot', 'pickup', 'neckCoil.finish', 'selector.A3'],
      ['bridgeCold', 'pickup', 'bridgeCoil.start', 'volume.case'],
      ['middleCold', 'pickup', 'middleCoil.start', 'volume.case'],
      ['neckCold', 'pickup', 'neckCoil.start', 'volume.case'],
      ['poleLink', 'wire', 'selector.AC', 'selector.BC'],
      ['selectorOut', 'wire', 'selector.AC', 'volume.3'],
      ['neckToneWire', 'wire', 'selector.B3', 'neckTone.2'],
      ['middleToneWire', 'wire', 'selector.B2', 'middleTone.2'],
      ['tonesLink', 'wire', 'neckTone.1', 'middleTone.1'],
      ['capHotLeg', 'leg', 'toneCap.a', 'neckTone.1'],
      ['capGroundLeg', 'leg', 'toneCap.b', 'neckTone.case'],
      ['volumeGround', 'wire', 'volume.1', 'volume.case'],
      ['neckToneCase', 'wire', 'volume.case', 'neckTone.case'],
      ['middleToneCase', 'wire', 'neckTone.case', 'middleTone.case'],
      ['selectorGround', 'wire', 'selector.frame', 'volume.case'],
      ['jackHot', 'wire', 'volume.2', 'jack.tip'],
      ['jackGround', 'wire', 'volume.case', 'jack.sleeve'],
      ['stringGround', 'wire', 'strings.metal', 'volume.case'],
    ]),
  };
}
