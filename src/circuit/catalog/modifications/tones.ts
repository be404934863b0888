import type { Circuit, Lead, LugRef } from '../../circuit.ts';
import { netOf, partOf } from './nets.ts';
import { volumesOf } from './volumes.ts';

export interface Hanging {
  readonly lead: Lead;
  readonly end: 'from' | 'to';
  readonly volume: string;
  readonly lug: '2' | '3';
}

/** The lead by which a tone hangs on a volume: its own wire, or the leg of its capacitor. */
export function hangingOf(circuit: Circuit, tone: string): Hanging | null {
  const kindOf = (lug: LugRef) => circuit.parts.find(({ id }) => id === partOf(lug))?.kind;
  const ofTone = new Set(
    circuit.parts
      .filter(
        ({ kind, id }) =>
          kind === 'capacitor' &&
          ['a', 'b'].some((leg) =>
            ['1', '2', '3'].some((lug) => netOf(circuit, `${id}.${leg}`).has(`${tone}.${lug}`)),
          ),
      )
      .map(({ id }) => id)
      .concat(tone),
  );
  const volumes = volumesOf(circuit).map(({ id }) => id);
  for (const lead of circuit.leads)
    for (const [end, near, far] of [
      ['from', lead.from, lead.to],
      ['to', lead.to, lead.from],
    ] as const) {
      const lug = near.slice(near.indexOf('.') + 1);
      if (
        volumes.includes(partOf(near)) &&
        (lug === '2' || lug === '3') &&
        ofTone.has(partOf(far)) &&
        (kindOf(far) === 'pot' || kindOf(far) === 'capacitor')
      )
        return { lead, end, volume: partOf(near), lug };
    }
  return null;
}
