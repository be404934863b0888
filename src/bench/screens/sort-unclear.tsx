import type { ComponentChildren } from 'preact';
import type { SortContext } from '../../flows/sort.ts';
import { matWords } from '../../words/en/mat.ts';
import { Entry } from '../entry/entry.tsx';
import { AskWords } from '../pieces/ask-words.tsx';
import { Screen } from '../pieces/screen.tsx';
import type { SortSay } from '../sort-actor.ts';

interface SortUnclearProps {
  readonly strip: ComponentChildren;
  readonly context: SortContext;
  readonly say: SortSay;
}

/** A doubtful tap is done again, with more care. */
export function SortUnclear({ strip, context, say }: SortUnclearProps) {
  const { question } = context;
  if (!question) return null;
  return (
    <Screen
      name="sort-unclear"
      title={matWords().doTheSameTapAgain}
      strip={strip}
      acts={
        <>
          <button type="button" class="plain" onClick={() => say({ type: 'CANNOT_REACH' })}>
            {matWords().stillNotClear}
          </button>
          <button type="button" class="plain" onClick={() => say({ type: 'BACK' })}>
            {matWords().back}
          </button>
        </>
      }
    >
      <p>
        <AskWords words={question.askText} />
      </p>
      <ol class="steps">
        <li>{matWords().clipTheProbesOnSoThatNo}</li>
        <li>{matWords().takeAHeavyScrewdriverFlat}</li>
        <li>{matWords().waitUntilTheDisplayRestsAt}</li>
        <li>{matWords().pullItStraightOffFastAndWatch}</li>
      </ol>
      <p class="soft">{matWords().eachCoilStirsItsNeighbour}</p>
      <Entry
        ask={question.ask}
        typed=""
        onType={() => undefined}
        onSeen={(seen) => say({ type: 'ENTER', seen })}
      />
    </Screen>
  );
}
