import type { Assessment } from '../../diagnosis/assessment.ts';
import type { Work } from '../../flows/index.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { Say } from '../hunt-actor.ts';
import { Screen } from '../pieces/screen.tsx';
import { Suspects } from '../pieces/suspects.tsx';

interface NothingLeftProps {
  readonly strip: preact.ComponentChildren;
  readonly work: Work;
  readonly assessment: Assessment | null;
  readonly say: Say;
}

/** No reading in reach tells more, and no verdict stands. */
export const NothingLeft = ({ strip, work, assessment, say }: NothingLeftProps) => (
  <Screen
    name="nothing-left"
    title={
      work.access === 'closed'
        ? huntWords().openTheGuitarToGoOn
        : huntWords().noReadingInReachTellsMore
    }
    strip={strip}
    acts={
      <>
        <button type="button" class="plain" onClick={() => say({ type: 'CLOSE' })}>
          {huntWords().leaveItHere}
        </button>
        {work.access === 'closed' ? (
          <button type="button" class="main" onClick={() => say({ type: 'OPENED' })}>
            {huntWords().itIsOpen}
          </button>
        ) : (
          <button type="button" class="main" onClick={() => say({ type: 'VOLUNTEER' })}>
            {huntWords().myOwnReading}
          </button>
        )}
      </>
    }
  >
    {work.access === 'closed' && <p>{huntWords().noReadingFromOutsideTells}</p>}
    {work.refused.length > 0 && <p>{huntWords().couldNotBeTaken(work.refused.length)}</p>}
    {work.access === 'closed' && (
      <p>
        <button type="button" class="plain" onClick={() => say({ type: 'VOLUNTEER' })}>
          {huntWords().myOwnReading}
        </button>
      </p>
    )}
    {assessment && (
      <>
        <h2>{huntWords().mostLikelySoFar}</h2>
        <Suspects suspects={assessment.suspects} most={5} />
      </>
    )}
  </Screen>
);
