import { useEffect, useState } from 'preact/hooks';
import type { JobSummary } from '../../notebook/index.ts';
import { deskWords } from '../../words/en/desk.ts';
import { JobList } from '../pieces/job-list.tsx';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { hrefOf } from '../route.ts';

/** Which guitar is to be checked before it is closed: one on the bench, or another. */
export function CheckDoor() {
  const { notebook } = usePorts();
  const [jobs, setJobs] = useState<readonly JobSummary[] | null>(null);
  const [failure, setFailure] = useState<string | null>(null);
  useEffect(() => {
    notebook
      .list()
      .then(setJobs, (error: unknown) =>
        setFailure(error instanceof Error ? error.message : deskWords().noReasonWasGiven),
      );
  }, [notebook]);
  return (
    <Screen
      name="check"
      title={deskWords().whichGuitar}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'home' })}>
            {deskWords().home}
          </a>
          <a class="main" href={hrefOf({ at: 'new-check' })}>
            {deskWords().anotherGuitar}
          </a>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {deskWords().yourJobsCouldNotBeReadFailure(failure)}
        </p>
      )}
      {jobs?.length === 0 && <p class="soft">{deskWords().noGuitarIsOnTheBenchYet}</p>}
      {jobs && jobs.length > 0 && <JobList jobs={jobs} view="closing" />}
    </Screen>
  );
}
