import type { Ask, Seen } from '../../readings/reading.ts';
import { Entry } from '../entry/entry.tsx';
import { preferences } from '../preferences.ts';
import { ByEar } from './by-ear.tsx';

interface AnsweringProps {
  readonly ask: Ask;
  /** Another one for every question, also where the same is asked once more. */
  readonly question: string;
  readonly typed: string;
  onType(typed: string): void;
  onSeen(seen: Seen): void;
}

/** The keys of a reading, and the ear beside those of a beep where the person wants to be heard. */
export const Answering = ({ ask, question, typed, onType, onSeen }: AnsweringProps) => (
  <>
    {ask.kind === 'beep' && preferences.value.hears && (
      <ByEar key={`ear ${question}`} onAnswer={(beeps) => onSeen({ kind: 'beep', beeps })} />
    )}
    <Entry key={question} ask={ask} typed={typed} onType={onType} onSeen={onSeen} />
  </>
);
