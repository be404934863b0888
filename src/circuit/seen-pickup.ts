import { circuitWords } from '../words/en/circuit.ts';
import type { Circuit, Lead } from './circuit.ts';
import { CircuitError } from './errors.ts';
import type { Coil, Part } from './parts/part.ts';
import { farads, henries, ohms } from './units.ts';

/** A lead as it comes out of the pickup: `wire` has an insulated core, `bare` is a bare wire or braid, `pair` is two wires that the factory joined. */
export interface SeenLead {
  /** Starts with a letter; letters, digits, - and _ only. */
  readonly id: string;
  /** As the person calls it: "green", "white and red". */
  readonly colour: string;
  /** What tells it from another of that colour, as an adjective: "striped". */
  readonly mark?: string;
  readonly what: 'wire' | 'bare' | 'pair';
}

/** One pickup on the mat, as it is seen: nothing here is measured. */
export interface SeenPickup {
  /** Rows of pole pieces or bobbins. */
  readonly coils: 1 | 2;
  readonly leads: readonly SeenLead[];
  /** Whether a probe reaches its base plate, or metal that is joined to it. */
  readonly plate: boolean;
  /** A metal cover that is not soldered to the plate. */
  readonly cover: boolean;
}

export type CoilId = 'a' | 'b';

/** The coils that can be tapped: `a` is the screw coil of two, or the only one. */
export const coilsOf = ({ coils }: SeenPickup): readonly CoilId[] =>
  coils === 2 ? ['a', 'b'] : ['a'];

/** Usual resistance of one coil of two, and of a coil that is alone, ohm (common practice, no source). */
const ONE_OF_TWO = 4200;
const ALONE = 6500;

/** The point where a probe meets the free end of a lead. */
export const endOf = (lead: SeenLead): string => `${lead.id}End.joint`;

/** The colour with its mark, if any: "striped green". */
export const colourOf = ({ colour, mark }: SeenLead): string =>
  mark ? `${mark} ${colour}` : colour;

/** "the green lead", without the article. */
export const leadName = (lead: SeenLead): string =>
  lead.what === 'pair'
    ? `joined pair ${colourOf(lead)}`
    : `${colourOf(lead)} ${lead.what === 'bare' ? 'wire' : 'lead'}`;

export const coilTitle = (seen: SeenPickup, coil: CoilId): string =>
  seen.coils === 1 ? 'coil' : coil === 'a' ? 'screw coil' : 'slug coil';

/**
 * The pickup as a circuit of its own: coils and metal, and leads with free ends. Where each lead starts inside is what a candidate says
 * by its edits; here all start at one lug. Throws CircuitError where there are too few or too many leads, or two of one name.
 */
export function circuitOf(seen: SeenPickup): Circuit {
  if (seen.leads.length < 2 || seen.leads.length > 6)
    throw new CircuitError(
      'bad-shape',
      'leads',
      circuitWords().aPickupToSortHas2To(seen.leads.length),
    );
  const names = seen.leads.map(leadName);
  const twice = names.find((name, at) => names.indexOf(name) !== at);
  if (twice !== undefined)
    throw new CircuitError(
      'duplicate-name',
      twice,
      circuitWords().twoLeadsAreCalledTwiceGive(twice),
    );
  const coil = (id: CoilId): Coil => ({
    kind: 'coil',
    id,
    title: coilTitle(seen, id),
    ohms: { nominal: ohms(seen.coils === 2 ? ONE_OF_TWO : ALONE), tolerance: 0.1 },
    henries: henries(2.5),
    selfFarads: farads(110e-12),
    // A coil's finish is by definition the end that swings to plus when steel is pulled off: winding sense and pole go together.
    winding: 1,
    magnet: 1,
    place: seen.coils === 1 ? 'single' : id === 'a' ? 'screw' : 'slug',
    ends: 'sealed',
  });
  const parts: Part[] = [
    coil('a'),
    coil('b'),
    { kind: 'metal', id: 'plate', title: 'base plate', role: 'plate', outside: false },
    ...(seen.cover
      ? [{ kind: 'metal', id: 'cover', title: 'cover', role: 'cover', outside: false } as const]
      : []),
    ...seen.leads.map(
      (lead): Part => ({ kind: 'splice', id: `${lead.id}End`, title: leadName(lead) }),
    ),
  ];
  return {
    id: 'pickup-on-the-mat',
    title: `a pickup with ${seen.leads.length} leads`,
    parts,
    leads: seen.leads.map(
      (lead): Lead => ({
        id: lead.id,
        kind: 'pickup',
        from: 'a.start',
        to: endOf(lead),
        colour: colourOf(lead),
      }),
    ),
    pickups: [
      {
        id: 'pickup',
        title: 'pickup',
        coils: ['a', 'b'],
        plate: 'plate',
        ...(seen.cover ? { cover: 'cover' } : {}),
      },
    ],
  };
}
