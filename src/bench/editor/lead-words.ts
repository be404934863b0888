import type { Circuit, Lead, LugRef } from '../../circuit/circuit.ts';
import { leadsAt } from '../../circuit/editing/leads.ts';
import { leadTitle, lugTitle, partTitle } from '../../circuit/names.ts';
import { layoutOf } from '../../circuit/netlist.ts';
import { placeNames } from '../../words/en/places.ts';

export const lugWords = (circuit: Circuit, lug: LugRef): string => lugTitle(layoutOf(circuit), lug);
export const leadWords = (circuit: Circuit, id: string): string => leadTitle(layoutOf(circuit), id);
export const partWords = (circuit: Circuit, id: string): string => partTitle(layoutOf(circuit), id);

/** A lug in the row of its part, without saying whose it is: "3", "case", "start". */
export const lugName = (lug: LugRef): string => placeNames().lug(lug.slice(lug.indexOf('.') + 1));

/** Each lead on a lug with the lug at its other end. */
export const leadsFrom = (
  circuit: Circuit,
  lug: LugRef,
): readonly { readonly lead: Lead; readonly other: LugRef }[] =>
  leadsAt(circuit, lug).map((lead) => ({ lead, other: lead.from === lug ? lead.to : lead.from }));
