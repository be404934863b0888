import type { Circuit, Lead, LugRef } from '../../circuit/circuit.ts';
import type { NodeName } from '../../circuit/edit.ts';
import type { Part, PartId } from '../../circuit/parts/part.ts';
import { headOf } from '../../words/called.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { placeNames } from '../../words/en/places.ts';

export const partOf = (circuit: Circuit, id: PartId): Part | undefined =>
  circuit.parts.find((part) => part.id === id);

/** Part and lug of `neckVolume.3`. */
export function splitLug(ref: LugRef): { part: PartId; lug: string } {
  const dot = ref.indexOf('.');
  return dot < 0 ? { part: ref, lug: '' } : { part: ref.slice(0, dot), lug: ref.slice(dot + 1) };
}

/** The lead, its end and the lug below a joint such as `hot@to`; undefined for a lug. */
export function jointOf(
  circuit: Circuit,
  node: NodeName,
): { lead: Lead; end: 'from' | 'to'; lug: LugRef } | undefined {
  const match = /^(.+)@(from|to)$/.exec(node);
  const lead = match && circuit.leads.find((candidate) => candidate.id === match[1]);
  if (!match || !lead) return undefined;
  const end = match[2] as 'from' | 'to';
  return { lead, end, lug: lead[end] };
}

/** The lug that a point stands on or beside. */
export const lugOfNode = (circuit: Circuit, node: NodeName): LugRef =>
  jointOf(circuit, node)?.lug ?? node;

/** "lug 3 of the neck volume", "its case" without the part. */
export function lugWords(circuit: Circuit, ref: LugRef): string {
  const { part: id, lug } = splitLug(ref);
  const part = partOf(circuit, id);
  if (!part) return ref;
  switch (part.kind) {
    case 'pot':
      return lug === 'case'
        ? placeNames().caseOfPot(part.title)
        : placeNames().lugOfPart(lug, part.title);
    case 'switch':
      return lug === 'frame'
        ? placeNames().frameOfSwitch(part.title)
        : placeNames().lugOfPart(lug, part.title);
    case 'jack':
      return placeNames().endOfCoil(lug, part.title);
    case 'coil':
      return placeNames().endOfCoil(lug, part.title);
    case 'capacitor':
    case 'resistor':
      return placeNames().leg(lug, part.title);
    default:
      return placeNames().part(part.title);
  }
}

/** The same for any point a probe can stand on. */
export function nodeWords(circuit: Circuit, node: NodeName): string {
  const joint = jointOf(circuit, node);
  if (!joint) return lugWords(circuit, node);
  const colour = joint.lead.colour ?? '';
  return drawingWords().bareWireBeyond(colour, lugWords(circuit, joint.lug));
}

/** Where a lead goes, seen from one of its ends: "to volume". */
export function farEndWords(circuit: Circuit, lead: Lead, end: 'from' | 'to'): string {
  const { part: id } = splitLug(lead[end === 'from' ? 'to' : 'from']);
  const pickup = circuit.pickups.find(
    (candidate) => candidate.coils.includes(id) || candidate.plate === id || candidate.cover === id,
  );
  const title = pickup?.title ?? partOf(circuit, id)?.title ?? id;
  return drawingWords().to(headOf(title));
}
