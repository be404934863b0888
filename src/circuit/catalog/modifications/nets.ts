import type { Circuit, LugRef } from '../../circuit.ts';

/** Pairs of lugs that something beside a lead joins, such as the contacts of switches. */
export type Joins = readonly (readonly [LugRef, LugRef])[];

export const partOf = (lug: LugRef): string => lug.slice(0, lug.indexOf('.'));

/** Every lug joined to this one by leads, and by `joins` where they are given; never beyond a lug of `stop`. */
export function netOf(
  circuit: Circuit,
  lug: LugRef,
  joins: Joins = [],
  stop: ReadonlySet<LugRef> = new Set(),
): ReadonlySet<LugRef> {
  const pairs = [...circuit.leads.map(({ from, to }) => [from, to] as const), ...joins];
  const net = new Set([lug]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const [a, b] of pairs)
      if (net.has(a) !== net.has(b) && !stop.has(a) && !stop.has(b)) {
        net.add(a).add(b);
        grown = true;
      }
  }
  return net;
}

export const groundNet = (circuit: Circuit): ReadonlySet<LugRef> => netOf(circuit, 'jack.sleeve');

/** Every contact of every switch, as if all positions were on at once. */
export const contactsIn = (circuit: Circuit): Joins =>
  circuit.parts.flatMap((part) =>
    part.kind === 'switch'
      ? part.positions.flatMap(({ joins }) =>
          joins.map(([a, b]) => [`${part.id}.${a}`, `${part.id}.${b}`] as const),
        )
      : [],
  );

/** Every track of every pot, end to end with its wiper. */
export const tracksIn = (circuit: Circuit): Joins =>
  circuit.parts.flatMap(({ kind, id }) =>
    kind === 'pot'
      ? ([
          [`${id}.1`, `${id}.2`],
          [`${id}.2`, `${id}.3`],
        ] as const)
      : [],
  );
