import type { Circuit } from '../../circuit.ts';
import { CircuitError } from '../../errors.ts';

/** Where on this guitar a modification can go. `id` is that of the pickup, pot or lug it goes to. */
export interface Place {
  readonly id: string;
  /** As in a sentence: "bridge pickup". */
  readonly title: string;
}

export interface Option {
  readonly id: string;
  readonly title: string;
}

/** Something to decide about a modification; the first option is the usual one. */
export interface Choice {
  readonly id: string;
  readonly title: string;
  readonly options: readonly [Option, ...Option[]];
}

/** Option id by choice id; what is not named is the usual option. */
export type Chosen = Readonly<Record<string, string>>;

/** A change of the wiring that players make. What a new one must supply is in README.md of this folder. */
export interface Modification {
  readonly id: string;
  readonly title: string;
  /** What it does, in one sentence, in a player's words. */
  readonly does: string;
  applies(circuit: Circuit): readonly Place[];
  choices(circuit: Circuit, place: Place): readonly Choice[];
  /** Why it cannot go there as the wiring is now, in a sentence, or null where it can. */
  conflict(circuit: Circuit, place: Place): string | null;
  /** A new circuit; throws CircuitError where `conflict` would have said why not. */
  apply(circuit: Circuit, place: Place, chosen: Chosen): Circuit;
  /** A few words for the title of the wiring: "a split of the bridge pickup". */
  named(place: Place, chosen: Chosen): string;
}

/** The option that was chosen, or the usual one. */
export function optionOf(choice: Choice, chosen: Chosen): Option {
  const wanted = chosen[choice.id];
  return choice.options.find(({ id }) => id === wanted) ?? choice.options[0];
}

/** The modification with a door: `apply` refuses what `conflict` refuses, and a place this guitar does not have. */
export function guarded(modification: Modification): Modification {
  return {
    ...modification,
    applies: (circuit) => modification.applies(circuit).map(({ id, title }) => ({ id, title })),
    apply(circuit, place, chosen) {
      if (!modification.applies(circuit).some(({ id }) => id === place.id))
        throw new CircuitError(
          'unknown-part',
          place.id,
          `${modification.title}: this guitar has no place "${place.id}" for it`,
        );
      const sentence = modification.conflict(circuit, place);
      if (sentence !== null) throw new CircuitError('bad-shape', place.id, sentence);
      return modification.apply(circuit, place, chosen);
    },
  };
}
