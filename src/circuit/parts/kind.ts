import type { Setting } from '../circuit.ts';
import type { Farads, Henries, Ohms } from '../units.ts';
import type { LugName, Part, PartId } from './part.ts';

/** What stands between two points of a part. Ideal contacts have no resistance of their own. */
export type BranchWhat =
  | { readonly type: 'contact' }
  | { readonly type: 'resistance'; readonly ohms: Ohms; readonly value: PartId }
  | {
      readonly type: 'capacitance';
      readonly farads: Farads;
      /** Share of its own reactance that is loss. Nothing of it shows to direct current. */
      readonly lossTangent: number;
      readonly value: PartId;
    }
  | {
      readonly type: 'winding';
      readonly ohms: Ohms;
      readonly henries: Henries;
      readonly selfFarads: Farads;
      /** Losses in magnets, plates and turns, as a resistance across the inductance alone. */
      readonly coreOhms: Ohms;
      readonly value: PartId;
    };

/** A place inside a part where current passes. `name` makes the site `part:name`. */
export interface Branch {
  readonly name: string;
  /** Lug names, or the name of a point inside the part. */
  readonly a: string;
  readonly b: string;
  readonly what: BranchWhat;
  /** False where a switch holds it open in this setting. */
  readonly closed: boolean;
}

/** What a new kind of part must supply. See README.md of this folder. */
export interface PartKindSpec<P extends Part> {
  lugs(part: P): readonly LugName[];
  /** The same branches in the same order in every setting. */
  branches(part: P, setting: Setting): readonly Branch[];
  /** Throws CircuitError when a value is out of range. */
  check(part: P): void;
}
