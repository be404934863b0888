import { useState } from 'preact/hooks';
import type { Assessment } from '../../diagnosis/assessment.ts';
import type { Job } from '../../notebook/job.ts';
import { formatOhms } from '../../readings/entry.ts';
import { called } from '../../words/called.ts';
import { deskWords } from '../../words/en/desk.ts';
import { pieceWords } from '../../words/en/pieces.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { useGrowing } from '../growing.ts';
import { useOnce } from '../once.ts';
import { Photos } from '../pieces/photos.tsx';
import { PositionTable } from '../pieces/position-table.tsx';
import { Remove } from '../pieces/remove.tsx';
import { Rename } from '../pieces/rename.tsx';
import { SaveFile } from '../pieces/save-file.tsx';
import { Screen } from '../pieces/screen.tsx';
import { Table } from '../pieces/table.tsx';
import { hrefOf } from '../route.ts';
import { Grounds } from './grounds.tsx';

interface RecordProps {
  readonly strip: preact.ComponentChildren;
  readonly job: Job;
  readonly assessment: Assessment | null;
  onClose(): void;
  onRename(title: string): Promise<void>;
  onCopy(): Promise<void>;
  onRemove(how?: 'forever'): Promise<void>;
}

/** All that was measured and changed, and what it tells of the real values. */
export function JobRecord({
  strip,
  job,
  assessment,
  onClose,
  onRename,
  onCopy,
  onRemove,
}: RecordProps) {
  // The ways on and the readings come first.
  const pieces = useGrowing(3);
  return (
    <Screen
      name="record"
      title={job.title || pieceWords().aJob}
      strip={strip}
      acts={
        <a class="main" href={hrefOf({ at: 'job', id: job.id, view: 'hunt' })}>
          {deskWords().backToTheHunt}
        </a>
      }
    >
      <p class="soft">{called(job.circuit.title)}</p>
      <p class="row">
        <a href={hrefOf({ at: 'job', id: job.id, view: 'drawing' })}>{deskWords().theWiring}</a>
        <a href={hrefOf({ at: 'job', id: job.id, view: 'card' })}>{deskWords().readingCard}</a>
        <a href={hrefOf({ at: 'job', id: job.id, view: 'values' })}>{deskWords().valuesAndMeter}</a>
        <a href={hrefOf({ at: 'job', id: job.id, view: 'trial' })}>{deskWords().tryAValue}</a>
        <a href={hrefOf({ at: 'bench' })}>{deskWords().hearingVoiceAndLight}</a>
        {!job.practice && (
          <>
            <a href={hrefOf({ at: 'job', id: job.id, view: 'closing' })}>
              {deskWords().closingCheck}
            </a>
            <a href={hrefOf({ at: 'guitar', id: job.guitar.id, view: 'jobs' })}>
              {deskWords().allJobsOnThisGuitar}
            </a>
          </>
        )}
      </p>
      {assessment && assessment.readings.length > 0 ? (
        <Grounds circuit={job.circuit} reports={assessment.readings} title={deskWords().readings} />
      ) : (
        <p>{deskWords().noReadingYet}</p>
      )}
      {pieces > 1 && (
        <>
          {job.setAside && job.setAside.length > 0 && (
            <>
              <h2>{deskWords().readingsOfTheWiringAsItWas}</h2>
              <p class="soft">{deskWords().theyNameWhatTheWiringNoLonger}</p>
              <ul>
                {job.setAside.map(({ reading, words }) => (
                  <li key={reading.id}>{words}</li>
                ))}
              </ul>
            </>
          )}
          {job.repairs.length > 0 && (
            <>
              <h2>{deskWords().repairs}</h2>
              <ol class="steps">
                {job.repairs.map(({ title, at }) => (
                  <li key={at}>
                    {title} <span class="soft">{dateText(at)}</span>
                  </li>
                ))}
              </ol>
            </>
          )}
          {assessment && assessment.learned.length > 0 && (
            <Table
              title={deskWords().whatThePartsSeemToBe}
              columns={[deskWords().part, deskWords().asPrinted, deskWords().byTheReadings]}
              rows={assessment.learned.map(({ part, title, nominal, estimate, spread }) => ({
                key: part,
                head: title,
                cells: [
                  formatOhms(nominal),
                  `${formatOhms(estimate)} ±${Math.round(100 * spread)}\u00a0%`,
                ],
              }))}
            />
          )}
          <PositionTable circuit={job.circuit} />
        </>
      )}
      {pieces > 2 && (
        <>
          {!job.practice && <Photos job={job.id} words={job.title} />}
          <h2>{deskWords().keepIt}</h2>
          {job.practice ? (
            <p class="soft">{deskWords().aMadeUpGuitarStaysOnThis}</p>
          ) : (
            <SaveFile job={job} />
          )}
          {job.closedAt === undefined && (
            <p>
              <button type="button" class="plain" onClick={onClose}>
                {deskWords().closeTheJob}
              </button>
            </p>
          )}
          {!job.practice && (
            <>
              <CopyJob onCopy={onCopy} />
              <Rename title={job.title} what="job" onRename={onRename} />
            </>
          )}
          <Remove title={job.title} onRemove={onRemove} />
        </>
      )}
    </Screen>
  );
}

/** The same job once more: its wiring and readings, to try something else from here. */
function CopyJob({ onCopy }: Pick<RecordProps, 'onCopy'>) {
  const [failure, setFailure] = useState<string | null>(null);
  const copy = useOnce(onCopy);
  return (
    <p class="row">
      <button
        type="button"
        class="plain"
        onClick={() => copy().catch((error: unknown) => setFailure(failureOf(error)))}
      >
        {deskWords().copyThisJob}
      </button>
      <span class="soft">{deskWords().itsPhotosStayWithThisOne}</span>
      {failure && <span role="alert">{failure}</span>}
    </p>
  );
}
