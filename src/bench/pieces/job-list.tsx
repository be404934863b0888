import { useState } from 'preact/hooks';
import type { JobSummary } from '../../notebook/index.ts';
import { called } from '../../words/called.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { usePorts } from '../ports.ts';
import { hrefOf, type JobView } from '../route.ts';
import { saveText } from './save-text.ts';

interface JobListProps {
  readonly jobs: readonly JobSummary[];
  /** Where a job opens. */
  readonly view: JobView;
  /** After a damaged job was removed. */
  onRemoved?(): void;
}

/** Jobs by name, each a way into it. */
export const JobList = ({ jobs, view, onRemoved = () => undefined }: JobListProps) => (
  <ul class="list">
    {jobs.map((job) => (
      <li key={job.id}>
        {job.damaged ? (
          <DamagedJob job={job} sentence={job.damaged} onRemoved={onRemoved} />
        ) : (
          <a class="list-row" href={hrefOf({ at: 'job', id: job.id, view })}>
            <span class="says">{job.title || pieceWords().aJob}</span>
            <span class="note">
              {pieceWords()[job.closedAt === undefined ? 'openJobLine' : 'closedJobLine'](
                called(job.wiring),
                job.readings,
                dateText(job.changedAt),
              )}
            </span>
          </a>
        )}
      </li>
    ))}
  </ul>
);

/** What cannot be opened can still be carried away. */
function DamagedJob({
  job,
  sentence,
  onRemoved,
}: {
  readonly job: JobSummary;
  readonly sentence: string;
  onRemoved(): void;
}) {
  const { notebook } = usePorts();
  const [failure, setFailure] = useState<string | null>(null);
  const save = async () => {
    try {
      saveText(await notebook.rescue(job.id), job);
    } catch (error) {
      setFailure(failureOf(error, pieceWords().itCouldNotBeReadAtAll));
    }
  };
  const remove = () =>
    notebook.remove(job.id).then(onRemoved, (error: unknown) => setFailure(failureOf(error)));
  return (
    <div class="list-row">
      <span class="says">{job.title || pieceWords().aJob}</span>
      <span class="note">{failure ?? sentence}</span>
      <button type="button" class="quiet" onClick={save}>
        {pieceWords().saveAsAFile}
      </button>
      <button type="button" class="quiet" onClick={remove}>
        {pieceWords().remove}
      </button>
    </div>
  );
}
