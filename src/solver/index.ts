export { Ac, type AcNetwork, type Load } from './ac.ts';
export type { Complex } from './ac-matrix.ts';
export { DcSolution, solveDc } from './dc.ts';
export { withBranch, withResistance } from './edits.ts';
export { NetworkError } from './errors.ts';
export { Sets } from './islands.ts';
export { network } from './network.ts';
