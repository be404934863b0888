import type { LugRef } from './circuit.ts';
import type { Part } from './parts/part.ts';

/** The lug of a part's metal, which should be grounded; null where it has none. */
export function metalOf(part: Part): LugRef | null {
  if (part.kind === 'metal') return `${part.id}.metal`;
  if (part.kind === 'pot') return `${part.id}.case`;
  return part.kind === 'switch' && part.frame ? `${part.id}.frame` : null;
}
