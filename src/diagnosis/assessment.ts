import type { Circuit } from '../circuit/circuit.ts';
import type { SiteId } from '../circuit/edit.ts';
import type { PartId } from '../circuit/parts/part.ts';
import type { Bits, Ohms, Probability, Seconds } from '../circuit/units.ts';
import type { Ask, Meter, Reading } from '../readings/reading.ts';

/** How far the guitar is open: jack only, or the cavity with every lug in reach. */
export type Access = 'closed' | 'open';

/** All that the engine is told. It keeps nothing between calls: the same evidence gives the same assessment. */
export interface Evidence {
  readonly circuit: Circuit;
  readonly meter: Meter;
  readonly access: Access;
  readonly readings: readonly Reading[];
  /** Asks the person could not follow; not asked again. */
  readonly refused: readonly Ask[];
  /** Repairs made so far, oldest first; readings with `round` n were taken after n of them. */
  readonly repairs: readonly string[];
  /** Beeps are heard by the phone: asked where they tell as much for less trouble. */
  readonly byEar?: boolean;
}

export interface SuspectedFault {
  readonly id: string;
  /** "the joint of the hot lead on lug 3 of the bridge volume is open". */
  readonly sentence: string;
  readonly probability: Probability;
  readonly sites: readonly (SiteId | PartId)[];
}

/** Suspects that the same act would mend. `repair` is a stable key; `healthy` and `something else` are two of them. */
export interface SuspectedRepair {
  readonly repair: string;
  /** The act in a few words: "Remake the hot lead of the bridge pickup". */
  readonly title: string;
  readonly probability: Probability;
  /** Largest first. */
  readonly faults: readonly SuspectedFault[];
}

/** What a reading of this ask shows if the guitar is as intended. */
export interface Expectation {
  /** "7.4 k", "open (OL)", "below 1 ohm", "beeps", "swings to plus". */
  readonly text: string;
  /** Band of 95 % where the answer is ohms. */
  readonly low?: Ohms;
  readonly high?: Ohms;
}

export interface ReadingReport {
  readonly id: string;
  readonly ask: Ask;
  readonly askText: string;
  readonly expected: Expectation;
  readonly measuredText: string;
  readonly fits: 'fits' | 'off' | 'doubtful';
  /** Not a reading of the job: what was measured of this part out of circuit. */
  readonly apart?: PartId;
  /** From an earlier round, and not counted any more because a repair may have changed it. */
  readonly stale: boolean;
}

export interface NextReading {
  readonly ask: Ask;
  readonly askText: string;
  readonly expected: Expectation;
  /** One sentence: what it tells apart. */
  readonly why: string;
  readonly worthBits: Bits;
  readonly effortSeconds: Seconds;
}

/** One repair a verdict names. */
export interface RepairOption {
  readonly repair: string;
  readonly title: string;
  readonly sentence: string;
  readonly steps: readonly string[];
  readonly proof: string;
  readonly probability: Probability;
}

/** A reading, and the repairs that would have been named without it. */
export interface RuledOut {
  readonly reading: string;
  /** Titles of the repairs, likeliest before any reading first. */
  readonly titles: readonly string[];
}

export interface Verdict {
  readonly kind: 'repair' | 'healthy' | 'not-ruled-out' | 'cannot-tell-apart' | 'outside';
  /** One sentence that names the place. */
  readonly sentence: string;
  readonly probability: Probability;
  /** Keys of the repairs it names, most likely first; empty for healthy and outside. */
  readonly repairs: readonly string[];
  /** What to do, step by step. */
  readonly steps: readonly string[];
  /** Each repair it names, most likely first: one for `repair`, several for `cannot-tell-apart`, none else. */
  readonly options: readonly RepairOption[];
  /** How to tell that it worked. */
  readonly proof: string;
  /** Ids of readings that speak for it and against it. */
  readonly grounds: readonly string[];
  readonly against: readonly string[];
  /** For `repair`: what else would explain the grounds, under the reading that rules it out. */
  readonly ruledOut?: readonly RuledOut[];
  /** For `cannot-tell-apart`: the act that would split the group. */
  readonly split?: string;
  readonly sites: readonly (SiteId | PartId)[];
}

export interface LearnedValue {
  readonly part: PartId;
  readonly title: string;
  readonly nominal: Ohms;
  readonly estimate: Ohms;
  /** Two standard deviations, as a share. */
  readonly spread: number;
}

/** What is believed, before it is known what follows from it. */
export interface Standing {
  /** Largest first; probabilities sum to 1. */
  readonly suspects: readonly SuspectedRepair[];
  readonly readings: readonly ReadingReport[];
  /** Share of suspicion per site and part, for the drawing. */
  readonly suspicion: Readonly<Record<SiteId | PartId, number>>;
  /** How many repairs still have more than one chance in a hundred. */
  readonly liveSuspects: number;
}

export interface Assessment extends Standing {
  /** Best first; empty when nothing is left to learn or the verdict stands. */
  readonly next: readonly NextReading[];
  readonly verdict: Verdict | null;
  readonly learned: readonly LearnedValue[];
  /** Asks to repeat after a repair: those of the last round that did not fit. */
  readonly recheck: readonly NextReading[];
}
