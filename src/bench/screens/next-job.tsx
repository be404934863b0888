import { useState } from 'preact/hooks';
import type { GuitarSummary } from '../../notebook/guitar.ts';
import type { Job } from '../../notebook/job.ts';
import { keepingWords } from '../../words/en/keeping.ts';
import { dateText } from '../../words/figures.ts';
import { failureOf } from '../failure.ts';
import { nextJob } from '../next-job.ts';
import { useOnce } from '../once.ts';
import { Screen } from '../pieces/screen.tsx';
import { usePorts } from '../ports.ts';
import { go, hrefOf, type JobView } from '../route.ts';

interface NextJobProps {
  readonly guitar: GuitarSummary;
  /** The newest job on it. */
  readonly job: Job;
}

/** A new job on a guitar that was here before. */
export function NextJob({ guitar, job }: NextJobProps) {
  const ports = usePorts();
  const day = dateText(ports.now());
  const [title, setTitle] = useState(keepingWords().guitarOnDay(guitar.title, day).slice(0, 80));
  const [isOpen, setOpen] = useState(false);
  const [failure, setFailure] = useState<string | null>(null);
  const begin = useOnce(async (view: JobView) => {
    const next = nextJob(job, {
      id: ports.newId(),
      title: title.trim() || guitar.title,
      at: ports.now(),
    });
    try {
      await ports.notebook.write(isOpen ? { ...next, access: 'open' } : next);
      go({ at: 'job', id: next.id, view });
    } catch (error) {
      setFailure(failureOf(error));
    }
  });
  return (
    <Screen
      name="next-job"
      title={keepingWords().newJobOn(guitar.title)}
      acts={
        <>
          <a class="plain" href={hrefOf({ at: 'guitar', id: guitar.id, view: 'jobs' })}>
            {keepingWords().back}
          </a>
          <button type="button" class="plain" onClick={() => begin('closing')}>
            {keepingWords().closingCheck}
          </button>
          <button type="button" class="main" onClick={() => begin('hunt')}>
            {keepingWords().findAFault}
          </button>
        </>
      }
    >
      {failure && (
        <p role="alert" class="sentence">
          {failure}
        </p>
      )}
      <p>{keepingWords().whatComesAlong}</p>
      <label class="field-tall">
        <span>{keepingWords().nameOfJob}</span>
        <input
          value={title}
          maxLength={80}
          onInput={({ currentTarget }) => setTitle(currentTarget.value)}
        />
      </label>
      <label class="tick">
        <input
          type="checkbox"
          checked={isOpen}
          onChange={({ currentTarget }) => setOpen(currentTarget.checked)}
        />
        {keepingWords().isOpenAlready}
      </label>
    </Screen>
  );
}
