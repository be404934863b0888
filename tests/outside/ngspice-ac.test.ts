import { describe, expect, it } from 'vitest';
import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { usualLoad } from '../../src/readings/audio.ts';
import { logSpaced, responseOf } from '../../src/readings/response.ts';
import { View } from '../../src/readings/view.ts';
import { type ResponseJob, responses, spiceNetlist } from '../oracle/index.ts';
import { Dice } from '../simulated/dice.ts';
import { bases, combination } from './combinations.ts';
import { editKinds, randomEdit } from './random-edits.ts';
import { everySetting } from './settings.ts';

/** Source of every expectation here: ngspice 39 (Debian), on a netlist written without this project's own. */

/** Settings of each wiring, and random modified guitars; LUGWISE_AC=1 runs every setting of every wiring at 30 frequencies and 100 guitars. */
const ALL = process.env['LUGWISE_AC'] !== undefined;
const SETTINGS = 5;
const MODIFIED = ALL ? 100 : 20;
const hertz = logSpaced(20, 20_000, ALL ? 30 : 7);

/** What is compared: 0.01 dB and 0.1 degree, down to 120 dB below a coil's own signal. */
const DECIBELS = 0.01;
const DEGREES = 0.1;
const FLOOR = 1e-6;

interface AcCase {
  readonly circuit: Circuit;
  readonly setting: Setting;
  readonly edits: readonly Edit[];
  /** Edits for ngspice alone, to show that a difference is noticed. */
  readonly only?: readonly Edit[];
}

interface Difference {
  readonly where: string;
  readonly decibels: number;
  readonly degrees: number;
}

function jobOf({ circuit, setting, edits, only = [] }: AcCase): ResponseJob {
  const across = ['jack.tip', 'jack.sleeve'] as const;
  const turned = (id: string) =>
    edits.filter((edit) => edit.op === 'turn-magnet' && edit.coil === id).length % 2 ? -1 : 1;
  return {
    netlist: spiceNetlist(circuit, setting, [...edits, ...only]),
    across,
    loads: [{ at: across, ...usualLoad }],
    drive: {
      emfs: Object.fromEntries(
        circuit.parts.flatMap((part) =>
          part.kind === 'coil' ? [[part.id, part.winding * part.magnet * turned(part.id)]] : [],
        ),
      ),
    },
  };
}

function differences(cases: readonly AcCase[]): {
  points: number;
  found: Difference[];
  worst: Difference;
} {
  const found: Difference[] = [];
  let worst: Difference = { where: '', decibels: 0, degrees: 0 };
  let points = 0;
  // One process of the simulator for so many guitars: more make its matrix slow.
  for (let from = 0; from < cases.length; from += 20) {
    const some = cases.slice(from, from + 20);
    const theirs = responses(some.map(jobOf), [...hertz]);
    some.forEach(({ circuit, setting, edits }, at) => {
      const ours = responseOf(new View(layoutOf(circuit), setting, edits), hertz, usualLoad);
      const other = theirs[at]!;
      hertz.forEach((frequency, f) => {
        const [x, y] = [other.real[f]!, other.imaginary[f]!];
        const [re, im] = [ours.real[f]!, ours.imaginary[f]!];
        const [size, expected] = [Math.hypot(re, im), Math.hypot(x, y)];
        if (expected < FLOOR && size < 1.1 * FLOOR) return;
        points += 1;
        const one = {
          where: `${circuit.id} ${JSON.stringify(setting.positions)} ${JSON.stringify(edits)} ${frequency.toFixed(0)} Hz: ${size} for ${expected}`,
          decibels: Math.abs(20 * Math.log10(size / expected)),
          degrees: Math.abs((180 / Math.PI) * Math.atan2(im * x - re * y, re * x + im * y)),
        };
        if (!(one.decibels <= DECIBELS && one.degrees <= DEGREES)) found.push(one);
        worst = {
          where: one.decibels > worst.decibels ? one.where : worst.where,
          decibels: Math.max(worst.decibels, one.decibels),
          degrees: Math.max(worst.degrees, one.degrees),
        };
      });
    });
  }
  return { points, found, worst };
}

/** The setting with every knob somewhere of its own. */
const turned = (setting: Setting, dice: Dice): Setting => ({
  ...setting,
  plug: 'in',
  knobs: Object.fromEntries(
    Object.keys(setting.knobs).map((id) => [
      id,
      dice.chance(0.5) ? 10 : Math.round(100 * dice.between(0, 10)) / 10 / 10,
    ]),
  ),
});

function agrees(cases: readonly AcCase[], leastPoints: number): void {
  const { points, found, worst } = differences(cases);
  expect(found.slice(0, 4)).toEqual([]);
  expect(points).toBeGreaterThan(leastPoints);
  if (ALL)
    console.log(
      `${cases.length} guitars, ${points} points: at most ${worst.decibels.toExponential(1)} dB, ${worst.degrees.toExponential(1)} degree`,
    );
}

describe('the response, against ngspice', { timeout: ALL ? 600_000 : 60_000 }, () => {
  it.each(bases.map((circuit) => [circuit.id, circuit] as const))('%s', (id, circuit) => {
    const dice = new Dice(`${id} response`);
    const settings = everySetting(circuit);
    const some = ALL ? settings : Array.from({ length: SETTINGS }, () => dice.pick(settings));
    const cases = some.map((setting) => ({ circuit, setting: turned(setting, dice), edits: [] }));
    agrees(cases, 2 * cases.length);
  });

  it.each(bases.map((circuit) => [circuit.id, circuit] as const))(
    '%s with faults',
    (id, circuit) => {
      const dice = new Dice(`${id} response with faults`);
      const settings = everySetting(circuit);
      const cases = Array.from({ length: ALL ? 60 : 6 }, (_, at): AcCase => {
        const kinds = [...editKinds, 'open', 'resist', 'bridge'] as const;
        const edits = Array.from({ length: 1 + (at % 2) }, () =>
          randomEdit(circuit, dice.pick(kinds), dice),
        ).filter(
          (edit): edit is Edit =>
            edit !== undefined && !(edit.op === 'resist' && /:body$/.test(edit.site)),
        );
        const coils = circuit.parts.filter(({ kind }) => kind === 'coil');
        if (at % 5 === 0) edits.push({ op: 'turn-magnet', coil: dice.pick(coils).id });
        if (at % 5 === 1) edits.push({ op: 'open', site: `${dice.pick(coils).id}:winding` });
        return { circuit, setting: turned(dice.pick(settings), dice), edits };
      });
      agrees(cases, cases.length);
    },
  );

  it(`${MODIFIED} random modified guitars`, () => {
    const cases = Array.from({ length: MODIFIED }, (_, at): AcCase => {
      const { circuit, dice } = combination(at);
      return { circuit, setting: turned(dice.pick(everySetting(circuit)), dice), edits: [] };
    });
    agrees(cases, 2 * cases.length);
  });

  it('would notice: a coil a third of a per cent off, or one turned', () => {
    const circuit = bases[0]!;
    const setting = { ...everySetting(circuit)[0]!, plug: 'in' as const };
    const coil = circuit.parts.find(({ kind }) => kind === 'coil')!.id;
    const missed = (edits: readonly Edit[], only: readonly Edit[]) =>
      differences([{ circuit, setting, edits, only }]).found.length;
    expect(missed([], [])).toBe(0);
    expect(missed([], [{ op: 'scale', part: coil, factor: 1.003 }])).toBeGreaterThan(0);
    const turned: Edit = { op: 'exchange', lugs: [`${coil}.start`, `${coil}.finish`] };
    expect(missed([], [turned])).toBeGreaterThan(0);
  });
});
