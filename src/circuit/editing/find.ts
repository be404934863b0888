import { circuitWords } from '../../words/en/circuit.ts';
import type { Circuit, Lead, LugRef } from '../circuit.ts';
import { CircuitError } from '../errors.ts';
import { kindOf } from '../parts/index.ts';
import type { Part } from '../parts/part.ts';

export const partIdOf = (lug: LugRef): string => lug.slice(0, lug.indexOf('.'));

/** Throws CircuitError where there is no such part. */
export function partCalled(circuit: Circuit, id: string): Part {
  const part = circuit.parts.find((one) => one.id === id);
  if (!part) throw new CircuitError('unknown-part', id, circuitWords().thereIsNoPartCalledId(id));
  return part;
}

/** Throws CircuitError where there is no such lead. */
export function leadCalled(circuit: Circuit, id: string): Lead {
  const lead = circuit.leads.find((one) => one.id === id);
  if (!lead) throw new CircuitError('unknown-lead', id, circuitWords().thereIsNoLeadCalledId(id));
  return lead;
}

export const lugsOf = (part: Part): readonly LugRef[] =>
  kindOf(part)
    .lugs(part)
    .map((name) => `${part.id}.${name}`);

/** The part that has this lug. Throws CircuitError where none has. */
export function ownerOf(circuit: Circuit, lug: LugRef): Part {
  const part = circuit.parts.find((one) => one.id === partIdOf(lug));
  if (!part || !lugsOf(part).includes(lug))
    throw new CircuitError('unknown-lug', lug, circuitWords().thereIsNoLugLugInThis(lug));
  return part;
}
