import type { Job } from '../../notebook/job.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { Says } from '../hunt-actor.ts';
import { SaveFile } from '../pieces/save-file.tsx';
import { Screen } from '../pieces/screen.tsx';

interface FailedProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly sentence: string;
  readonly say: Says<'RETRY' | 'GO_ON_UNSAVED'>;
}

/** The engine could not work with the job as it stands. */
export const EngineFailed = ({ strip, job, sentence, say }: FailedProps) => (
  <Screen
    name="engine-failed"
    title={huntWords().theReadingsCouldNotBeWorked}
    strip={strip}
    acts={
      <button type="button" class="main" onClick={() => say({ type: 'RETRY' })}>
        {huntWords().tryAgain}
      </button>
    }
  >
    <p role="alert">{sentence}</p>
    <p>{huntWords().everythingYouEnteredIsStored}</p>
    <SaveFile job={job} />
  </Screen>
);

/** The phone did not take the last act. */
export const StorageFailed = ({ strip, job, sentence, say }: FailedProps) => (
  <Screen
    name="storage-failed"
    title={huntWords().notStoredYet}
    strip={strip}
    acts={
      <>
        <button type="button" class="plain" onClick={() => say({ type: 'GO_ON_UNSAVED' })}>
          {huntWords().goOnAnyway}
        </button>
        <button type="button" class="main" onClick={() => say({ type: 'RETRY' })}>
          {huntWords().tryAgain}
        </button>
      </>
    }
  >
    <p role="alert">{sentence}</p>
    <p>{huntWords().yourEntryIsStillHereButWould}</p>
    <SaveFile job={job} />
  </Screen>
);
