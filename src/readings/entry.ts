export type { Choice, Refusal } from './entry-amount.ts';
export { doubt, type ExpectedOhms } from './entry-doubt.ts';
export { parseFarads } from './entry-farads.ts';
export { formatFarads, formatOhms } from './entry-format.ts';
export { parseOhms } from './entry-ohms.ts';
