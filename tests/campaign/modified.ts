import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { type Change, compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import { Dice } from '../simulated/index.ts';

/**
 * A starting wiring with one to three modifications drawn evenly from what applies, in random places with random options. Those that
 * cannot be made beside each other are left out, and where none can be made it is drawn anew.
 */
export function modified(seed: number): { readonly wiring: string; readonly circuit: Circuit } {
  const dice = new Dice(`modified ${seed}`);
  for (;;) {
    const drawn = draw(dice);
    if (drawn) return drawn;
  }
}

function draw(dice: Dice): ReturnType<typeof modified> | null {
  const { id, build } = dice.pick(startingWirings);
  const base = build();
  const changes = Array.from({ length: 1 + Math.floor(3 * dice.throw()) }, (): Change => {
    for (;;) {
      const modification = dice.pick(modifications);
      const places = modification.applies(base);
      if (places.length === 0) continue;
      const place = dice.pick(places);
      const chosen = Object.fromEntries(
        modification
          .choices(base, place)
          .map((choice) => [choice.id, dice.pick(choice.options).id]),
      );
      return { modification, place, chosen };
    }
  });
  const { circuit, refused } = compose(base, changes);
  const made = changes.filter((one) => !refused.some(({ change }) => change === one));
  if (made.length === 0) return null;
  return {
    wiring: [id, ...made.map(({ modification }) => modification.id)].join(' + '),
    circuit,
  };
}
