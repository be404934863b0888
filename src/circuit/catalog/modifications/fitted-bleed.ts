import type { Circuit } from '../../circuit.ts';
import type { Capacitor, Part, PartId, Resistor } from '../../parts/part.ts';
import type { Farads, Ohms } from '../../units.ts';
import type { Place } from './modification.ts';
import { netOf, partOf } from './nets.ts';
import { trebleBleed } from './treble-bleed.ts';

export type BleedMake = 'none' | 'alone' | 'parallel' | 'series';

/** What is wired from the input of a volume to its wiper. */
export interface FittedBleed {
  readonly make: BleedMake;
  readonly capacitor?: Capacitor;
  readonly resistor?: Resistor;
}

type Leg = Capacitor | Resistor;

/** The treble bleed of a volume, told by how its parts are joined, whatever they are called. */
export function fittedBleed(circuit: Circuit, volume: PartId): FittedBleed {
  const [input, wiper] = [netOf(circuit, `${volume}.3`), netOf(circuit, `${volume}.2`)];
  const legs = circuit.parts.filter(
    (part): part is Leg => part.kind === 'capacitor' || part.kind === 'resistor',
  );
  const ends = (part: Leg) => [`${part.id}.a`, `${part.id}.b`] as const;
  const across = legs.filter((part) => {
    const [a, b] = ends(part);
    return (input.has(a) && wiper.has(b)) || (input.has(b) && wiper.has(a));
  });
  const capacitor = across.find((part) => part.kind === 'capacitor');
  const resistor = across.find((part) => part.kind === 'resistor');
  if (capacitor)
    return { make: resistor ? 'parallel' : 'alone', capacitor, ...(resistor && { resistor }) };
  // One behind the other: both end in a point where nothing else is.
  for (const one of legs)
    for (const end of ends(one)) {
      if (one.kind !== 'capacitor') continue;
      const middle = netOf(circuit, end);
      const far = ends(one).find((lug) => lug !== end) as string;
      const other = legs.find((part) => part !== one && ends(part).some((lug) => middle.has(lug)));
      if (other?.kind !== 'resistor') continue;
      const out = ends(other).find((lug) => !middle.has(lug));
      const joins =
        out !== undefined &&
        ((input.has(far) && wiper.has(out)) || (wiper.has(far) && input.has(out)));
      const alone = [...middle].every((lug) => {
        const part = circuit.parts.find(({ id }) => id === partOf(lug));
        return part === one || part === other || part?.kind === 'splice';
      });
      if (joins && alone) return { make: 'series', capacitor: one, resistor: other };
    }
  return { make: 'none' };
}

/** The wiring with another treble bleed on a volume, or with none: values alone are changed where its make stays. */
export function withBleed(
  circuit: Circuit,
  volume: Place,
  wanted: { readonly make: BleedMake; readonly farads: Farads; readonly ohms: Ohms },
): Circuit {
  const fitted = fittedBleed(circuit, volume.id);
  let made = circuit;
  if (fitted.make !== wanted.make) {
    made = withoutBleed(circuit, fitted);
    if (wanted.make === 'none') return made;
    made = trebleBleed.apply(made, volume, { make: wanted.make });
  }
  const now = fittedBleed(made, volume.id);
  return {
    ...made,
    parts: made.parts.map((part): Part => {
      if (part.id === now.capacitor?.id && part.kind === 'capacitor')
        return { ...part, farads: { nominal: wanted.farads, tolerance: part.farads.tolerance } };
      if (part.id === now.resistor?.id && part.kind === 'resistor')
        return { ...part, ohms: { nominal: wanted.ohms, tolerance: part.ohms.tolerance } };
      return part;
    }),
  };
}

function withoutBleed(circuit: Circuit, { capacitor, resistor }: FittedBleed): Circuit {
  const gone = new Set<PartId>([capacitor, resistor].flatMap((part) => (part ? [part.id] : [])));
  const between = circuit.parts.filter(
    ({ kind, id }) =>
      kind === 'splice' &&
      circuit.leads.some(({ from, to }) => [from, to].some((lug) => partOf(lug) === id)) &&
      circuit.leads
        .filter(({ from, to }) => [from, to].some((lug) => partOf(lug) === id))
        .every(({ from, to }) => gone.has(partOf(from)) || gone.has(partOf(to))),
  );
  for (const { id } of between) gone.add(id);
  return {
    ...circuit,
    parts: circuit.parts.filter(({ id }) => !gone.has(id)),
    leads: circuit.leads.filter(({ from, to }) => !gone.has(partOf(from)) && !gone.has(partOf(to))),
  };
}
