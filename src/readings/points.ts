import { CircuitError } from '../circuit/errors.ts';
import type { Layout } from '../circuit/netlist.ts';
import { readingWords } from '../words/en/readings.ts';

/** The output jack's hot and cold lug. Throws CircuitError where the guitar has no jack. */
export function jackOf(layout: Layout): { readonly tip: string; readonly sleeve: string } {
  const jack = layout.circuit.parts.find((part) => part.kind === 'jack');
  if (!jack)
    throw new CircuitError('unknown-part', 'jack', readingWords().thisGuitarHasNoOutputJack);
  return { tip: `${jack.id}.tip`, sleeve: `${jack.id}.sleeve` };
}
