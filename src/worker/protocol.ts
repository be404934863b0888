import type { Warning } from '../checks/warning.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Closing, ClosingEvidence } from '../closing/closing.ts';
import type { Assessment, Evidence, Expectation, Standing } from '../diagnosis/assessment.ts';
import type { Card, CardQuestion } from '../diagnosis/card.ts';
import type { PositionSound } from '../diagnosis/positions.ts';
import type { ChangesQuestion, ReadingChange } from '../diagnosis/reading-changes.ts';
import type { Trial, TrialQuestion } from '../diagnosis/trial.ts';
import type {
  PracticeFault,
  PracticeQuestion,
  PracticeReading,
  PracticeStart,
} from '../practice/reading.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import type { PlayedPosition, PositionsQuestion } from '../sorter/positions.ts';
import type { SortEvidence, Sorting } from '../sorter/sort.ts';
import type { Tongue } from '../words/tongue.ts';

/** Questions the screen may put to the engine, by name, with what comes back. */
export interface EngineCalls {
  /** What is believed after a reading, before it is known what to read next: soon there. */
  stand: { input: Evidence; output: Standing };
  /** Everything the screen shows after a reading. */
  assess: { input: Evidence; output: Assessment };
  /** Evidence that may be asked about next, so that its answer is there by then. */
  foresee: { input: Evidence; output: null };
  /** What a healthy guitar shows for one ask. */
  expect: { input: { circuit: Circuit; meter: Meter; ask: Ask }; output: Expectation };
  /** What the meter shows all over a healthy guitar. */
  card: { input: CardQuestion; output: Card };
  /** The list of a closing check, and how it stands. */
  close: { input: ClosingEvidence; output: Closing };
  /** What each lead of a pickup on the mat is, and what to read next. */
  sort: { input: SortEvidence; output: Sorting };
  /** What may have been meant otherwise in a wiring that is being drawn. */
  check: { input: Circuit; output: readonly Warning[] };
  /** How two wirings sound beside each other. */
  trial: { input: TrialQuestion; output: Trial };
  /** Which meter readings a changed part changes. */
  changes: { input: ChangesQuestion; output: readonly ReadingChange[] };
  /** Which coils add, fight and cancel hum, position by position. */
  positionSounds: { input: Circuit; output: readonly PositionSound[] };
  /** What each position of a wiring does with pickups whose signs are known. */
  positions: { input: PositionsQuestion; output: readonly PlayedPosition[] };
  /** A made-up guitar to learn on, by its seed. */
  practiceStart: { input: string; output: PracticeStart };
  /** What it shows. */
  practiceReading: { input: PracticeQuestion; output: PracticeReading };
  /** What was hidden in it. */
  practiceFault: {
    input: Pick<PracticeQuestion, 'seed' | 'repairs'>;
    output: PracticeFault;
  };
}
export type EngineCallName = keyof EngineCalls;

export interface EngineRequest<Name extends EngineCallName = EngineCallName> {
  readonly id: number;
  readonly call: Name;
  readonly input: EngineCalls[Name]['input'];
  /** What the sentences of the answer are to be in. */
  readonly tongue: Tongue;
}

export type EngineReply =
  | {
      readonly id: number;
      readonly ok: true;
      readonly output: EngineCalls[EngineCallName]['output'];
    }
  /** `sentence` is fit to show. */
  | { readonly id: number; readonly ok: false; readonly sentence: string };
