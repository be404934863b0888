import type { Circuit } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { bridges } from './bridges.ts';
import { capacitors } from './capacitors.ts';
import { coils } from './coils.ts';
import { exchanges } from './exchanges.ts';
import type { Fault, FaultFamily } from './fault.ts';
import { harmless } from './harmless.ts';
import { joints } from './joints.ts';
import { landings } from './landings.ts';
import { pots } from './pots.ts';
import { resistors } from './resistors.ts';
import { switches } from './switches.ts';

export const families: readonly FaultFamily[] = [
  joints,
  bridges,
  landings,
  exchanges,
  coils,
  pots,
  capacitors,
  resistors,
  switches,
];

/** Every modelled single fault of a circuit, made from its parts and leads; weights sum to 1. Faults that change nothing in any setting are left out. */
export function faultsOf(circuit: Circuit): readonly Fault[] {
  const layout = layoutOf(circuit);
  const found = families.flatMap((family) => {
    const list = family.list(circuit, layout).filter((fault) => !harmless(layout, fault));
    const total = list.reduce((sum, fault) => sum + fault.weight, 0);
    return list.map(
      (fault): Fault => ({ ...fault, weight: (family.share * fault.weight) / total }),
    );
  });
  const all = found.reduce((sum, fault) => sum + fault.weight, 0);
  return found.map((fault): Fault => ({ ...fault, weight: fault.weight / all }));
}

/** The same as bare edits, one a size: what an outside simulator needs. */
export function suspectsOf(
  circuit: Circuit,
): readonly { id: string; family: string; edits: readonly Edit[] }[] {
  return faultsOf(circuit).flatMap((fault) =>
    fault.variants.map((variant, at) => ({
      id: fault.variants.length === 1 ? fault.id : `${fault.id}#${at}`,
      family: fault.family,
      edits: variant.edits,
    })),
  );
}
