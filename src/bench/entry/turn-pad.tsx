import { useState } from 'preact/hooks';
import type { SeenOf } from '../../readings/reading.ts';
import { entryWords } from '../../words/en/entry.ts';
import { BigKey } from './choices.tsx';
import { OhmsPad } from './ohms-pad.tsx';

type Turn = SeenOf<'turn'>;
/** How a figure moves, in the words of the keys. */
export const hows: readonly { how: Turn['how']; says: string; note: string }[] = [
  {
    how: 'smooth',
    get says() {
      return entryWords().smooth;
    },
    get note() {
      return entryWords().itGlidesAllTheWay;
    },
  },
  {
    how: 'jumps',
    get says() {
      return entryWords().jumps;
    },
    get note() {
      return entryWords().itSkipsOrDropsOut;
    },
  },
  {
    how: 'stuck',
    get says() {
      return entryWords().stuck;
    },
    get note() {
      return entryWords().itDoesNotChange;
    },
  },
];

interface TurnPadProps {
  readonly typed: string;
  onType(typed: string): void;
  onTurn(seen: Turn): void;
}

/** First how it moved; then the highest number on the way, which may be left out. */
export function TurnPad({ typed, onType, onTurn }: TurnPadProps) {
  const [how, setHow] = useState<Turn['how'] | null>(null);
  if (how === null)
    return (
      <div class="choices choices-3">
        {hows.map((one) => (
          <BigKey key={one.how} says={one.says} note={one.note} onPress={() => setHow(one.how)} />
        ))}
      </div>
    );
  return (
    <div class="stack">
      <div class="row-between">
        <p class="sentence">{entryWords().theHighestNumberOnTheWay}</p>
        <button type="button" class="quiet" onClick={() => onTurn({ kind: 'turn', how })}>
          {entryWords().notNoted}
        </button>
      </div>
      <OhmsPad
        label={entryWords().highestNumberOnTheWayInOhm}
        typed={typed}
        onType={onType}
        onOhms={(peak) => onTurn({ kind: 'turn', how, peak })}
      />
    </div>
  );
}
