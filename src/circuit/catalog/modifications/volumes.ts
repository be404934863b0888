import type { Circuit, LugRef } from '../../circuit.ts';
import type { Pot } from '../../parts/part.ts';
import { contactsIn, groundNet, netOf, partOf } from './nets.ts';

export const volumesOf = (circuit: Circuit): readonly Pot[] =>
  circuit.parts.filter((part): part is Pot => part.kind === 'pot' && part.role === 'volume');

/** The lug of a volume where its pickup comes in: 3, or the wiper where volumes are independent; null where neither or both. */
export function inputOf(circuit: Circuit, volume: string): '2' | '3' | null {
  const ground = groundNet(circuit);
  const reaches = (lug: LugRef) =>
    [...netOf(circuit, lug, contactsIn(circuit), ground)].some(
      (one) => circuit.parts.find(({ id }) => id === partOf(one))?.kind === 'coil',
    );
  const found = (['3', '2'] as const).filter((lug) => reaches(`${volume}.${lug}`));
  return found.length === 1 ? (found[0] ?? null) : null;
}
