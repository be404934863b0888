import {
  capacitor,
  coil,
  leads,
  outputJack,
  pot,
  strings,
} from '../../src/circuit/catalog/build.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Resistor, Switch } from '../../src/circuit/parts/part.ts';
import { ohms } from '../../src/circuit/units.ts';

const sw = (
  id: string,
  title: string,
  style: Switch['style'],
  rows: readonly (readonly string[])[],
  positions: readonly string[],
  more: Partial<Switch> = {},
): Switch => ({
  kind: 'switch',
  id,
  title,
  style,
  rows,
  positions: positions.map((name) => ({ name, title: name, joins: [] })),
  frame: false,
  ...more,
});
const twoByThree = [
  ['A0', 'B0'],
  ['A1', 'B1'],
  ['A2', 'B2'],
];
const bleed: Resistor = {
  kind: 'resistor',
  id: 'bleed',
  title: 'bleed resistor',
  ohms: { nominal: ohms(100e3), tolerance: 0.05 },
};

/** A guitar nobody would build: one of every kind of part, for the pictures. */
export function everyPart(): Circuit {
  return {
    id: 'every-part',
    title: 'one of every part',
    pickups: [{ id: 'pickup', title: 'pickup', coils: ['only'] }],
    parts: [
      coil('only', 'pickup', { resistance: 6000 }),
      pot('pullVolume', 'volume', 'volume', 500e3),
      pot('tone', 'tone', 'tone', 500e3),
      sw('pull', 'split switch of the volume', 'push-pull', twoByThree, ['down', 'up'], {
        carrier: 'pullVolume',
      }),
      sw('mini', 'phase switch', 'mini-toggle', twoByThree, ['in', 'out']),
      sw(
        'slide',
        'slide switch',
        'slide',
        [
          ['A0', 'A1', 'A2'],
          ['B0', 'B1', 'B2'],
        ],
        ['left', 'right'],
      ),
      sw(
        'rotary',
        'rotary selector',
        'rotary',
        [['1', '2', '3', '4', '5', '6'], ['C']],
        ['1', '2', '3', '4', '5', '6'],
      ),
      sw(
        'many',
        'four-pole selector',
        'blade',
        ['A', 'B', 'C', 'D'].map((pole) => [1, 2, 3, 4, 5, 6].map((n) => `${pole}${n}`)),
        ['1', '2', '3', '4', '5'],
        { frame: true },
      ),
      sw(
        'long',
        'one-row selector',
        'blade',
        [['1', '2', '3', '4', '5', '6', '7', '8']],
        ['1', '2', '3', '4', '5'],
        { frame: true },
      ),
      sw('kill', 'kill button', 'button', [['1', '2']], ['up', 'pressed']),
      capacitor('cap', 'tone capacitor', 22e-9),
      bleed,
      outputJack,
      { kind: 'jack', id: 'stereo', title: 'stereo jack', ring: true },
      strings,
      { kind: 'metal', id: 'foil', title: 'shield foil', role: 'foil', outside: false },
      { kind: 'metal', id: 'paint', title: 'conductive paint', role: 'paint', outside: false },
    ],
    leads: leads([
      ['hot', 'pickup', 'only.finish', 'pull.A1'],
      ['cold', 'pickup', 'only.start', 'pullVolume.case'],
      ['split', 'wire', 'pull.A0', 'mini.A0'],
      ['splitGround', 'wire', 'pull.A2', 'pullVolume.case'],
      ['phaseA', 'wire', 'mini.A1', 'pullVolume.3'],
      ['phaseB', 'wire', 'mini.B1', 'many.A1'],
      ['crossA', 'wire', 'mini.A0', 'mini.B2'],
      ['crossB', 'wire', 'mini.B0', 'mini.A2'],
      ['bleedA', 'leg', 'bleed.a', 'pullVolume.3'],
      ['bleedB', 'leg', 'bleed.b', 'pullVolume.2'],
      ['out', 'wire', 'pullVolume.2', 'jack.tip'],
      ['ground', 'wire', 'pullVolume.case', 'jack.sleeve'],
      ['lower', 'wire', 'pullVolume.1', 'pullVolume.case'],
      ['killA', 'wire', 'kill.1', 'jack.tip'],
      ['killB', 'wire', 'kill.2', 'jack.sleeve'],
      ['slideOut', 'wire', 'slide.A1', 'rotary.C'],
      ['slideIn', 'wire', 'slide.B0', 'rotary.1'],
      ['rotaryTwo', 'wire', 'rotary.2', 'many.B3'],
      ['manyOut', 'wire', 'many.C6', 'long.1'],
      ['longOut', 'wire', 'long.4', 'stereo.tip'],
      ['stereoRing', 'wire', 'stereo.ring', 'long.8'],
      ['stereoGround', 'wire', 'stereo.sleeve', 'pullVolume.case'],
      ['capA', 'leg', 'cap.a', 'tone.2'],
      ['capB', 'leg', 'cap.b', 'tone.case'],
      ['toneIn', 'wire', 'tone.3', 'pullVolume.3'],
      ['stringGround', 'wire', 'strings.metal', 'pullVolume.case'],
      ['foilGround', 'wire', 'foil.metal', 'pullVolume.case'],
      ['paintGround', 'wire', 'paint.metal', 'foil.metal'],
    ]),
  };
}
