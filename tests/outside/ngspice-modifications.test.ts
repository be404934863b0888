import { describe, expect, it } from 'vitest';
import { compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import { checkCircuit } from '../../src/circuit/check.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { lugsOf } from '../oracle/index.ts';
import { Dice } from '../simulated/dice.ts';
import { type Case, compareAllPairs, tell } from './against-ngspice.ts';
import { bases, combination, singleChanges } from './combinations.ts';
import { everySetting } from './settings.ts';

/** Source of every expectation here: ngspice 39 (Debian), on a netlist written without this project's own. */

/**
 * Random combinations of modifications. LUGWISE_COMBINATIONS=200 takes so many, every variant of every modification, and all of them
 * in every setting; without it a share drawn by a seed is taken, each in a few settings.
 */
const LONG = process.env['LUGWISE_COMBINATIONS'];
const COMBINATIONS = Number(LONG ?? 60);
/** Of the variants singly. */
const SHARE = LONG ? 1 : 0.16;
const HOURS = 3_600_000;

/** The resting setting and a few more. */
function sample(circuit: Circuit, dice: Dice, count: number): Case[] {
  const settings = everySetting(circuit);
  if (LONG) return settings.map((setting): Case => ({ circuit, setting, edits: [] }));
  const picked = [settings[0]!, ...Array.from({ length: count }, () => dice.pick(settings))];
  return [...new Set(picked)].map((setting): Case => ({ circuit, setting, edits: [] }));
}

function compare(cases: readonly Case[]): { pairs: number; worst: number } {
  let [pairs, worst] = [0, 0];
  // One process of the simulator for so many wirings: more make its matrix slow.
  for (let from = 0; from < cases.length; from += 60) {
    const comparison = compareAllPairs(cases.slice(from, from + 60));
    expect(tell(comparison)).toEqual([]);
    pairs += comparison.pairs;
    worst = Math.max(worst, comparison.worstRelative);
  }
  expect(worst).toBeLessThan(1e-6);
  return { pairs, worst };
}

describe.each(bases.map((base) => [base.id, base] as const))(
  '%s',
  { timeout: LONG ? HOURS : 60_000 },
  (id, base) => {
    it('agrees with ngspice under every modification that applies, singly', () => {
      const dice = new Dice(`${id} singly`);
      const cases = singleChanges(base)
        .filter(() => dice.throw() < SHARE)
        .flatMap((change) => {
          const { circuit, refused } = compose(base, [change]);
          expect(refused).toEqual([]);
          return sample(circuit, dice, 2);
        });
      const pairs = cases.map(({ circuit }) => {
        const lugs = lugsOf(circuit).length;
        return (lugs * (lugs - 1)) / 2;
      });
      expect(compare(cases).pairs).toBe(pairs.reduce((sum, one) => sum + one, 0));
    });
  },
);

it(`agrees with ngspice under ${COMBINATIONS} random combinations`, {
  timeout: LONG ? HOURS : 300_000,
}, () => {
  const made = Array.from({ length: COMBINATIONS }, (_, at) => combination(at));
  for (const { circuit, refused } of made) {
    checkCircuit(circuit);
    for (const { sentence } of refused) expect(sentence).toMatch(/^[A-Z].*\.$/);
  }
  // Most draws do fit together: the comparison is of guitars with several changes.
  expect(made.filter((one) => one.made > 1).length).toBeGreaterThan(0.7 * COMBINATIONS);
  compare(made.flatMap(({ circuit, dice }) => sample(circuit, dice, 4)));
});

it('would notice: a split whose shunt is soldered one lug off', () => {
  const base = bases[0]!;
  const modification = modifications.find(({ id }) => id === 'coil-split')!;
  const place = modification.applies(base)[0]!;
  const { circuit } = compose(base, [{ modification, place, chosen: {} }]);
  const shunt = circuit.leads.find(({ id }) => id === `${place.id}SplitShunt`)!;
  const settings = everySetting(circuit);
  const thrown = settings.find(({ positions }) => positions[`${place.id}Split`] === 'on')!;
  const missed = compareAllPairs([
    {
      circuit,
      setting: thrown,
      edits: [],
      only: [{ op: 'land', joint: `${shunt.id}@from`, lug: shunt.from.replace('A2', 'A1') }],
    },
  ]);
  expect(missed.disagreements.length).toBeGreaterThan(0);
});
