import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { type Change, compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { Dice } from '../simulated/dice.ts';

export const bases = startingWirings.map(({ build }) => build());

/** Every modification that applies to a wiring, at each of its places. */
export const placesOf = (base: Circuit) =>
  modifications.flatMap((modification) =>
    modification.applies(base).map((place) => ({ modification, place })),
  );

/** One change for every option of every choice, the other choices as usual; of a kind of carrier the first. */
function variants(base: Circuit, change: Omit<Change, 'chosen'>): Change[] {
  const { modification, place } = change;
  const seen = new Set<string>();
  const others = modification.choices(base, place).flatMap(({ id, options }) =>
    options.slice(1).flatMap((option): Change[] => {
      const kind = `${id} ${option.id.split(':')[0]}`;
      if (seen.has(kind)) return [];
      seen.add(kind);
      return [{ ...change, chosen: { [id]: option.id } }];
    }),
  );
  return [{ ...change, chosen: {} }, ...others];
}

/** Every modification that applies to this wiring, each alone, in all its variants. */
export const singleChanges = (base: Circuit): Change[] =>
  placesOf(base)
    .filter(({ modification, place }) => modification.conflict(base, place) === null)
    .flatMap((change) => variants(base, change));

/** Two to six changes drawn at random from what applies, with random options; what is refused stays out. */
export function combination(at: number) {
  const dice = new Dice(`combination ${at}`);
  const base = dice.pick(bases);
  const places = placesOf(base);
  const changes = Array.from({ length: 2 + Math.floor(5 * dice.throw()) }, (): Change => {
    const { modification, place } = dice.pick(places);
    const chosen = Object.fromEntries(
      modification.choices(base, place).map(({ id, options }) => [id, dice.pick(options).id]),
    );
    return { modification, place, chosen };
  });
  const composed = compose(base, changes);
  return { ...composed, made: changes.length - composed.refused.length, dice };
}
