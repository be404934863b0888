import type { PartKindSpec } from './kind.ts';
import type { Metal } from './part.ts';

/** Strings and bridge, covers, plates, foil, paint: one conductor each. */
export const metal: PartKindSpec<Metal> = {
  lugs: () => ['metal'],
  branches: () => [],
  check: () => {},
};
