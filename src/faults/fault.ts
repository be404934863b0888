import type { Circuit } from '../circuit/circuit.ts';
import type { Edit, SiteId } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';

/** The act that mends it. Faults with the same `key` are mended by the same act. */
export interface Remedy {
  readonly key: string;
  /** The act in a few words, as a heading. */
  readonly title: string;
  readonly steps: readonly string[];
  /** How to tell that it worked. */
  readonly proof: string;
  /** A part is taken out and another put in: making sure first costs less than being wrong. */
  readonly replaces?: true;
}

/** One size a fault may have. */
export interface Variant {
  readonly edits: readonly Edit[];
  /** Share of this fault's prior. */
  readonly share: number;
  /** Where the fault's own resistance is only known roughly: the site, or the first of its `bridge` edits, and the deviation of its ln. */
  readonly loose?: { readonly site: SiteId | 'first bridge'; readonly deviation: number };
}

export interface Fault {
  readonly id: string;
  readonly family: string;
  /** "the wire from ... is broken", lower case, no full stop. */
  readonly sentence: string;
  readonly sites: readonly (SiteId | PartId)[];
  readonly remedy: Remedy;
  /** Prior relative to the other faults of all families; only ratios count. */
  readonly weight: number;
  readonly variants: readonly Variant[];
}

/** What a family of faults must supply. See README.md of this folder. */
export interface FaultFamily {
  readonly name: string;
  /** Share of this family among single faults, shared out evenly over its members by their own weights. */
  readonly share: number;
  /** Why that share. */
  readonly reason: string;
  list(circuit: Circuit, layout: Layout): readonly Fault[];
}
