import { circuitWords } from '../../words/en/circuit.ts';
import type { Circuit, Lead, Pickup } from '../circuit.ts';
import { CircuitError } from '../errors.ts';
import { MOST } from '../limits.ts';
import { kindOf } from '../parts/index.ts';
import type { Part, PartId } from '../parts/part.ts';
import { lugsOf, partCalled, partIdOf } from './find.ts';
import type { Piece } from './piece.ts';
import { typedWords } from './words.ts';

/** Places what came out of the tray. Names must be new, and a guitar has one jack. */
export function partAdded(circuit: Circuit, { parts, leads, pickup }: Piece): Circuit {
  const names = [...circuit.parts, ...circuit.leads, ...circuit.pickups].map(({ id }) => id);
  for (const { id } of [...parts, ...leads, ...(pickup ? [pickup] : [])])
    if (names.includes(id))
      throw new CircuitError('duplicate-name', id, circuitWords().twoThingsWouldBeCalledId(id));
  const jack = circuit.parts.find(({ kind }) => kind === 'jack');
  if (jack && parts.some(({ kind }) => kind === 'jack'))
    throw new CircuitError(
      'duplicate-name',
      jack.id,
      circuitWords().thisGuitarHasItsJackAlready(jack.title),
    );
  for (const part of parts) kindOf(part).check(part);
  const next: Circuit = {
    ...circuit,
    parts: [...circuit.parts, ...parts],
    leads: [...circuit.leads, ...leads],
    pickups: pickup ? [...circuit.pickups, pickup] : circuit.pickups,
  };
  for (const list of ['parts', 'leads', 'pickups'] as const)
    if (next[list].length > MOST[list])
      throw new CircuitError(
        'value-out-of-range',
        list,
        circuitWords().tooMany[list](MOST[list], next[list].length),
      );
  return next;
}

const belongingTo = ({ coils, plate, cover }: Pickup): readonly PartId[] =>
  [...coils, plate, cover].filter((id) => id !== undefined);

/** What is one thing with a part in the hand: the whole pickup, or a pot with the switch that it carries. */
export function goesWith(circuit: Circuit, id: PartId): ReadonlySet<PartId> {
  const pickup = circuit.pickups.find((one) => belongingTo(one).includes(id));
  const carried = circuit.parts.filter((part) => part.kind === 'switch' && part.carrier === id);
  return new Set([id, ...(pickup ? belongingTo(pickup) : []), ...carried.map((part) => part.id)]);
}

export function partRemoved(circuit: Circuit, id: PartId): Circuit {
  partCalled(circuit, id);
  const gone = goesWith(circuit, id);
  const ends = ({ from, to }: Lead) => [partIdOf(from), partIdOf(to)];
  return {
    ...circuit,
    parts: circuit.parts.filter((part) => !gone.has(part.id)),
    leads: circuit.leads.filter((lead) => !ends(lead).some((end) => gone.has(end))),
    pickups: circuit.pickups.filter((pickup) => !belongingTo(pickup).some((one) => gone.has(one))),
  };
}

export function partChanged(circuit: Circuit, part: Part): Circuit {
  const before = partCalled(circuit, part.id);
  const bound = circuit.pickups.some((pickup) => belongingTo(pickup).includes(part.id));
  if (bound && before.kind !== part.kind)
    throw new CircuitError(
      'bad-shape',
      part.id,
      circuitWords().theBeforeBelongsToAPickup(before.title, before.kind),
    );
  kindOf(part).check(part);
  const lugs = new Set(lugsOf(part));
  const lost = (lug: string) => partIdOf(lug) === part.id && !lugs.has(lug);
  return {
    ...circuit,
    parts: circuit.parts.map((one) => (one.id === part.id ? part : one)),
    leads: circuit.leads.filter(({ from, to }) => !lost(from) && !lost(to)),
  };
}

/**
 * Gives a part or a pickup another title. Titles are how the person tells things apart, so no two things are called
 * alike; parts of a pickup, and the switch on a pot, whose titles speak of it follow.
 */
export function thingRenamed(circuit: Circuit, id: string, text: string): Circuit {
  const pickup = circuit.pickups.find((one) => one.id === id);
  const thing = pickup ?? partCalled(circuit, id);
  const title = typedWords(text, thing.title, MOST.title);
  const own = new Set(pickup ? belongingTo(pickup) : goesWith(circuit, id));
  const named = <T extends { readonly id: string; readonly title: string }>(one: T): T => {
    if (one.id === id) return { ...one, title };
    const follows = own.has(one.id) && one.title.includes(thing.title);
    return follows ? { ...one, title: one.title.replaceAll(thing.title, title) } : one;
  };
  const next: Circuit = {
    ...circuit,
    parts: circuit.parts.map(named),
    pickups: circuit.pickups.map(named),
  };
  for (const one of [...next.parts, ...next.pickups]) {
    if (one.title.length > MOST.title)
      throw new CircuitError(
        'bad-shape',
        one.id,
        circuitWords().titleTooLong(one.title, MOST.title),
      );
    refuseTwin(next, circuit, one);
  }
  return next;
}

type Titled = { readonly id: string; readonly title: string };

/** The pickup that something belongs to or is, else the thing itself: a pickup and its only coil may share a title. */
const familyOf = (circuit: Circuit, id: string): string =>
  circuit.pickups.find((one) => belongingTo(one).includes(id))?.id ?? id;

function refuseTwin(next: Circuit, before: Circuit, { id, title }: Titled): void {
  const all: readonly Titled[] = [...next.parts, ...next.pickups];
  const unchanged = [...before.parts, ...before.pickups].some(
    (one) => one.id === id && one.title === title,
  );
  const twin = all.find(
    (one) =>
      one.title.toLowerCase() === title.toLowerCase() &&
      familyOf(next, one.id) !== familyOf(next, id),
  );
  if (twin && !unchanged)
    throw new CircuitError(
      'duplicate-name',
      twin.id,
      circuitWords().thereIsATwinAlready(twin.title),
    );
}

export const wiringRenamed = (circuit: Circuit, title: string): Circuit => ({
  ...circuit,
  title: typedWords(title, circuitWords().theWiring, MOST.title),
});
