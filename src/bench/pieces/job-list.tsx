import type { JobSummary } from '../../notebook/index.ts';
import { called } from '../../words/called.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { dateText } from '../../words/figures.ts';
import { usePorts } from '../ports.ts';
import { hrefOf, type JobView } from '../route.ts';
import { DamagedRecord } from './damaged-record.tsx';

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
  return (
    <DamagedRecord
      title={job.title || pieceWords().aJob}
      sentence={sentence}
      record={job}
      shelf={notebook}
      onRemoved={onRemoved}
    />
  );
}
