import type { Celsius, Farads, Henries, Ohms } from '../units.ts';

export type PartId = string;
export type LugName = string;

/** A value as printed on the part, how far it may be off, and what was measured out of circuit if it was. */
export interface Value<Q extends number> {
  readonly nominal: Q;
  /** +- share within which about 95 % of such parts lie (two standard deviations). */
  readonly tolerance: number;
  readonly measured?: Q;
  /** Instead of `measured` where the meter showed over-range out of circuit: the part is broken. */
  readonly measuredOpen?: true;
  /** How warm the part was when it was measured: copper's ohms go with it. */
  readonly measuredAt?: Celsius;
}

interface PartBase {
  readonly id: PartId;
  /** As in a sentence: "bridge volume". */
  readonly title: string;
}

export interface Coil extends PartBase {
  readonly kind: 'coil';
  readonly ohms: Value<Ohms>;
  readonly henries: Henries;
  readonly selfFarads: Farads;
  /** Winding sense from start to finish, seen from the top: +1 or -1. Hum has this sign. */
  readonly winding: 1 | -1;
  /** Polarity of the magnet face under the strings: +1 north, -1 south. A tap has the sign winding x magnet. */
  readonly magnet: 1 | -1;
  /** How the coil is told from its neighbour by eye; `single` where it is alone. */
  readonly place: 'single' | 'screw' | 'slug' | 'upper' | 'lower';
  /** Whether the coil's own ends can be touched once the pickup is out of its hole. */
  readonly ends: 'sealed' | 'eyelets';
}

/**
 * `midShare`: share of the track between lug 1 and the wiper at half turn of an audio taper. `noLoad`: at 10 the wiper stands on an
 * insulated piece of the track and is joined to nothing. `leftHanded`: its figures run the other way, 10 is at the counter-clockwise
 * end; the lugs are counted as on any pot.
 */
export interface Pot extends PartBase {
  readonly kind: 'pot';
  readonly ohms: Value<Ohms>;
  readonly taper: 'linear' | 'audio' | 'reverse-audio';
  readonly midShare: number;
  readonly role: 'volume' | 'tone' | 'other';
  readonly noLoad?: boolean;
  readonly leftHanded?: boolean;
}

export interface SwitchPosition {
  readonly name: string;
  /** As in a sentence: "bridge and middle". */
  readonly title: string;
  readonly joins: readonly (readonly [LugName, LugName])[];
}

export interface Switch extends PartBase {
  readonly kind: 'switch';
  readonly style:
    | 'toggle'
    | 'blade'
    | 'mini-toggle'
    | 'push-pull'
    | 'push-push'
    | 'rotary'
    | 'slide'
    | 'button';
  readonly positions: readonly SwitchPosition[];
  /** Rows of lugs as seen from the soldering side. */
  readonly rows: readonly (readonly LugName[])[];
  /** The pot whose shaft carries this switch. */
  readonly carrier?: PartId;
  /** A metal body with a lug to ground. */
  readonly frame: boolean;
}

export interface Capacitor extends PartBase {
  readonly kind: 'capacitor';
  readonly farads: Value<Farads>;
}

export interface Resistor extends PartBase {
  readonly kind: 'resistor';
  readonly ohms: Value<Ohms>;
}

export interface Jack extends PartBase {
  readonly kind: 'jack';
  readonly ring: boolean;
}

/** Metal that should be grounded. `paint` conducts in ohms to kilohms rather than with a beep. */
export interface Metal extends PartBase {
  readonly kind: 'metal';
  readonly role: 'strings' | 'plate' | 'cover' | 'foil' | 'paint' | 'control-plate';
  /** Whether a probe reaches it with the guitar closed. */
  readonly outside: boolean;
}

/** Leads twisted or soldered to each other in the air, taped over. One lug. */
export interface Splice extends PartBase {
  readonly kind: 'splice';
}

export type Part = Coil | Pot | Switch | Capacitor | Resistor | Jack | Metal | Splice;
export type PartKind = Part['kind'];
export type PartOf<K extends PartKind> = Extract<Part, { kind: K }>;
