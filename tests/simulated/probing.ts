import type { Edit } from '../../src/circuit/edit.ts';
import type { PartId } from '../../src/circuit/parts/part.ts';
import { farads } from '../../src/circuit/units.ts';
import type { SimulatedMeter } from '../../src/practice/meter.ts';
import type { AskOf, SeenOf } from '../../src/readings/reading.ts';
import { responses } from '../oracle/index.ts';
import type { Bench } from './bench.ts';
import type { Dice } from './dice.ts';

/** Readings taken with two probes. Shares of error below are common practice, no source, unless it says otherwise. */
export interface Hands {
  readonly bench: Bench;
  readonly meter: SimulatedMeter;
  /** Share of ohm readings with a finger on each tip. */
  readonly fingers: number;
  /** +1 or -1: every winding of this guitar may be the other way round, and nobody would hear it. */
  readonly windings: 1 | -1;
}

export function readOhms(
  { bench, meter, fingers }: Hands,
  ask: AskOf<'ohms'>,
  dice: Dice,
): SeenOf<'ohms'> {
  const bare = bench.ohms(ask.setting, [ask.red, ask.black]);
  // Fingers on both tips: roughly a megohm beside the reading, 0.4 to 2.5.
  const skin = dice.chance(fingers) ? 1e6 * 2.5 ** dice.between(-1, 1) : Infinity;
  const real = 1 / (1 / bare + 1 / skin);
  return { kind: 'ohms', ohms: meter.display(real, dice) };
}

export function readBeep({ bench, meter }: Hands, ask: AskOf<'beep'>): SeenOf<'beep'> {
  return { kind: 'beep', beeps: meter.beeps(bench.ohms(ask.setting, [ask.red, ask.black])) };
}

/** Steps of a knob turned from end to end; the eye catches the peak to a fifth of a per cent. */
const steps = 40;

export function readTurn({ bench, meter }: Hands, ask: AskOf<'turn'>, dice: Dice): SeenOf<'turn'> {
  const settings = Array.from({ length: steps + 1 }, (_, step) => ({
    ...ask.setting,
    knobs: { ...ask.setting.knobs, [ask.pot]: (10 * step) / steps },
  }));
  const real = bench.ohmsThrough(settings, [ask.red, ask.black]);
  const [least, most] = [Math.min(...real), Math.max(...real)];
  const peak = meter.display(most, dice);
  const moves = most === Infinity ? least < Infinity : most - least > 0.02 * most + 1;
  const worn = bench.edits.some((edit) => edit.op === 'worn' && edit.part === ask.pot);
  // A worn track shows in nine turns of ten; a meter hunting for its range looks like one in two of a hundred.
  const how = !moves ? 'stuck' : dice.chance(worn ? 0.9 : 0.02) ? 'jumps' : 'smooth';
  return { kind: 'turn', how, peak };
}

/** Whether moving `moved` (a joint, a lead, or all wires at a part) moves the joint or wire at `site`. */
function moves({ circuit }: Bench, moved: string, site: string): boolean {
  const bodyOf = (name: string) => name.replace(/[@:].*$/, '');
  if (moved === 'everywhere' || bodyOf(moved) === bodyOf(site)) return true;
  const lead = circuit.leads.find(({ id }) => id === bodyOf(site));
  if (!lead || !circuit.parts.some(({ id }) => id === moved)) return false;
  const ends = site.endsWith('@from')
    ? [lead.from]
    : site.endsWith('@to')
      ? [lead.to]
      : [lead.from, lead.to];
  return ends.some((lug) => lug.slice(0, lug.indexOf('.')) === moved);
}

export function readFlex({ bench }: Hands, ask: AskOf<'flex'>, dice: Dice): SeenOf<'flex'> {
  const probes = [ask.red, ask.black] as const;
  const jumps = bench.edits.some((edit) => {
    if (edit.op !== 'intermittent' || !moves(bench, ask.site, edit.site)) return false;
    const rest = bench.ohms(ask.setting, probes);
    // Moved, a joint that conducted opens and one that was open conducts.
    const isOpen = (one: Edit) => one.op === 'open' && one.site === edit.site;
    const changed = bench.edits.some(isOpen)
      ? bench.edits.filter((one) => !isOpen(one))
      : [...bench.edits, { op: 'open', site: edit.site } as const];
    const moved = bench.ohms(ask.setting, probes, changed);
    if (moved === Infinity || rest === Infinity) return moved !== rest;
    return Math.abs(moved - rest) > 0.01 * rest + 1;
  });
  // Nine times of ten the flexing finds it; once in a hundred a probe slips.
  return { kind: 'flex', how: dice.chance(jumps ? 0.9 : 0.01) ? 'jumps' : 'steady' };
}

export function readTap({ bench, windings }: Hands, ask: AskOf<'tap'>, dice: Dice): SeenOf<'tap'> {
  const transfer = bench.transfer(ask.setting, ask.coil, [ask.red, ask.black]);
  const swing = transfer * windings * windingOf(bench, ask.coil) * bench.magnet(ask.coil);
  // Right about 93 times of 100 (read in a public text); what is left is half wrong and half nothing seen.
  const error = dice.throw();
  if (Math.abs(swing) < 0.1)
    return { kind: 'tap', swing: error < 0.93 ? 'nothing' : error < 0.965 ? 'plus' : 'minus' };
  const [right, wrong] = swing > 0 ? (['plus', 'minus'] as const) : (['minus', 'plus'] as const);
  return { kind: 'tap', swing: error < 0.93 ? right : error < 0.965 ? wrong : 'nothing' };
}

function windingOf({ circuit }: Bench, coil: PartId): number {
  const part = circuit.parts.find(({ id }) => id === coil);
  if (part?.kind !== 'coil') throw new Error(`${coil} is no coil`);
  return part.winding;
}

/** Hertz at which a hand-held meter measures capacitance. */
const capacitanceHertz = 100;

export function readFarads({ bench }: Hands, ask: AskOf<'farads'>, dice: Dice): SeenOf<'farads'> {
  const probes = [ask.red, ask.black] as const;
  if (bench.ohms(ask.setting, probes) < 1000) return { kind: 'farads', farads: 'short' };
  const netlist = bench.netlist(ask.setting);
  const job = { netlist, drive: { through: probes }, loads: [], across: probes };
  const [{ real, imaginary }] = responses([job], [capacitanceHertz]) as [
    { real: Float64Array; imaginary: Float64Array },
  ];
  const susceptance = -imaginary[0]! / (real[0]! ** 2 + imaginary[0]! ** 2);
  const value =
    (susceptance / (2 * Math.PI * capacitanceHertz)) * (1 + dice.normalWithin(0, 0.015, 0.03));
  // An inductive path in parallel drives such a meter to its end; below 20 pF it shows nothing.
  if (value < 0) return { kind: 'farads', farads: 'short' };
  if (value < 20e-12) return { kind: 'farads', farads: 'open' };
  const count = 10 ** (Math.floor(Math.log10(value)) - 2);
  return { kind: 'farads', farads: farads(Math.round(value / count) * count) };
}
