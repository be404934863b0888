import type { PartKindSpec } from './kind.ts';
import type { Jack } from './part.ts';

/** Tip is hot, sleeve is ground. With the guitar closed its lugs are reached through a plug. */
export const jack: PartKindSpec<Jack> = {
  lugs: (part) => (part.ring ? ['tip', 'ring', 'sleeve'] : ['tip', 'sleeve']),
  branches: () => [],
  check: () => {},
};
