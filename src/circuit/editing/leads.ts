import { circuitWords } from '../../words/en/circuit.ts';
import type { Circuit, JointId, Lead, LeadId, LeadKind, LugRef } from '../circuit.ts';
import { CircuitError } from '../errors.ts';
import { MOST } from '../limits.ts';
import type { Part } from '../parts/part.ts';
import { leadCalled, ownerOf } from './find.ts';
import { typedWords } from './words.ts';

/** Whether a lead comes out of this part itself, so that only its far end is soldered by hand. */
const ownLead = (circuit: Circuit, part: Part): 'pickup' | 'leg' | null => {
  if (part.kind === 'coil') return 'pickup';
  if (part.kind === 'capacitor' || part.kind === 'resistor') return 'leg';
  const bound = circuit.pickups.some(({ plate, cover }) => part.id === plate || part.id === cover);
  return bound ? 'pickup' : null;
};

/** Metal that touches a case, frame or other metal where it is screwed down. */
const isSheet = (part: Part): boolean =>
  part.kind === 'metal' && ['foil', 'paint', 'control-plate'].includes(part.role);
const isBody = (part: Part, lug: LugRef): boolean =>
  part.kind === 'metal' || lug.endsWith('.case') || lug.endsWith('.frame');

/**
 * What a lead between two lugs is, and which way it runs: a pickup's own lead runs from the coil or plate, a leg from its
 * part, each once; sheet metal touches cases and frames by mounting; anything else is a wire.
 */
export function leadBetween(
  circuit: Circuit,
  one: LugRef,
  other: LugRef,
): Pick<Lead, 'kind' | 'from' | 'to'> {
  const [a, b] = [ownerOf(circuit, one), ownerOf(circuit, other)];
  const used = (lug: LugRef) =>
    circuit.leads.some(({ kind, from }) => kind === 'leg' && from === lug);
  for (const [part, from, to] of [
    [a, one, other],
    [b, other, one],
  ] as const) {
    const kind = ownLead(circuit, part);
    // A leg is one piece of wire: what else is joined there is a wire soldered to it.
    if (kind === 'pickup' || (kind === 'leg' && !used(from))) return { kind, from, to };
  }
  if ((isSheet(a) && isBody(b, other)) || (isSheet(b) && isBody(a, one)))
    return isSheet(b)
      ? { kind: 'mount', from: one, to: other }
      : { kind: 'mount', from: other, to: one };
  return { kind: 'wire', from: one, to: other };
}

const lugsJoined = ({ from, to }: Pick<Lead, 'from' | 'to'>, one: LugRef, other: LugRef): boolean =>
  (from === one && to === other) || (from === other && to === one);

function refuseTwin(circuit: Circuit, from: LugRef, to: LugRef, but?: LeadId): void {
  if (from === to)
    throw new CircuitError('lead-to-itself', from, circuitWords().aLeadHasTwoEndsChooseAnother);
  const twin = circuit.leads.find((lead) => lead.id !== but && lugsJoined(lead, from, to));
  if (twin)
    throw new CircuitError('already-joined', twin.id, circuitWords().theseTwoLugsAreJoinedAlready);
}

/** Runs a lead between two lugs, given in any order. */
export function leadJoined(circuit: Circuit, id: LeadId, one: LugRef, other: LugRef): Circuit {
  refuseTwin(circuit, one, other);
  if ([...circuit.parts, ...circuit.leads, ...circuit.pickups].some((thing) => thing.id === id))
    throw new CircuitError('duplicate-name', id, circuitWords().twoThingsWouldBeCalledId(id));
  if (circuit.leads.length >= MOST.leads)
    throw new CircuitError(
      'value-out-of-range',
      id,
      circuitWords().aGuitarHasAtMostLeadsLeads(MOST.leads),
    );
  return { ...circuit, leads: [...circuit.leads, { id, ...leadBetween(circuit, one, other) }] };
}

export function leadCut(circuit: Circuit, id: LeadId): Circuit {
  leadCalled(circuit, id);
  return { ...circuit, leads: circuit.leads.filter((lead) => lead.id !== id) };
}

const changed = (circuit: Circuit, id: LeadId, to: (lead: Lead) => Lead): Circuit => {
  leadCalled(circuit, id);
  return { ...circuit, leads: circuit.leads.map((lead) => (lead.id === id ? to(lead) : lead)) };
};

/** The end inside a pickup or at the body of a part stays where it is: only the far end is soldered. */
export function leadResoldered(circuit: Circuit, joint: JointId, lug: LugRef): Circuit {
  const at = joint.indexOf('@');
  const lead = leadCalled(circuit, joint.slice(0, at));
  const end = joint.slice(at + 1) === 'from' ? 'from' : 'to';
  ownerOf(circuit, lug);
  if (end === 'from' && (lead.kind === 'pickup' || lead.kind === 'leg'))
    throw new CircuitError('bad-shape', joint, circuitWords().thisEndIsInsideThePartOnly);
  const next = { ...lead, [end]: lug };
  refuseTwin(circuit, next.from, next.to, lead.id);
  return changed(circuit, lead.id, () => next);
}

export function leadColoured(circuit: Circuit, id: LeadId, text: string): Circuit {
  const words = text.trim();
  const colour = words === '' ? null : typedWords(words, circuitWords().theColour, MOST.colour);
  return changed(circuit, id, ({ colour: _, ...lead }) =>
    colour === null ? lead : { ...lead, colour },
  );
}

/** A wire may turn out to be contact by mounting, or the other way round; what belongs to a part stays its own. */
export function leadOfKind(circuit: Circuit, id: LeadId, kind: LeadKind): Circuit {
  const lead = leadCalled(circuit, id);
  const free: readonly LeadKind[] = ['wire', 'mount'];
  if (kind !== lead.kind && !(free.includes(kind) && free.includes(lead.kind)))
    throw new CircuitError(
      'bad-shape',
      id,
      circuitWords().thisLeadComesOutOfTheOwnerOf(ownerOf(circuit, lead.from).title),
    );
  return changed(circuit, id, (one) => ({ ...one, kind }));
}

/** Leads that end on a lug. */
export const leadsAt = (circuit: Circuit, lug: LugRef): readonly Lead[] =>
  circuit.leads.filter(({ from, to }) => from === lug || to === lug);
