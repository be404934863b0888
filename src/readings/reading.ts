import type { JointId, LugRef, Setting } from '../circuit/circuit.ts';
import type { NodeName, SiteId } from '../circuit/edit.ts';
import type { PartId } from '../circuit/parts/part.ts';
import type { Celsius, Farads, Ohms } from '../circuit/units.ts';

interface AskBase {
  readonly setting: Setting;
}
interface AskAtTwoPoints extends AskBase {
  readonly red: NodeName;
  readonly black: NodeName;
}

/** What the person is asked to do. Plain data; the setting says how the controls stand. */
export type Ask =
  | ({ readonly kind: 'ohms' } & AskAtTwoPoints)
  | ({ readonly kind: 'beep' } & AskAtTwoPoints)
  /** Ohms while the knob of `pot` goes from 0 to 10. */
  | ({ readonly kind: 'turn'; readonly pot: PartId } & AskAtTwoPoints)
  /** A steady reading while the wire or joint at `site` is moved, every wire that ends on the part `site`, or all wires (`everywhere`). */
  | ({ readonly kind: 'flex'; readonly site: SiteId | PartId } & AskAtTwoPoints)
  /** DC millivolts while steel is pulled off the top of `coil`. */
  | ({ readonly kind: 'tap'; readonly coil: PartId } & AskAtTwoPoints)
  /** Capacitance of a part with one leg lifted. */
  | ({ readonly kind: 'farads'; readonly part: PartId } & AskAtTwoPoints)
  | ({ readonly kind: 'listen' } & AskBase)
  /** Hum while a hand touches `metal`. */
  | ({ readonly kind: 'touch'; readonly metal: LugRef } & AskBase)
  /** Hum by the microphone, a hand on the strings, in one setting against another: gain and room are then the same for both. */
  | ({ readonly kind: 'hum'; readonly against: Setting } & AskBase)
  /** Eyes on a joint or part. */
  | ({ readonly kind: 'look'; readonly at: JointId | PartId } & AskBase)
  /** Compass or known magnet over a coil's top. */
  | ({ readonly kind: 'pole'; readonly coil: PartId } & AskBase);

export type ReadingKindName = Ask['kind'];
export type AskOf<K extends ReadingKindName> = Extract<Ask, { kind: K }>;

export type Heard = 'normal' | 'silent' | 'weak' | 'thin' | 'dull' | 'hum' | 'crackle';

/** What the person did see or hear: never what was concluded from it. */
export type Seen =
  | { readonly kind: 'ohms'; readonly ohms: Ohms | 'open' }
  | { readonly kind: 'beep'; readonly beeps: boolean }
  | {
      readonly kind: 'turn';
      readonly how: 'smooth' | 'jumps' | 'stuck';
      readonly peak?: Ohms | 'open';
    }
  | { readonly kind: 'flex'; readonly how: 'steady' | 'jumps' }
  | { readonly kind: 'tap'; readonly swing: 'plus' | 'nothing' | 'minus' }
  | { readonly kind: 'farads'; readonly farads: Farads | 'open' | 'short' }
  | { readonly kind: 'listen'; readonly heard: Heard }
  | { readonly kind: 'touch'; readonly hum: 'up' | 'down' | 'same' }
  /** Louder than in the other setting by so many decibels of power. */
  | { readonly kind: 'hum'; readonly decibels: number }
  | {
      readonly kind: 'look';
      readonly how: 'good' | 'dull' | 'loose' | 'burnt' | 'bridged' | 'elsewhere';
    }
  | { readonly kind: 'pole'; readonly pole: 'north' | 'south' | 'none' };
export type SeenOf<K extends ReadingKindName> = Extract<Seen, { kind: K }>;

/** A reading as stored. `id` is unique within its job, `at` is ISO 8601, `round` counts the repairs made before it. */
export interface Reading {
  readonly id: string;
  readonly ask: Ask;
  readonly seen: Seen;
  readonly at: string;
  readonly round: number;
}

/** What is known of the person's meter. */
export interface Meter {
  /** +- share of reading, two standard deviations. */
  readonly accuracy: number;
  /** What touching the probes together shows; two standard deviations reach about as far again. */
  readonly leads: Ohms;
  /** The largest resistance it can show; above it is the over-range sign. */
  readonly limit: Ohms;
  /** How warm the room is in which it is used, where that is known: copper's ohms go with it. */
  readonly room?: Celsius;
}
