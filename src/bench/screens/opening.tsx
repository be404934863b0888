import { needsOpenGuitar, type Question, type Work } from '../../flows/index.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { Say } from '../hunt-actor.ts';
import { AskWords } from '../pieces/ask-words.tsx';
import { Screen } from '../pieces/screen.tsx';
import { questionWords } from '../words.ts';

interface OpeningProps {
  readonly strip: preact.ComponentChildren;
  readonly work: Work;
  readonly question: Question;
  readonly say: Say;
}

/** The jack has told what it can: the next reading is inside, or the ones left outside tell little. */
export function Opening({ strip, work, question, say }: OpeningProps) {
  const inside = needsOpenGuitar(work.circuit, question.ask);
  return (
    <Screen
      name="opening"
      title={huntWords().nowOpenTheGuitar}
      strip={strip}
      acts={
        <>
          {inside ? (
            <button type="button" class="plain" onClick={() => say({ type: 'CANNOT_REACH' })}>
              {huntWords().askAnother}
            </button>
          ) : (
            <button type="button" class="plain" onClick={() => say({ type: 'STAY_CLOSED' })}>
              {huntWords().keepItClosed}
            </button>
          )}
          <button type="button" class="main" onClick={() => say({ type: 'OPENED' })}>
            {huntWords().itIsOpen}
          </button>
        </>
      }
    >
      {inside ? (
        <>
          <p>{huntWords().theNextReadingThatTellsMost}</p>
          <p>
            <strong>
              <AskWords words={questionWords(work.circuit, question)} />
            </strong>
          </p>
          <p class="soft">{question.why}</p>
        </>
      ) : (
        <p>{huntWords().theReadingsLeftOutsideTell}</p>
      )}
      <ul class="cautions">
        <li>{huntWords().keepTheGuitarUnplugged}</li>
        <li>{huntWords().layAClothUnderItAndKeep}</li>
        <li>{huntWords().liftPlatesSlowlyShortWires}</li>
      </ul>
    </Screen>
  );
}
