import type { Circuit, JointId, LeadId, LeadKind, LugRef } from '../circuit.ts';
import type { Part, PartId } from '../parts/part.ts';
import { leadColoured, leadCut, leadJoined, leadOfKind, leadResoldered } from './leads.ts';
import { partAdded, partChanged, partRemoved, thingRenamed, wiringRenamed } from './parts.ts';
import type { Piece } from './piece.ts';

/** One act of whoever draws a wiring, as plain data: it can be stored, done again and taken back. */
export type Act =
  | ({ readonly do: 'add' } & Piece)
  /** Takes the part away with its leads; a coil or plate goes with its pickup, a pot with the switch on its back. */
  | { readonly do: 'remove'; readonly part: PartId }
  | { readonly do: 'join'; readonly lead: LeadId; readonly from: LugRef; readonly to: LugRef }
  | { readonly do: 'cut'; readonly lead: LeadId }
  /** Solders one end of a lead to another lug. */
  | { readonly do: 'solder'; readonly joint: JointId; readonly lug: LugRef }
  /** The colour as seen, in the person's words; empty takes it off. */
  | { readonly do: 'colour'; readonly lead: LeadId; readonly colour: string }
  | { readonly do: 'kind'; readonly lead: LeadId; readonly kind: LeadKind }
  /** A part or a pickup gets another title. */
  | { readonly do: 'rename'; readonly thing: string; readonly title: string }
  /** The part as it now is, under its old id. Leads on lugs that it no longer has are taken off. */
  | { readonly do: 'change'; readonly part: Part }
  | { readonly do: 'entitle'; readonly title: string };

/** The wiring after an act; the wiring before it is left as it is. Throws CircuitError, whose sentence names the thing. */
export function afterAct(circuit: Circuit, act: Act): Circuit {
  switch (act.do) {
    case 'add':
      return partAdded(circuit, act);
    case 'remove':
      return partRemoved(circuit, act.part);
    case 'join':
      return leadJoined(circuit, act.lead, act.from, act.to);
    case 'cut':
      return leadCut(circuit, act.lead);
    case 'solder':
      return leadResoldered(circuit, act.joint, act.lug);
    case 'colour':
      return leadColoured(circuit, act.lead, act.colour);
    case 'kind':
      return leadOfKind(circuit, act.lead, act.kind);
    case 'rename':
      return thingRenamed(circuit, act.thing, act.title);
    case 'change':
      return partChanged(circuit, act.part);
    case 'entitle':
      return wiringRenamed(circuit, act.title);
  }
}
