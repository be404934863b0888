import type { JointId, LugRef } from './circuit.ts';
import type { PartId } from './parts/part.ts';
import type { Ohms } from './units.ts';

/**
 * A place in the wiring that can fail, by name:
 * - `hot@from`, `hot@to`: the joint at an end of lead `hot`; `hot`: the wire between them
 * - `selector:A1-AC`: a switch contact
 * - `bridgeVolume:lower`, `:upper`, `:wiper`: a pot's track from lug 1 to the wiper, from the wiper to lug 3, and the wiper's contact to lug 2
 * - `bridgeCoil:winding`, `toneCap:body`, `resistor1:body`
 */
export type SiteId = string;
/** Stands for every wire of the guitar where something is moved. */
export const EVERYWHERE = 'everywhere';
/** A point a probe can stand on: a lug or a lead's bare end at its joint. */
export type NodeName = LugRef | JointId;

/** One change to the intended wiring. A fault is one to four of them. */
export type Edit =
  /** Nothing passes the site any more. */
  | { readonly op: 'open'; readonly site: SiteId }
  /** A resistance stands where a joint, wire or contact should be. */
  | { readonly op: 'resist'; readonly site: SiteId; readonly ohms: Ohms }
  /** Two points joined that should not be (solder, strand, leakage). */
  | { readonly op: 'bridge'; readonly a: NodeName; readonly b: NodeName; readonly ohms: Ohms }
  /** A lead's end is soldered on another lug. */
  | { readonly op: 'land'; readonly joint: JointId; readonly lug: LugRef }
  /** Whatever is soldered on the first lug sits on the second, and the other way round. */
  | { readonly op: 'exchange'; readonly lugs: readonly [LugRef, LugRef] }
  /** A part's value is off by a factor; a coil's inductance goes with its resistance. What stands in series with the part is not scaled. */
  | { readonly op: 'scale'; readonly part: PartId; readonly factor: number }
  /** A switch stays in one position whatever its lever says. */
  | { readonly op: 'stick'; readonly part: PartId; readonly position: string }
  /** A coil's magnet is the other way up. */
  | { readonly op: 'turn-magnet'; readonly coil: PartId }
  /** A site that conducts at rest and opens when moved. No effect on a steady reading. */
  | { readonly op: 'intermittent'; readonly site: SiteId }
  /** A worn track: the wiper jumps while it moves. No effect on a steady reading. */
  | { readonly op: 'worn'; readonly part: PartId };
