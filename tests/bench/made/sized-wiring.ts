import {
  capacitor,
  coil,
  leads,
  outputJack,
  pot,
  strings,
} from '../../../src/circuit/catalog/build.ts';
import { toggle3 } from '../../../src/circuit/catalog/selectors.ts';
import type { Circuit, LugRef } from '../../../src/circuit/circuit.ts';
import type { Part, Switch } from '../../../src/circuit/parts/part.ts';
import { ohms } from '../../../src/circuit/units.ts';
import { lugsOf } from '../../oracle/index.ts';
import { Dice } from '../../simulated/dice.ts';

type Row = Parameters<typeof leads>[0][number];

const changeover = (id: string, title: string): Switch => ({
  kind: 'switch',
  id,
  title,
  style: 'mini-toggle',
  rows: [['A', 'C', 'B']],
  frame: false,
  positions: [
    { name: 'off', title: 'off', joins: [['A', 'C']] },
    { name: 'on', title: 'on', joins: [['B', 'C']] },
  ],
});

/**
 * A guitar of just so many lugs, 20 at least, with 12 switch states: pickups that each have a volume (and a tone behind a capacitor), in
 * turns on the two sides of a 3-position selector; a toggle that puts the first pickup straight on the jack, and one that kills the
 * output. What is left over is made up of resistors beside volumes and of grounded plates. Values are drawn by the seed.
 */
export function sizedWiring(lugs: number, seed: string): Circuit {
  const dice = new Dice(`${seed} ${lugs}`);
  const bypass = changeover('bypass', 'bypass switch');
  const kill = changeover('kill', 'kill switch');
  const parts: Part[] = [toggle3, bypass, kill, outputJack, strings];
  const rows: Row[] = [
    ['selectorOut', 'wire', 'selector.C', 'kill.A'],
    ['killGround', 'wire', 'kill.B', 'jack.sleeve'],
    ['jackHot', 'wire', 'kill.C', 'jack.tip'],
    ['bypassHot', 'wire', 'bypass.B', 'jack.tip'],
    ['stringGround', 'wire', 'strings.metal', 'jack.sleeve'],
    ['frameGround', 'wire', 'selector.frame', 'jack.sleeve'],
  ];
  const left = () => lugs - lugsOf({ id: '', title: '', parts, leads: [], pickups: [] }).length;
  const pickups: Circuit['pickups'][number][] = [];
  let ground: LugRef = 'jack.sleeve';
  for (let at = 0; left() >= 6; at += 1) {
    const [id, volume, tone, cap] = ['coil', 'volume', 'tone', 'cap'].map(
      (word) => `${word}${at}`,
    ) as [string, string, string, string];
    parts.push(
      coil(id, `coil ${at}`, { resistance: Math.round(dice.between(4000, 9000)) }),
      pot(volume, `volume ${at}`, 'volume', dice.pick([250e3, 500e3])),
    );
    pickups.push({ id: `pickup${at}`, title: `pickup ${at}`, coils: [id] });
    rows.push(
      [`hot${at}`, 'pickup', `${id}.finish`, at === 0 ? 'bypass.C' : `${volume}.3`],
      [`cold${at}`, 'pickup', `${id}.start`, `${volume}.case`],
      [`low${at}`, 'wire', `${volume}.1`, `${volume}.case`],
      [`out${at}`, 'wire', `${volume}.2`, at % 2 === 0 ? 'selector.A' : 'selector.B'],
      [`case${at}`, 'wire', `${volume}.case`, ground],
    );
    if (at === 0) rows.push(['bypassOff', 'wire', 'bypass.A', `${volume}.3`]);
    ground = `${volume}.case`;
    if (left() < 6) break;
    parts.push(
      pot(tone, `tone ${at}`, 'tone', dice.pick([250e3, 500e3])),
      capacitor(cap, `capacitor ${at}`, dice.pick([22e-9, 47e-9])),
    );
    rows.push(
      [`capHot${at}`, 'leg', `${cap}.a`, `${volume}.3`],
      [`capTone${at}`, 'leg', `${cap}.b`, `${tone}.2`],
      [`toneLow${at}`, 'wire', `${tone}.1`, `${tone}.case`],
      [`toneCase${at}`, 'wire', `${tone}.case`, `${volume}.case`],
    );
  }
  for (let at = 0; left() > 0; at += 1) {
    if (left() === 1) {
      parts.push({
        kind: 'metal',
        id: 'plate',
        title: 'plate',
        role: 'plate',
        outside: false,
      });
      rows.push(['plateGround', 'wire', 'plate.metal', ground]);
      continue;
    }
    parts.push({
      kind: 'resistor',
      id: `bleed${at}`,
      title: `resistor ${at}`,
      ohms: { nominal: ohms(dice.pick([100e3, 150e3, 220e3])), tolerance: 0.05 },
    });
    rows.push(
      [`bleedIn${at}`, 'leg', `bleed${at}.a`, `volume${at}.3`],
      [`bleedOut${at}`, 'leg', `bleed${at}.b`, `volume${at}.2`],
    );
  }
  const title = `${lugs} lugs, 12 switch states`;
  return { id: `sized-${lugs}`, title, parts, leads: leads(rows), pickups };
}
