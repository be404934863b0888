import type { Circuit } from '../circuit/circuit.ts';
import type { Stage } from '../closing/stage.ts';
import type { Access, Evidence } from '../diagnosis/assessment.ts';
import type { Ask, Meter, Reading } from '../readings/reading.ts';

/** A repair as the person did it. `at` is ISO 8601. */
export interface DoneRepair {
  readonly repair: string;
  readonly title: string;
  readonly at: string;
}

/**
 * What a hunt knows of the guitar on the bench: what was intended, what was done and seen. Whoever
 * keeps it may hold more in the same object; every act below hands that back untouched.
 */
export interface Work {
  readonly circuit: Circuit;
  readonly meter: Meter;
  readonly access: Access;
  readonly readings: readonly Reading[];
  readonly refused: readonly Ask[];
  /** When each of `refused` was refused, in the same order. ISO 8601. */
  readonly refusedAt?: readonly string[];
  readonly repairs: readonly DoneRepair[];
  readonly cautionsReadAt?: string;
  readonly closedAt?: string;
  /** Closing checks, oldest first; the last may be under way. */
  readonly checks?: readonly DoneCheck[];
  /** The closing check of an earlier job on this guitar, to be compared with. */
  readonly lastCheck?: { readonly readings: readonly Reading[] };
  readonly changedAt: string;
}

/** One closing check as the person did it. Times are ISO 8601. */
export interface DoneCheck {
  readonly stage: Stage;
  readonly startedAt: string;
  readonly endedAt?: string;
  /** Room temperature as told, in degrees Celsius. */
  readonly celsius?: number;
}

/** The work as the engine is told of it. */
export const evidenceOf = (work: Work): Evidence => ({
  circuit: work.circuit,
  meter: work.meter,
  access: work.access,
  readings: work.readings,
  refused: work.refused,
  repairs: work.repairs.map(({ repair }) => repair),
});
