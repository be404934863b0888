import type { Circuit } from '../../circuit.ts';
import { modifications } from './index.ts';
import type { Chosen, Modification, Place } from './modification.ts';

/** One modification at one place of a starting wiring. */
export interface Change {
  readonly modification: Modification;
  readonly place: Place;
  readonly chosen: Chosen;
}

export interface Composed {
  readonly circuit: Circuit;
  /** Changes that could not be made beside the others, each with the sentence why. */
  readonly refused: readonly { readonly change: Change; readonly sentence: string }[];
}

/** A title of a wiring is at most 200 characters in a job file. */
const LONGEST = 200;

/** The wiring with all its changes, whatever order they are given in; its title says what was changed. */
export function compose(base: Circuit, changes: readonly Change[]): Composed {
  const inOrder = [...changes].sort(
    (a, b) => modifications.indexOf(a.modification) - modifications.indexOf(b.modification),
  );
  let circuit = base;
  const made: Change[] = [];
  const refused: { change: Change; sentence: string }[] = [];
  for (const change of inOrder) {
    const sentence = objection(base, circuit, change);
    if (sentence === null) {
      circuit = change.modification.apply(circuit, change.place, settled(base, circuit, change));
      made.push(change);
    } else refused.push({ change, sentence });
  }
  return {
    circuit: made.length === 0 ? base : { ...circuit, title: titleOf(base, made) },
    refused,
  };
}

/** What was chosen; where nothing was, the usual option of the starting wiring, if the other changes leave it. */
function settled(base: Circuit, circuit: Circuit, { modification, place, chosen }: Change): Chosen {
  const left = modification.choices(circuit, place);
  const usual = modification.choices(base, place).flatMap(({ id, options }) => {
    const free = left.find((choice) => choice.id === id)?.options ?? [];
    return free.some((option) => option.id === options[0].id) ? [[id, options[0].id] as const] : [];
  });
  return { ...Object.fromEntries(usual), ...chosen };
}

/** Why a change cannot be made to the circuit as it stands, or null. */
function objection(base: Circuit, circuit: Circuit, change: Change): string | null {
  const { modification, place, chosen } = change;
  const what = `${modification.title}, ${place.title}`;
  if (!modification.applies(circuit).some(({ id }) => id === place.id))
    return `${what}: the other changes leave no place for it.`;
  const conflict = modification.conflict(circuit, place);
  if (conflict !== null) return conflict;
  const left = modification.choices(circuit, place);
  for (const { id, options } of modification.choices(base, place)) {
    const wanted = options.find((option) => option.id === chosen[id]);
    const free = left.find((choice) => choice.id === id)?.options ?? [];
    if (wanted && !free.some((option) => option.id === wanted.id))
      return `${what}: ${wanted.title} is taken already.`;
  }
  return null;
}

function titleOf(base: Circuit, made: readonly Change[]): string {
  const words = made.map(({ modification, place, chosen }) => modification.named(place, chosen));
  for (let told = words.length; told > 0; told -= 1) {
    const more = words.length - told;
    const list = [...words.slice(0, told), ...(more > 0 ? [`${more} more`] : [])];
    const title = `${base.title}, with ${list.join(', ')}`;
    if (title.length <= LONGEST) return title;
  }
  return base.title;
}
