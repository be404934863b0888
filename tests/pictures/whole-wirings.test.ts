import { describe, expect, it } from 'vitest';
import { flawsOf } from '../../src/bench/drawings/whole/flaws.fixture.ts';
import { placeParts } from '../../src/bench/drawings/whole/index.ts';
import { compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { bases, combination, singleChanges } from '../outside/combinations.ts';
import { Dice } from '../simulated/dice.ts';
import { everyPart } from './every-part.ts';

/** Combinations drawn; with LUGWISE_COMBINATIONS more, and every single change in all its variants. */
const asked = process.env['LUGWISE_COMBINATIONS'];
const COMBINATIONS = Number(asked ?? 30);
/** Of the modifications of each wiring, drawn by its seed. */
const SHARE = 0.4;

describe.each(bases.map((base) => [base.id, base] as const))(
  '%s, drawn whole',
  { timeout: 120_000 },
  (_, base) => {
    it('has every lead on a track of its own, clear of parts and of lugs that are not its own', () => {
      expect(flawsOf(base)).toEqual([]);
    });

    it('has so under modifications', () => {
      const changes = singleChanges(base);
      const dice = new Dice(`${base.id} drawn`);
      const some = asked
        ? changes
        : [...new Map(changes.map((change) => [change.modification.id, change])).values()].filter(
            () => dice.throw() < SHARE,
          );
      for (const change of some)
        expect(flawsOf(compose(base, [change]).circuit), change.modification.title).toEqual([]);
    });
  },
);

it(`has so under ${COMBINATIONS} combinations of modifications`, { timeout: 300_000 }, () => {
  for (let at = 0; at < COMBINATIONS; at++)
    expect(flawsOf(combination(at).circuit), `combination ${at}`).toEqual([]);
});

it('has so where one of every part is wired', () => {
  expect(flawsOf(everyPart())).toEqual([]);
});

it('would notice: a part laid on another', () => {
  const base = bases[0]!;
  const places = new Map(placeParts(base));
  places.set('selector', { ...places.get('neckVolume')!, turn: 0 });
  const flaws = flawsOf(base, places);
  expect(flaws.some((flaw) => / lies on /.test(flaw))).toBe(true);
  expect(flaws.some((flaw) => / runs over the lug /.test(flaw))).toBe(true);
  expect(flaws.some((flaw) => / runs over (selector|neckVolume)$/.test(flaw))).toBe(true);
});
