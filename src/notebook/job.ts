import type { Circuit } from '../circuit/circuit.ts';
import type { PartId } from '../circuit/parts/part.ts';
import type { Access } from '../diagnosis/assessment.ts';
import type { Ask, Meter, Reading } from '../readings/reading.ts';

/** Version of the job file. Raise it with a step in `restore.ts`. */
export const JOB_VERSION = 2;

export interface Repair {
  /** Key of the repair as the assessment named it. */
  readonly repair: string;
  readonly title: string;
  readonly at: string;
}

/** Where a part stands in the drawing of the wiring, in units of the drawing, and how far it is turned, clockwise in degrees. */
export interface DrawnPlace {
  readonly x: number;
  readonly y: number;
  readonly turn: 0 | 90 | 180 | 270;
}

/** A reading that names something which the wiring no longer has: kept, and not used. */
export interface SetAside {
  readonly reading: Reading;
  /** What was read and seen, in words of the wiring that it was taken on. */
  readonly words: string;
}

/** A closing check as the person did it: how far the guitar was put together, and when. Its readings are those of the job since the check before it. */
export interface JobCheck {
  readonly stage: 'closed' | 'open' | 'mat';
  readonly startedAt: string;
  readonly endedAt?: string;
  /** Room temperature as told, in degrees Celsius. */
  readonly celsius?: number;
}

/** The guitar that a job is on. Jobs whose guitars have the same id are jobs on one guitar. */
export interface JobGuitar {
  readonly id: string;
  /** The person's own name for it. */
  readonly title: string;
}

/** The closing check of an earlier job on the same guitar, with its readings, to be compared with. */
export interface LastCheck {
  readonly check: JobCheck;
  readonly readings: readonly Reading[];
}

/** One job on a guitar: what was intended, what was done and seen. Conclusions are never stored. */
export interface Job {
  readonly format: 'lugwise-job';
  readonly version: typeof JOB_VERSION;
  readonly id: string;
  /** The person's own name for it. */
  readonly title: string;
  readonly guitar: JobGuitar;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly circuit: Circuit;
  /** Where the person put the parts in the drawing; parts that are not named stand by themselves. */
  readonly places?: Readonly<Record<PartId, DrawnPlace>>;
  readonly meter: Meter;
  readonly access: Access;
  readonly readings: readonly Reading[];
  /** Readings of the wiring as it was before it was drawn anew; they come back where the wiring has their lugs again. */
  readonly setAside?: readonly SetAside[];
  readonly refused: readonly Ask[];
  /** When each of `refused` was refused, in the same order, so that undo knows which act was the last. ISO 8601. */
  readonly refusedAt?: readonly string[];
  readonly repairs: readonly Repair[];
  /** When the person said that the cautions are read; absent before the first meter reading. ISO 8601. */
  readonly cautionsReadAt?: string;
  /** Set when the person closed the job. */
  readonly closedAt?: string;
  /** Closing checks, oldest first; the last may be under way. */
  readonly checks?: readonly JobCheck[];
  /** A made-up guitar to learn on: all that is hidden in it follows from the seed. */
  readonly practice?: { readonly seed: string };
  /** From an earlier job on this guitar. */
  readonly lastCheck?: LastCheck;
}
