export { bareEndsOf, lugNamesOf, lugsOf } from './lugs.ts';
export { type AllPairs, allPairs, resistances, resistancesOfMany } from './ohms.ts';
export type { Probes } from './operating-points.ts';
export { magnitudes, type ResponseJob, responses, sweepMs } from './response.ts';
export { type RealParts, type SpiceNetlist, spiceNetlist } from './spice-netlist.ts';
export { shareAt } from './taper.ts';
export { tapTransfer } from './transfer.ts';
