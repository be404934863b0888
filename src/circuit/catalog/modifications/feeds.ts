import type { Circuit, LugRef } from '../../circuit.ts';
import type { Place } from './modification.ts';
import { contactsIn, groundNet, netOf, partOf, tracksIn } from './nets.ts';

export interface Feed extends Place {
  readonly lug: LugRef;
  /** Where the selector's output is. */
  readonly common: LugRef;
}

/** Outer lugs of selectors that exactly one pickup feeds, straight or through its volume; the first of each pickup. */
export function feeds(circuit: Circuit): readonly Feed[] {
  const ground = groundNet(circuit);
  const found = circuit.parts.flatMap((part) => {
    // A selector has three positions or more; what modifications add has two.
    if (part.kind !== 'switch' || part.positions.length < 3) return [];
    const joins = part.positions.flatMap((position) => position.joins);
    const outer = [...new Set(joins.map(([lug]) => lug))];
    return outer.flatMap((name): Feed[] => {
      const lug = `${part.id}.${name}`;
      const common = joins.find(([one]) => one === name)?.[1];
      if (!common || !isOutput(circuit, part.id, `${part.id}.${common}`)) return [];
      const net = netOf(circuit, lug, tracksIn(circuit), ground);
      const pickups = circuit.pickups.filter(({ coils }) =>
        [...net].some((one) => coils.includes(partOf(one))),
      );
      const [pickup] = pickups;
      return pickup && pickups.length === 1
        ? [{ id: pickup.id, title: pickup.title, lug, common: `${part.id}.${common}` }]
        : [];
    });
  });
  return found.filter(({ id }, at) => found.findIndex((one) => one.id === id) === at);
}

/** A pole that splits coils has a common too, but no way from there to the jack. */
function isOutput(circuit: Circuit, selector: string, common: LugRef): boolean {
  const others = { ...circuit, parts: circuit.parts.filter(({ id }) => id !== selector) };
  const joins = [...tracksIn(circuit), ...contactsIn(others)];
  return netOf(circuit, common, joins, groundNet(circuit)).has('jack.tip');
}

export const feedAt = (circuit: Circuit, id: string): Feed =>
  feeds(circuit).find((one) => one.id === id) as Feed;
