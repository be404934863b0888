import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { threeSinglesFivePosition } from '../../src/circuit/catalog/three-singles-five-position.ts';
import { twoHumbuckersFourKnobs } from '../../src/circuit/catalog/two-humbuckers-four-knobs.ts';
import { twoSinglesThreePosition } from '../../src/circuit/catalog/two-singles-three-position.ts';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import type { Ask } from '../../src/readings/reading.ts';
import { everyPart } from './every-part.ts';

export interface Sample {
  readonly group: 'pots' | 'switches' | 'places' | 'pairs' | 'kinds';
  readonly name: string;
  readonly circuit: Circuit;
  readonly ask: Ask;
}

const coloured = (circuit: Circuit, colours: Record<string, string>): Circuit => ({
  ...circuit,
  leads: circuit.leads.map((lead) =>
    colours[lead.id] ? { ...lead, colour: colours[lead.id]! } : lead,
  ),
});

const four = coloured(twoHumbuckersFourKnobs(), {
  neckHot: 'green',
  neckCold: 'white',
  neckBare: 'bare',
  neckSlugInner: 'red',
  neckScrewInner: 'black',
  bridgeHot: 'orange',
  neckOutput: 'yellow',
  jackHot: 'white',
  jackGround: 'black',
});
const three = coloured(threeSinglesFivePosition(), {
  bridgeHot: 'yellow',
  middleHot: 'white',
  neckHot: 'cream',
  selectorOut: 'red',
  bridgeCold: 'black',
});
const one = oneHumbuckerOneKnob();
const plate = twoSinglesThreePosition();
const all = everyPart();

export const wirings: readonly Circuit[] = [
  four,
  three,
  plate,
  one,
  {
    ...four,
    id: 'four-knobs-two-pulls',
    title: 'four knobs, selector, two pulls',
    parts: [
      ...four.parts,
      ...(['neckVolume', 'bridgeVolume'] as const).map((carrier) => ({
        kind: 'switch' as const,
        id: `${carrier}Pull`,
        title: 'split',
        style: 'push-pull' as const,
        rows: [['A'], ['B'], ['C']],
        frame: false,
        carrier,
        positions: [
          { name: 'down', title: 'down', joins: [] },
          { name: 'up', title: 'up', joins: [] },
        ],
      })),
    ],
  },
  all,
];

const ohms = (
  group: Sample['group'],
  circuit: Circuit,
  red: string,
  black: string,
  more: Partial<Setting> = {},
): Sample => ({
  group,
  name: `${red} / ${black}`,
  circuit,
  ask: { kind: 'ohms', red, black, setting: { ...restingSetting(circuit), ...more } },
});
const other = (
  circuit: Circuit,
  ask: Omit<Ask, 'setting'>,
  more: Partial<Setting> = {},
): Sample => ({
  group: 'kinds',
  name: Object.values(ask).join(' '),
  circuit,
  ask: { ...ask, setting: { ...restingSetting(circuit), ...more } } as Ask,
});

export const samples: readonly Sample[] = [
  ohms('pots', four, 'neckVolume.3', 'neckVolume.1'),
  ohms('pots', four, 'neckVolume.3', 'neckVolume.2'),
  ohms('pots', four, 'neckVolume.1', 'neckVolume.2'),
  ohms('pots', four, 'neckVolume.3', 'neckVolume.case'),
  ohms('pots', three, 'volume.1', 'volume.case'),
  ohms('pots', four, 'neckHot@to', 'neckVolume.3'),
  ohms('pots', four, 'neckHot@to', 'neckVolume.case', { lifted: ['neckHot@to'] }),
  ohms('pots', four, 'neckHot@to', 'neckCold@to', { lifted: ['neckHot@to', 'neckCold@to'] }),
  ohms('pots', one, 'volume.2', 'cold@to'),
  ohms('pots', all, 'pullVolume.3', 'pullVolume.case'),
  ohms('pots', all, 'pull.A0', 'pull.B2'),
  ohms('switches', three, 'selector.A1', 'selector.AC'),
  ohms('switches', three, 'selector.B2', 'selector.BC'),
  ohms('switches', three, 'selector.A3', 'selector.frame'),
  ohms('switches', three, 'poleLink@to', 'selector.BC'),
  ohms('switches', four, 'selector.A', 'selector.C'),
  ohms('switches', four, 'selector.B', 'selector.frame'),
  ohms('switches', four, 'neckOutput@to', 'selector.C', { lifted: ['neckOutput@to'] }),
  ohms('switches', all, 'mini.A0', 'mini.A1'),
  ohms('switches', all, 'mini.B2', 'mini.A2'),
  ohms('switches', all, 'slide.A1', 'slide.B1'),
  ohms('switches', all, 'rotary.1', 'rotary.C'),
  ohms('switches', all, 'many.A1', 'many.D6'),
  ohms('switches', all, 'long.1', 'long.8'),
  ohms('switches', all, 'kill.1', 'kill.2'),
  ohms('places', four, 'jack.tip', 'jack.sleeve'),
  ohms('places', four, 'jack.tip', 'jack.sleeve', { plug: 'in' }),
  ohms('places', all, 'stereo.tip', 'stereo.ring'),
  ohms('places', four, 'neckSlug.start', 'neckSlug.finish'),
  ohms('places', four, 'neckScrew.finish', 'neckPlate.metal'),
  ohms('places', three, 'bridgeCoil.finish', 'bridgeCoil.start'),
  ohms('places', plate, 'neckCoil.finish', 'neckCover.metal'),
  ohms('places', plate, 'bridgeCoil.start', 'bridgePlate.metal'),
  ohms('places', four, 'neckCap.a', 'neckCap.b'),
  ohms('places', four, 'neckCapHotLeg@to', 'neckCap.b', { lifted: ['neckCapHotLeg@to'] }),
  ohms('places', all, 'bleed.a', 'bleed.b'),
  ohms('places', four, 'neckLink.joint', 'neckSlugInner@to'),
  ohms('places', all, 'foil.metal', 'paint.metal'),
  ohms('places', plate, 'controlPlate.metal', 'strings.metal'),
  ohms('pairs', four, 'jack.tip', 'selector.C'),
  ohms('pairs', four, 'selector.A', 'neckVolume.2'),
  ohms('pairs', three, 'selector.AC', 'volume.3'),
  ohms('pairs', four, 'neckVolume.case', 'bridgeVolume.case'),
  ohms('pairs', four, 'strings.metal', 'jack.sleeve'),
  ohms('pairs', four, 'neckSlug.finish', 'neckVolume.3'),
  ohms('pairs', four, 'neckVolume.3', 'neckLink.joint'),
  ohms('pairs', three, 'toneCap.a', 'neckTone.1'),
  ohms('pairs', all, 'pull.A1', 'mini.B0'),
  ohms('pairs', all, 'many.A1', 'pullVolume.3'),
  other(four, { kind: 'beep', red: 'jack.sleeve', black: 'strings.metal' } as Ask),
  other(four, {
    kind: 'turn',
    pot: 'neckVolume',
    red: 'neckVolume.2',
    black: 'neckVolume.1',
  } as Ask),
  other(four, { kind: 'turn', pot: 'neckVolume', red: 'jack.tip', black: 'jack.sleeve' } as Ask, {
    plug: 'in',
  }),
  other(four, {
    kind: 'flex',
    site: 'neckHot@to',
    red: 'neckVolume.3',
    black: 'neckVolume.case',
  } as Ask),
  other(four, { kind: 'flex', site: 'jackHot', red: 'jack.tip', black: 'jack.sleeve' } as Ask, {
    plug: 'in',
  }),
  other(
    four,
    { kind: 'flex', site: 'neckOutput@to', red: 'jack.tip', black: 'jack.sleeve' } as Ask,
    { plug: 'in' },
  ),
  other(four, { kind: 'tap', coil: 'neckScrew', red: 'jack.tip', black: 'jack.sleeve' } as Ask, {
    plug: 'in',
  }),
  other(three, { kind: 'tap', coil: 'middleCoil', red: 'jack.tip', black: 'jack.sleeve' } as Ask),
  other(
    four,
    { kind: 'tap', coil: 'neckSlug', red: 'neckHot@to', black: 'neckLink.joint' } as Ask,
    { lifted: ['neckHot@to'] },
  ),
  other(four, { kind: 'pole', coil: 'neckSlug' } as Ask),
  other(three, { kind: 'pole', coil: 'neckCoil' } as Ask),
  other(four, { kind: 'touch', metal: 'strings.metal' } as Ask),
  other(plate, { kind: 'touch', metal: 'neckCover.metal' } as Ask),
  other(four, { kind: 'touch', metal: 'jack.sleeve' } as Ask),
  other(four, { kind: 'look', at: 'neckHot@to' } as Ask),
  other(four, { kind: 'look', at: 'selectorGround@to' } as Ask),
  other(four, { kind: 'look', at: 'selector' } as Ask),
  other(four, { kind: 'look', at: 'neckSlug' } as Ask),
  other(four, { kind: 'look', at: 'neckLink' } as Ask),
  other(four, { kind: 'listen' } as Ask, { plug: 'in' }),
  other(four, { kind: 'hum', against: restingSetting(four) } as Ask, { plug: 'in' }),
  other(four, { kind: 'farads', part: 'neckCap', red: 'neckCap.a', black: 'neckCap.b' } as Ask, {
    lifted: ['neckCapHotLeg@to'],
  }),
];
