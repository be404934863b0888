import type { Circuit, Lead, LugRef, Pickup } from '../circuit/circuit.ts';
import { colourOf, endOf, type SeenPickup } from '../circuit/seen-pickup.ts';
import type { Ohms } from '../circuit/units.ts';
import type { Reading } from '../readings/reading.ts';
import { commonWords } from '../words/en/common.ts';
import { sorterWords } from '../words/en/sorter.ts';
import type { Role } from './inside.ts';
import type { Sorting } from './sort.ts';

/** A sorted pickup put in the place of one of a wiring's pickups. */
export interface PutIn {
  readonly circuit: Circuit;
  /** Leads of the pickup that have no place in this wiring. */
  readonly left: readonly string[];
}

/** Why a pickup cannot take the place of another, in a sentence. */
export interface Refused {
  readonly refused: string;
}

interface Sorted {
  readonly seen: SeenPickup;
  readonly sorting: Sorting;
  readonly readings: readonly Reading[];
  /** It goes in the other way round than plus to hot. */
  readonly turned: boolean;
}

/**
 * The wiring with this pickup's colours on the leads of one of its pickups, and its coils as they were measured. In a starting wiring
 * the finish of a coil is plus and the second of two coils is the hot one; a pickup that is joined inside the other way exchanges them.
 */
export function putInto(circuit: Circuit, pickupId: string, sorted: Sorted): PutIn | Refused {
  const pickup = circuit.pickups.find(({ id }) => id === pickupId);
  if (!pickup) return { refused: sorterWords().thisWiringHasNoSuchPickup };
  const refused = refusalOf(pickup, sorted);
  if (refused) return { refused };
  const exchanged = pickup.coils.length === 2 && hotCoil(sorted) === 'a';
  const [a, b] = exchanged ? [...pickup.coils].reverse() : pickup.coils;
  const colours = coloursAt({ ...pickup, coils: [a, b].filter((id) => id !== undefined) }, sorted);
  const used = new Set<string>();
  const leads = circuit.leads.map((lead): Lead => {
    const own = lead.kind === 'pickup' ? colours.get(lead.from) : undefined;
    if (!own) return lead;
    for (const one of own) used.add(one.lead);
    return { ...lead, colour: commonWords().and(own.map(({ colour }) => colour)) };
  });
  const measured = coilOhms(sorted.seen, sorted.sorting, sorted.readings);
  const twin = new Map([
    [a, b],
    [b, a],
  ]);
  const parts = circuit.parts.map((part) => {
    if (part.kind !== 'coil' || !pickup.coils.includes(part.id)) return part;
    const value = part.id === a ? measured.a : measured.b;
    const other = circuit.parts.find(({ id }) => id === twin.get(part.id));
    const seenAs =
      exchanged && other?.kind === 'coil' ? { place: other.place, title: other.title } : {};
    const ohms =
      value === undefined ? part.ohms : { ...part.ohms, nominal: value, measured: value };
    return { ...part, ...seenAs, ohms };
  });
  return {
    circuit: { ...circuit, leads, parts },
    left: sorted.sorting.leads.flatMap(({ lead }) => (used.has(lead) ? [] : [lead])),
  };
}

function refusalOf(pickup: Pickup, { seen, sorting }: Sorted): string | null {
  const roles = sorting.leads.map(({ role }) => role);
  const [wanted, there] = [pickup.coils.length, seen.coils];
  if (wanted !== there)
    return sorterWords()[wanted === 2 ? 'wiringHasTwoCoils' : 'wiringHasOneCoil'](pickup.title);
  if (roles.some((role) => role.endsWith('.open'))) return sorterWords().aCoilOfThisPickupReadsOpen;
  const ends = roles.filter((role) => role.endsWith('.start') || role.endsWith('.finish'));
  if (roles.includes('link') && ends.every((role) => role.slice(1) === ends[0]?.slice(1)))
    return sorterWords().itsTwoCoilsAreJoinedInside;
  return null;
}

/** The coil at the hot end. Where each coil has leads of its own that is the slug coil, as the wirings have it. */
function hotCoil({ sorting, turned }: Sorted): 'a' | 'b' {
  const roles = sorting.leads.map(({ role }) => role);
  if (!roles.includes('link')) return 'b';
  return roles.includes(turned ? 'a.start' : 'a.finish') ? 'a' : 'b';
}

/** Colours by the lug of the wiring's pickup where each lead starts. The first of its coils stands for `a`. */
function coloursAt(
  pickup: Pickup,
  { seen, sorting, turned }: Sorted,
): Map<LugRef, { readonly lead: string; readonly colour: string }[]> {
  const [a, b] = pickup.coils;
  const coilOf = (role: Role) => (role.startsWith('a.') ? a : b);
  const [minus, plus] = turned ? ['finish', 'start'] : ['start', 'finish'];
  const lugs = (role: Role): readonly LugRef[] => {
    // Of two coils joined inside nothing tells which is which: the first is cold, as the wirings have it.
    if (role === 'pair.start') return [turned ? `${b}.finish` : `${a}.start`];
    if (role === 'pair.finish') return [turned ? `${a}.start` : `${b}.finish`];
    if (role.endsWith('.start')) return [`${coilOf(role)}.${minus}`];
    if (role.endsWith('.finish')) return [`${coilOf(role)}.${plus}`];
    if (role === 'link')
      return [`${a}.start`, `${a}.finish`, `${b}.start`, `${b}.finish`].filter(
        (lug) => !outer.includes(lug),
      );
    if (role === 'plate' && pickup.plate) return [`${pickup.plate}.metal`];
    if (role === 'cover' && pickup.cover) return [`${pickup.cover}.metal`];
    return [];
  };
  const outer = sorting.leads.flatMap(({ role }) => (/[.]/.test(role) ? lugs(role) : []));
  const found = new Map<LugRef, { lead: string; colour: string }[]>();
  for (const { lead, role } of sorting.leads) {
    const told = seen.leads.find(({ id }) => id === lead);
    if (!told) continue;
    for (const lug of lugs(role))
      found.set(lug, [...(found.get(lug) ?? []), { lead, colour: colourOf(told) }]);
  }
  return found;
}

/** Ohms that were read from end to end of a coil alone; the last reading counts. */
export function coilOhms(
  { leads }: SeenPickup,
  sorting: Sorting,
  readings: readonly Reading[],
): { readonly a?: Ohms; readonly b?: Ohms } {
  const pointOf = (role: Role): string | undefined => {
    const found = sorting.leads.find((one) => one.role === role);
    const lead = leads.find(({ id }) => id === found?.lead);
    return lead && endOf(lead);
  };
  const link = pointOf('link');
  const measured: { a?: Ohms; b?: Ohms } = {};
  for (const coil of ['a', 'b'] as const) {
    const ends = [pointOf(`${coil}.start`) ?? link, pointOf(`${coil}.finish`) ?? link];
    for (const { ask, seen } of readings)
      if (
        ask.kind === 'ohms' &&
        seen.kind === 'ohms' &&
        seen.ohms !== 'open' &&
        ends[0] !== ends[1] &&
        ends.includes(ask.red) &&
        ends.includes(ask.black)
      )
        measured[coil] = seen.ohms;
  }
  return measured;
}
