import { colourOf, type SeenLead } from '../../circuit/seen-pickup.ts';
import type { PickupSheet } from '../../notebook/index.ts';
import { commonWords } from '../../words/en/common.ts';

/** What a list calls a pickup that was given no name: "Pickup: red, striped green". */
export const colourTitle = (leads: readonly SeenLead[]): string =>
  `Pickup: ${leads.map(colourOf).join(', ')}`;

/** The person's name for it, or `plain` where none was given: a list of colours is no name to put into a sentence. */
export const nameOr = (plain: string, { title, seen }: PickupSheet): string =>
  title === colourTitle(seen.leads) ? plain : title;

/** A title inside a sentence: "the neck pickup", but a name of its own, written with a capital, stands alone. */
export const theTitled = (title: string): string => commonWords().theTitled(title);
