import type { Part, PartId } from './parts/part.ts';

/** A lug of a part: `neckVolume.3`, `jack.tip`, `selector.A1`. */
export type LugRef = string;
/** One end of a lead where it is joined to a lug: `hot@from` or `hot@to`. The same name is the probe point "bare wire just beyond the joint". */
export type JointId = string;
export type LeadId = string;

/**
 * What a lead is decides which of its ends can be reached and mended:
 * - `wire`: a wire with a soldered joint at each end
 * - `pickup`: a pickup's own lead; its `from` end is inside the pickup, at the coil or plate
 * - `leg`: a leg of a capacitor or resistor; its `from` end is the body of that part
 * - `mount`: contact by mounting (a pot case on a metal plate, foil under a nut); pressed, not soldered
 */
export type LeadKind = 'wire' | 'pickup' | 'leg' | 'mount';

export interface Lead {
  readonly id: LeadId;
  readonly kind: LeadKind;
  readonly from: LugRef;
  readonly to: LugRef;
  /** The colour the person sees, in their words; never from a table. */
  readonly colour?: string;
}

/** Coils and metal that come as one unit. The first coil is the one whose far end is cold in the starting wiring. */
export interface Pickup {
  readonly id: string;
  /** As in a sentence: "bridge pickup". */
  readonly title: string;
  readonly coils: readonly PartId[];
  readonly plate?: PartId;
  readonly cover?: PartId;
  /** Each coil lies under strings of its own, the low ones under the first: what one coil hears the other does not. */
  readonly stringsEach?: true;
}

/** The guitar as intended. Plain data: it can be stored, sent to the worker and compared. */
export interface Circuit {
  readonly id: string;
  /** Generic words: "three single coils, 5-position blade". */
  readonly title: string;
  readonly parts: readonly Part[];
  readonly leads: readonly Lead[];
  readonly pickups: readonly Pickup[];
}

/** How the controls stand while a reading is taken. */
export interface Setting {
  /** Position name of each switch and button. */
  readonly positions: Readonly<Record<PartId, string>>;
  /** Knob figure 0..10 of each pot. */
  readonly knobs: Readonly<Record<PartId, number>>;
  readonly plug: 'in' | 'out';
  /** Joints unsoldered on purpose for this reading. */
  readonly lifted: readonly JointId[];
}
