import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Warning } from '../checks/warning.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Closing, ClosingEvidence } from '../closing/closing.ts';
import type { Assessment, Evidence, Expectation, Standing } from '../diagnosis/assessment.ts';
import type { Card, CardQuestion } from '../diagnosis/card.ts';
import type { PositionSound } from '../diagnosis/positions.ts';
import type { ChangesQuestion, ReadingChange } from '../diagnosis/reading-changes.ts';
import type { Trial, TrialQuestion } from '../diagnosis/trial.ts';
import type { Drafts } from '../notebook/drafts.ts';
import type { Notebook } from '../notebook/index.ts';
import type {
  PracticeFault,
  PracticeQuestion,
  PracticeReading,
  PracticeStart,
} from '../practice/reading.ts';
import type { Ask, Meter } from '../readings/reading.ts';
import type { PlayedPosition, PositionsQuestion } from '../sorter/positions.ts';
import type { SortEvidence, Sorting } from '../sorter/sort.ts';

/** What the screens need of the world: an engine, a notebook, a clock. Tests hand in their own. */
export interface Ports {
  readonly engine: {
    stand(evidence: Evidence): Promise<Standing>;
    assess(evidence: Evidence): Promise<Assessment>;
    foresee(evidence: Evidence): void;
    expect(question: { circuit: Circuit; meter: Meter; ask: Ask }): Promise<Expectation>;
    card(question: CardQuestion): Promise<Card>;
    close(evidence: ClosingEvidence): Promise<Closing>;
    sort(evidence: SortEvidence): Promise<Sorting>;
    check(circuit: Circuit): Promise<readonly Warning[]>;
    trial(question: TrialQuestion): Promise<Trial>;
    changes(question: ChangesQuestion): Promise<readonly ReadingChange[]>;
    positionSounds(circuit: Circuit): Promise<readonly PositionSound[]>;
    positions(question: PositionsQuestion): Promise<readonly PlayedPosition[]>;
    practiceStart(seed: string): Promise<PracticeStart>;
    practiceReading(question: PracticeQuestion): Promise<PracticeReading>;
    practiceFault(question: Pick<PracticeQuestion, 'seed' | 'repairs'>): Promise<PracticeFault>;
  };
  readonly notebook: Omit<Notebook, 'place' | 'trouble' | 'unsaved' | 'retry' | 'close'>;
  readonly drafts: Drafts;
  /** ISO 8601. */
  now(): string;
  newId(): string;
}

const PortsContext = createContext<Ports | null>(null);
export const PortsProvider = PortsContext.Provider;

export function usePorts(): Ports {
  const ports = useContext(PortsContext);
  if (!ports) throw new Error('No PortsProvider around this screen.');
  return ports;
}
