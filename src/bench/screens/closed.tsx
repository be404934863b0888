import type { Job } from '../../notebook/job.ts';
import { huntWords } from '../../words/en/hunt.ts';
import type { Say } from '../hunt-actor.ts';
import { InstallHint } from '../pieces/install-hint.tsx';
import { Screen } from '../pieces/screen.tsx';
import { PracticeEnd } from '../practice/practice-end.tsx';
import { hrefOf } from '../route.ts';

interface ClosedProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly say: Say;
}

/** Whether anything was read since the last repair. */
const checked = ({ readings, repairs }: Job): boolean =>
  readings.some(({ round }) => round === repairs.length);

export const Closed = ({ strip, job, say }: ClosedProps) => (
  <Screen
    name="closed"
    title={huntWords().closed}
    strip={strip}
    acts={
      <>
        <button type="button" class="plain" onClick={() => say({ type: 'REOPEN' })}>
          {huntWords().takeItUpAgain}
        </button>
        <a class="main" href={hrefOf({ at: 'home' })}>
          {huntWords().home}
        </a>
      </>
    }
  >
    <p>{huntWords().onRecord(job.readings.length, job.repairs.length)}</p>
    {job.practice && <PracticeEnd job={job} practice={job.practice} />}
    {job.repairs.length > 0 && (
      <ul class="steps">
        {job.repairs.map(({ title, at }) => (
          <li key={at}>{title}</li>
        ))}
      </ul>
    )}
    {job.repairs.length > 0 && !checked(job) && (
      <p class="sentence">{huntWords().afterTheLastRepairNoReading}</p>
    )}
    <InstallHint />
    <p class="row">
      <a href={hrefOf({ at: 'job', id: job.id, view: 'record' })}>{huntWords().seeTheRecord}</a>
      {!job.practice && (
        <a href={hrefOf({ at: 'job', id: job.id, view: job.checks?.length ? 'proof' : 'closing' })}>
          {job.checks?.length ? huntWords().theClosingCheck : huntWords().checkItBeforeClosing}
        </a>
      )}
    </p>
  </Screen>
);
