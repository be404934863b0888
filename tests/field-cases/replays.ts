import { ohms } from '../../src/circuit/units.ts';
import type { Heard } from '../../src/readings/reading.ts';
import type { Replay, Step } from './case.ts';

const figure = (value: number | 'open') =>
  ({ kind: 'ohms', ohms: value === 'open' ? value : ohms(value) }) as const;
const jack = (position: string, value: number | 'open'): Step => ({
  ask: { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve' },
  position,
  seen: figure(value),
});
/** Between two points, with some joints unsoldered. */
const between = (
  red: string,
  black: string,
  value: number | 'open',
  more: { readonly lifted?: readonly string[]; readonly position?: string } = {},
): Step => ({ ask: { kind: 'ohms', red, black }, seen: figure(value), ...more });
export const heard = (position: string, how: Heard): Step => ({
  ask: { kind: 'listen' },
  position,
  plug: 'in',
  seen: { kind: 'listen', heard: how },
});
export const touched = (metal: string, hum: 'up' | 'down' | 'same'): Step => ({
  ask: { kind: 'touch', metal },
  plug: 'in',
  seen: { kind: 'touch', hum },
});

/** Cases whose points can be named in a starting wiring. Values not stated are those of the starting wiring. */
export const replays: readonly Replay[] = [
  {
    id: 'K01',
    wiring: 'three-singles-five-position',
    values: {},
    steps: [jack('1', 6300), jack('5', 5700), jack('3', 260e3)],
    resolved: ['coil:middleCoil'],
    note: 'taken at the jack with volume full: the page does not say so, 260 k does',
  },
  {
    id: 'K03',
    wiring: 'three-singles-five-position',
    values: { neckCoil: 5900, middleCoil: 5900, bridgeCoil: 6100 },
    steps: [between('neckHot@to', 'neckCold@to', 'open', { lifted: ['neckHot@to'] })],
    resolved: ['coil:neckCoil'],
    note: 'read with a lead lifted; the figures before the damage are the values',
  },
  {
    id: 'K07',
    wiring: 'one-humbucker-one-knob',
    values: { bridgeSlug: 5000, bridgeScrew: 5000, volume: 250e3 },
    steps: [between('hot@to', 'slugInner@to', 5000), between('screwInner@to', 'cold@to', 223e3)],
    resolved: ['coil:bridgeScrew', 'remake:screwInner', 'remake:cold'],
    note: 'two coils in series under a 250 k volume; the tone pot is behind its capacitor; which half is hot is not told: the sound one here',
  },
  {
    id: 'K11',
    wiring: 'two-singles-three-position',
    values: { neckCoil: 7000 },
    steps: [
      between('neckHot@to', 'neckCold@to', 3000, { position: 'neck' }),
      between('neckHot@to', 'neckCold@to', 3000, { position: 'bridge' }),
    ],
    resolved: ['coil:neckCoil'],
    note: 'middle of the expected 6 to 8 k; the first reading with the selector on neck',
  },
  {
    id: 'K15',
    wiring: 'two-pickups-shared-controls',
    values: { neckCoil: 7000, bridgeCoil: 7000 },
    steps: [
      jack('bridge', 430e3),
      jack('neck', 7000),
      between('bridgeHot@to', 'bridgeBraid@to', 'open', {
        position: 'bridge',
        lifted: ['bridgeHot@to'],
      }),
    ],
    resolved: ['coil:bridgeCoil'],
    note: 'the reading of a second guitar is left out',
    after: 2,
  },
  {
    id: 'K17',
    wiring: 'two-pickups-shared-controls',
    values: { neckCoil: 7480 },
    steps: [
      between('neckPlate.metal', 'neckBraid@to', 0, { lifted: ['neckHot@to', 'neckBraid@to'] }),
      between('neckPlate.metal', 'neckHot@to', 'open', { lifted: ['neckHot@to', 'neckBraid@to'] }),
      between('neckBraid@to', 'neckHot@to', 'open', { lifted: ['neckHot@to', 'neckBraid@to'] }),
    ],
    resolved: ['coil:neckCoil'],
    note: 'point 1 is the case, 2 the cold wire, 3 the hot pin; the sister tells the value',
  },
  {
    id: 'K19',
    wiring: 'two-pickups-shared-controls',
    values: { neckCoil: 4900, bridgeCoil: 4900 },
    steps: [
      heard('bridge', 'silent'),
      between('neckHot@to', 'neckBraid@to', 4900, { lifted: ['neckHot@to'] }),
      between('bridgeHot@to', 'bridgeBraid@to', 'open', { lifted: ['bridgeHot@to'] }),
    ],
    resolved: ['coil:bridgeCoil'],
    note: 'one volume for each pickup in the guitar; read at the pickups with a lead lifted, where that does not show; the sound pickup tells the value of both',
  },
  {
    id: 'K21',
    wiring: 'two-humbuckers-four-knobs',
    values: {},
    steps: [between('neckHot@to', 'neckCold@to', 'open', { lifted: ['neckHot@to'] })],
    resolved: ['coil:neckScrew', 'coil:neckSlug'],
    note: 'front is neck; which coil stayed open once they were apart is not told, so that reading is left out',
  },
  {
    id: 'K23',
    wiring: 'two-pickups-shared-controls',
    values: { neckCoil: 20e3, bridgeCoil: 20e3 },
    steps: [between('neckHot@to', 'neckBraid@to', 5000, { lifted: ['neckHot@to'] })],
    resolved: ['coil:neckCoil'],
    note: 'middle of the normal 15 to 25 k; read with a lead lifted',
  },
  {
    id: 'K27',
    wiring: 'two-singles-three-position',
    values: {},
    steps: [
      heard('bridge', 'silent'),
      heard('both', 'normal'),
      heard('neck', 'normal'),
      between('bridgeHot@to', 'bridgeCold@to', 'open', { lifted: ['bridgeHot@to'] }),
    ],
    resolved: ['coil:bridgeCoil'],
    note: 'read with a lead lifted',
  },
  {
    id: 'K31',
    wiring: 'two-singles-three-position',
    values: { bridgeCoil: 7500, neckCoil: 7500 },
    steps: [
      heard('bridge', 'silent'),
      heard('neck', 'normal'),
      between('bridgeHot@to', 'bridgeCold@to', 'open', { lifted: ['bridgeHot@to'] }),
    ],
    resolved: ['coil:bridgeCoil'],
    note: '"dead" is taken for over-range, with a lead lifted',
  },
  {
    id: 'K47',
    wiring: 'two-humbuckers-four-knobs',
    values: {},
    steps: [
      heard('both', 'hum'),
      touched('strings.metal', 'same'),
      between('strings.metal', 'jack.sleeve', 'open'),
      {
        ask: { kind: 'look', at: 'stringGround@to' },
        seen: { kind: 'look', how: 'good' },
      },
    ],
    resolved: ['remake:stringGround'],
    note: 'circuit ground is the sleeve',
  },
  {
    id: 'K49',
    wiring: 'two-singles-three-position',
    values: {},
    steps: [touched('controlPlate.metal', 'down'), touched('strings.metal', 'same')],
    resolved: ['remake:stringGround'],
    note: 'no figures, but touches at named metal; a wire stands for the chain of screws that grounds the bridge',
  },
  {
    id: 'K57',
    wiring: 'three-singles-five-position',
    values: {},
    steps: [heard('2', 'thin')],
    resolved: ['turn:bridgeCoil'],
    note: 'by ear alone',
  },
  {
    id: 'K59',
    wiring: 'three-singles-five-position',
    values: {},
    steps: [
      heard('1', 'normal'),
      heard('2', 'weak'),
      heard('3', 'normal'),
      heard('4', 'weak'),
      heard('5', 'normal'),
    ],
    resolved: ['turn:middleCoil'],
    note: 'by ear alone; two pickups turned against the middle one sound as the middle one turned against them, and that is the lesser work',
  },
  {
    id: 'K73',
    wiring: 'three-singles-five-position',
    values: {},
    steps: [
      between('neckHot@to', 'neckCold@to', 5400, { lifted: ['neckHot@to'] }),
      between('middleHot@to', 'middleCold@to', 5600, { lifted: ['middleHot@to'] }),
      between('bridgeHot@to', 'bridgeCold@to', 6000, { lifted: ['bridgeHot@to'] }),
    ],
    resolved: ['healthy'],
    note: 'a healthy set, read pickup by pickup; the spare pickup is left out',
  },
];

/** Why the others cannot be put to the engine. */
export const notReplayed: Readonly<Record<string, string>> = {
  K05: 'the only figure was taken after the repair',
  K09: 'a series capacitor on a pull pot, no place of measurement, and no answer known',
  K13: 'the only figure was taken after the repair',
  K25: 'the figure is not shown',
  K29: 'no figures, and no selector: both pickups always in parallel',
  K33: 'no figure; the fault goes away when it is measured',
  K35: 'no figures',
  K37: 'no figures; an active instrument',
  K39: 'no figures',
  K41: 'a rule of a teaching page, not a repair',
  K43: 'no figures, and no answer known',
  K45: 'one figure, a coil tap whose state misled, and no answer known',
  K51: 'no figures',
  K53: 'no figures',
  K55: 'no figures; an active instrument',
  K61: 'no figures; splits on push-pulls are no starting wiring yet',
  K63: 'no figures; what happens when a string touches the cover is no reading',
  K65: 'no figures; rocker switches wired in a way that is not told',
  K67: 'no figures; one of its two faults lies in the cable',
  K69: 'asks which lead is which: another question than where the fault is',
  K71: 'asks which lead is which: another question than where the fault is',
  K75: 'one figure, of the bare coil, and no value to compare it with',
};
