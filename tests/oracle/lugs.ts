import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Part } from '../../src/circuit/parts/part.ts';

/** Lug names of a part, as the words of the circuit model give them. */
export function lugNamesOf(part: Part): string[] {
  switch (part.kind) {
    case 'coil':
      return ['start', 'finish'];
    case 'pot':
      return ['1', '2', '3', 'case'];
    case 'switch':
      return [...part.rows.flat(), ...(part.frame ? ['frame'] : [])];
    case 'capacitor':
    case 'resistor':
      return ['a', 'b'];
    case 'jack':
      return part.ring ? ['tip', 'sleeve', 'ring'] : ['tip', 'sleeve'];
    case 'metal':
      return ['metal'];
    case 'splice':
      return ['joint'];
  }
}

/** Every lug of the circuit as `part.lug`, in the order of the parts. */
export function lugsOf(circuit: Circuit): string[] {
  return circuit.parts.flatMap((part) => lugNamesOf(part).map((lug) => `${part.id}.${lug}`));
}

/** Every bare end of a lead, `lead@from` and `lead@to`. */
export function bareEndsOf(circuit: Circuit): string[] {
  return circuit.leads.flatMap((lead) => [`${lead.id}@from`, `${lead.id}@to`]);
}
