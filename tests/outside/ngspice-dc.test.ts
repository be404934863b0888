import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { layoutOf, nodeAt, siteAt } from '../../src/circuit/netlist.ts';
import { ohms } from '../../src/circuit/units.ts';
import { suspectsOf } from '../../src/faults/index.ts';
import { bareEndsOf, lugsOf, spiceNetlist, tapTransfer } from '../oracle/index.ts';
import { Dice } from '../simulated/dice.ts';
import { type Case, compareAllPairs, solveByOurs, tell } from './against-ngspice.ts';
import { editKinds, randomEdit } from './random-edits.ts';
import { everySetting } from './settings.ts';

/** Source of every expectation here: ngspice 39 (Debian), on a netlist written without this project's own. */
/** Random edits and faults are a share drawn by the wiring's seed; LUGWISE_ALL_FAULTS=1 runs every fault in every setting, in two minutes a dozen wirings. */
const ALL = process.env['LUGWISE_ALL_FAULTS'] !== undefined;
const SHARE = ALL ? 1 : 0.15;
const RANDOM = ALL ? 30 : 8;
/** Settings in which the tap of a coil is compared, on average. */
const TAPS = 2;
const wirings = startingWirings.map(({ id, build }) => [id, build()] as const);

describe.each(wirings)('%s, ohms against ngspice', { timeout: 120_000 }, (id, circuit) => {
  const settings = everySetting(circuit);
  const compare = (cases: readonly Case[], withBareEnds = true) => {
    const comparison = compareAllPairs(cases, withBareEnds);
    expect(tell(comparison)).toEqual([]);
    expect(comparison.worstRelative).toBeLessThan(1e-6);
    return comparison;
  };

  it('agrees at every pair of lugs and bare ends in every setting, healthy', () => {
    const { pairs } = compare(settings.map((setting) => ({ circuit, setting, edits: [] })));
    const points = lugsOf(circuit).length + bareEndsOf(circuit).length;
    expect(pairs).toBe(((points * (points - 1)) / 2) * settings.length);
  });

  it('agrees with one joint lifted, each in turn', () => {
    const joints = circuit.leads.flatMap((lead) => [`${lead.id}@from`, `${lead.id}@to`]);
    compare(
      joints.map((joint, at) => ({
        circuit,
        setting: { ...settings[at % settings.length]!, lifted: [joint] },
        edits: [],
      })),
    );
  });

  it.each(editKinds)('agrees under random edits: %s', (kind) => {
    const dice = new Dice(`${id} ${kind}`);
    const cases = Array.from({ length: RANDOM }, (): Case => {
      const edit = randomEdit(circuit, kind, dice);
      return { circuit, setting: dice.pick(settings), edits: edit ? [edit] : [] };
    });
    compare(cases);
  });

  it('agrees under two and three edits at once', () => {
    const dice = new Dice(`${id} several`);
    const cases = Array.from({ length: 2 * RANDOM }, (_, at): Case => {
      const kinds = Array.from({ length: 2 + (at % 2) }, () => dice.pick(editKinds));
      const edits = kinds
        .map((kind) => randomEdit(circuit, kind, dice))
        .filter((edit): edit is Edit => edit !== undefined);
      return { circuit, setting: dice.pick(settings), edits };
    });
    compare(cases);
  });

  it('agrees under a fault and a value at one part, in either order', () => {
    // A part's value does not include what a fault put beside it, so the two orders are one wiring.
    const setting = settings[0]!;
    const cases = circuit.parts.flatMap((part): Case[] => {
      const site = { coil: 'winding', pot: 'upper', resistor: 'body' }[part.kind as 'coil'];
      if (!site) return [];
      const scale: Edit = { op: 'scale', part: part.id, factor: 0.8 };
      const resist: Edit = { op: 'resist', site: `${part.id}:${site}`, ohms: ohms(3000) };
      return [
        { circuit, setting, edits: [scale, resist] },
        { circuit, setting, edits: [resist, scale] },
      ];
    });
    compare(cases);
  });

  it('agrees under modelled faults, each in one setting, and under one of each family in several', () => {
    const dice = new Dice(`${id} faults`);
    const suspects = suspectsOf(circuit);
    const families = [...new Set(suspects.map(({ family }) => family))];
    expect(families.length).toBeGreaterThan(4);
    const start = Math.floor(dice.throw() * settings.length);
    const each = suspects
      .filter(() => dice.throw() < SHARE)
      .map(({ edits }, at): Case => {
        return { circuit, setting: settings[(start + at) % settings.length]!, edits };
      });
    const byFamily = families.flatMap((name) => {
      const members = suspects.filter(({ family }) => family === name);
      return settings
        .filter(() => dice.throw() < SHARE)
        .map((setting): Case => ({ circuit, setting, edits: dice.pick(members).edits }));
    });
    const cases = ALL
      ? suspects.flatMap(({ edits }) =>
          settings.map((setting): Case => ({ circuit, setting, edits })),
        )
      : [...each, ...byFamily];
    for (let from = 0; from < cases.length; from += 100)
      compare(cases.slice(from, from + 100), false);
  });

  it('has the tap of each coil, sign and share, as ngspice has it at the jack', () => {
    const layout = layoutOf(circuit);
    const dice = new Dice(`${id} tap`);
    for (const coil of circuit.parts.filter(({ kind }) => kind === 'coil')) {
      // One process of the simulator for each.
      const some = ALL ? settings : settings.filter(() => dice.throw() < TAPS / settings.length);
      for (const setting of some) {
        const ours = solveByOurs({ circuit, setting, edits: [] });
        const [red, black] = ['jack.tip', 'jack.sleeve'];
        const { index } = siteAt(layout, `${coil.id}:winding`);
        // Reciprocity: a current forced into red leaves the coil at its start where the EMF lifts its finish.
        const volts = -ours.transfer(nodeAt(layout, red), nodeAt(layout, black), index);
        expect(volts).toBeCloseTo(
          tapTransfer(spiceNetlist(circuit, setting), coil.id, red, black),
          9,
        );
      }
    }
  });
});

it('would notice: a coil three millionths off, or one lead elsewhere, is a disagreement', () => {
  const [, circuit] = wirings[0]!;
  const setting = everySetting(circuit)[0]!;
  const coil = circuit.parts.find(({ kind }) => kind === 'coil')!.id;
  const ground = circuit.leads.find(({ to }) => to === 'jack.sleeve')!;
  const missed = (only: Edit) =>
    compareAllPairs([{ circuit, setting, edits: [], only: [only] }]).disagreements.length;
  expect(missed({ op: 'scale', part: coil, factor: 1 })).toBe(0);
  expect(missed({ op: 'scale', part: coil, factor: 1 + 3e-6 })).toBeGreaterThan(0);
  expect(missed({ op: 'land', joint: `${ground.id}@to`, lug: 'jack.tip' })).toBeGreaterThan(0);
});
