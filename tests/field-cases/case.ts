import { readFileSync } from 'node:fs';
import type { Ask, Seen } from '../../src/readings/reading.ts';

/** A repair as its owner told it in public: what was read and what it turned out to be. Collected by hand; `inferred` says what was not on the page. */
export interface FieldCase {
  readonly id: string;
  readonly wiring: string;
  readonly nominal_values: string;
  readonly symptom: string;
  readonly readings: readonly {
    readonly where: string;
    readonly control_state: string;
    readonly value_as_stated: string;
    readonly ohms?: number | 'open';
  }[];
  readonly other_tests: string | null;
  readonly resolved_fault: string;
  readonly fault_class: string;
  readonly status: string;
  readonly confidence: string;
  readonly inferred: readonly string[];
  readonly source: string;
}

export const fieldCases: readonly FieldCase[] = JSON.parse(
  readFileSync(new URL('./cases.json', import.meta.url), 'utf8'),
);

/** An ask without its setting, the lever position it was taken in, and what was seen. Knobs stand at 10 unless said. */
export interface Step {
  readonly ask: DistributiveOmit<Ask, 'setting'>;
  readonly position?: string;
  readonly lifted?: readonly string[];
  readonly plug?: 'in';
  readonly knobs?: Readonly<Record<string, number>>;
  readonly seen: Seen;
}
type DistributiveOmit<T, K extends keyof T> = T extends unknown ? Omit<T, K> : never;

/** A case put to the engine from what was heard alone, with the guitar shut. */
export interface EarReplay {
  readonly id: string;
  readonly wiring: string;
  readonly heard: readonly Step[];
  readonly resolved: readonly string[];
  readonly note: string;
}

/** How a case is put to the engine: which starting wiring stands for the guitar, and what was told. */
export interface Replay {
  readonly id: string;
  readonly wiring: string;
  /** Printed values of this guitar where the case states them; ohms. */
  readonly values: Readonly<Record<string, number>>;
  readonly steps: readonly Step[];
  /** Keys of the repairs that would have mended it. */
  readonly resolved: readonly string[];
  /** What the mapping takes for granted. */
  readonly note: string;
  /** Also shown after so many steps. */
  readonly after?: number;
}
