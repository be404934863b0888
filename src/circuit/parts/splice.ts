import type { PartKindSpec } from './kind.ts';
import type { Splice } from './part.ts';

export const splice: PartKindSpec<Splice> = {
  lugs: () => ['joint'],
  branches: () => [],
  check: () => {},
};
