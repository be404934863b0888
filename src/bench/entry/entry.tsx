import type { Ask, Seen } from '../../readings/reading.ts';
import { Choices, choicesFor } from './choices.tsx';
import { FaradsPad } from './farads-pad.tsx';
import { OhmsPad } from './ohms-pad.tsx';
import { TurnPad } from './turn-pad.tsx';

interface EntryProps {
  readonly ask: Ask;
  readonly typed: string;
  onType(typed: string): void;
  onSeen(seen: Seen): void;
}

/** The keys that fit the kind of reading. */
export function Entry({ ask, typed, onType, onSeen }: EntryProps) {
  switch (ask.kind) {
    case 'ohms':
      return (
        <OhmsPad typed={typed} onType={onType} onOhms={(ohms) => onSeen({ kind: 'ohms', ohms })} />
      );
    case 'turn':
      return <TurnPad typed={typed} onType={onType} onTurn={onSeen} />;
    case 'farads':
      return (
        <FaradsPad
          typed={typed}
          onType={onType}
          onFarads={(farads) => onSeen({ kind: 'farads', farads })}
        />
      );
    case 'hum':
      // Measured where the controls are known: see the asking screen.
      return null;
    default:
      return <Choices choices={choicesFor(ask.kind)} onSeen={onSeen} />;
  }
}
