import type { Circuit, LugRef } from '../../src/circuit/circuit.ts';

/** Hot and cold lug of the output jack. */
export function outputOf(circuit: Circuit): { readonly tip: LugRef; readonly sleeve: LugRef } {
  const jack = circuit.parts.find(({ kind }) => kind === 'jack');
  if (!jack) throw new Error(`${circuit.id} has no jack`);
  return { tip: `${jack.id}.tip`, sleeve: `${jack.id}.sleeve` };
}
