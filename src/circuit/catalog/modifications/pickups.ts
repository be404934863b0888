import type { Circuit, Lead, LugRef, Pickup } from '../../circuit.ts';
import { CircuitError } from '../../errors.ts';
import type { Place } from './modification.ts';
import { groundNet, netOf, partOf } from './nets.ts';

/** The two outer leads of a pickup, and the coils they come from. */
export interface Ends {
  readonly hot: Lead;
  readonly cold: Lead;
  readonly hotCoil: string;
  readonly coldCoil: string;
}

/** Pickups with two outer leads to take hold of, those of which `fits` holds. */
export const pickupPlaces = (
  circuit: Circuit,
  fits: (pickup: Pickup) => boolean = () => true,
): readonly Place[] =>
  circuit.pickups.filter((pickup) => endsOf(circuit, pickup) !== null && fits(pickup));

/** The pickup of a place and its ends; throws CircuitError where there is none. */
export function heldAt(circuit: Circuit, id: string): { readonly pickup: Pickup } & Ends {
  const pickup = circuit.pickups.find((one) => one.id === id);
  const ends = pickup && endsOf(circuit, pickup);
  if (!pickup || !ends)
    throw new CircuitError('unknown-part', id, `there is no pickup "${id}" with two outer leads`);
  return { pickup, ...ends };
}

export const isHumbucker = (pickup: Pickup): boolean => pickup.coils.length === 2;

/** The lead that a pickup brings out from one end of a coil, or null where that end is joined inside. */
export function coilLead(circuit: Circuit, lug: LugRef): Lead | null {
  const kindAt = (at: LugRef) => circuit.parts.find(({ id }) => id === partOf(at))?.kind;
  return (
    circuit.leads.find(
      ({ kind, from, to }) => kind === 'pickup' && from === lug && kindAt(to) !== 'coil',
    ) ?? null
  );
}

/** Hot is the far end of the last coil, unless that one is grounded and the other is not: then the pickup is reversed. */
export function endsOf(circuit: Circuit, pickup: Pickup): Ends | null {
  const [first, last] = [pickup.coils[0], pickup.coils.at(-1)];
  if (first === undefined || last === undefined) return null;
  const one = coilLead(circuit, `${first}.start`);
  const other = coilLead(circuit, `${last}.finish`);
  if (!one || !other) return null;
  const ground = groundNet(circuit);
  return ground.has(other.to) && !ground.has(one.to)
    ? { hot: one, cold: other, hotCoil: first, coldCoil: last }
    : { hot: other, cold: one, hotCoil: last, coldCoil: first };
}

/** The lug in the cavity where the inner ends of a humbucker's coils meet, or null where none can be reached. */
export function linkOf(circuit: Circuit, pickup: Pickup): LugRef | null {
  const [first, last] = [pickup.coils[0], pickup.coils.at(-1)];
  if (!isHumbucker(pickup)) return null;
  const net = netOf(circuit, `${first}.finish`);
  if (!net.has(`${last}.start`)) return null;
  return (
    [...net].find((lug) => circuit.parts.find(({ id }) => id === partOf(lug))?.kind === 'splice') ??
    null
  );
}

/** The lead by which cover or plate hang on an end of a coil, or null where they have a ground wire of their own. */
export function metalLead(circuit: Circuit, pickup: Pickup): Lead | null {
  const metals = [pickup.plate, pickup.cover].filter((id) => id !== undefined);
  return (
    circuit.leads.find(
      ({ from, to }) =>
        metals.some((id) => from === `${id}.metal`) && pickup.coils.some((id) => partOf(to) === id),
    ) ?? null
  );
}

/** Cover or plate that hangs on an end of a coil instead of on a ground wire of its own: reversed, it would be hot. */
export function metalOnCoil(circuit: Circuit, pickup: Pickup): string | null {
  const hanging = metalLead(circuit, pickup);
  const metal = hanging && circuit.parts.find(({ id }) => id === partOf(hanging.from));
  return metal?.title ?? null;
}

/** The title of a switch that the inner ends of the pickup's coils go to already, or null. */
export function innerSwitch(circuit: Circuit, pickup: Pickup): string | null {
  if (!isHumbucker(pickup)) return null;
  const inner = [`${pickup.coils[0]}.finish`, `${pickup.coils.at(-1)}.start`];
  const lugs = inner.flatMap((lug) => [...netOf(circuit, lug)]);
  const part = circuit.parts.find(
    ({ kind, id }) => kind === 'switch' && lugs.some((lug) => partOf(lug) === id),
  );
  return part?.title ?? null;
}

/** What goes on the outer ends of a pickup has to be there before its coils are switched. */
export function innerFirst(circuit: Circuit, id: string, what: string): string | null {
  const { pickup } = heldAt(circuit, id);
  const title = innerSwitch(circuit, pickup);
  return title === null
    ? null
    : `The coils of the ${pickup.title} go to the ${title} already: fit the ${what} before it.`;
}

/** Why the cold end of a pickup cannot leave ground, or null where it can. */
export function hotMetal(circuit: Circuit, id: string): string | null {
  const { pickup } = heldAt(circuit, id);
  const metal = metalOnCoil(circuit, pickup);
  return metal === null
    ? null
    : `The cold lead of the ${pickup.title} also grounds the ${metal}: give that metal a ground wire of its own first, or it becomes hot.`;
}
