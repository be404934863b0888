import type { Circuit } from '../circuit/circuit.ts';
import { checkWords } from '../words/en/checks.ts';
import type { Heard } from './heard.ts';
import type { Network } from './network.ts';
import type { Warning } from './warning.ts';

/** Coils that no stand of the switches lets the output hear. `heard` has every stand that was gone through. */
export function unheardCoils(
  circuit: Circuit,
  network: Network,
  heard: readonly Heard[],
): readonly Warning[] {
  if (!network.jack) return [];
  const found = new Set(heard.flatMap(({ edges }) => edges.map(({ part }) => part.id)));
  return circuit.parts.flatMap((part): Warning[] =>
    part.kind !== 'coil' || found.has(part.id)
      ? []
      : [
          {
            kind: 'unheard',
            lugs: [`${part.id}.finish`, `${part.id}.start`],
            parts: [part.id],
            sentence: checkWords().thePartReachesTheJackInNo(part.title),
          },
        ],
  );
}
