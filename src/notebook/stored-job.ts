import type { Rests } from '../diagnosis/rests.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { JOB_VERSION, type Job } from './job.ts';
import { type JobSummary, summaryOf } from './job-summary.ts';
import { mergeJobs } from './merge.ts';
import { NotebookError, notebookErrorOf } from './notebook-error.ts';
import { restoreJob, restoringJob } from './restore.ts';
import type { RecordKind } from './shelf.ts';

/** Jobs as the notebook keeps them. */
export const jobKind: RecordKind<Job, JobSummary> = {
  store: 'jobs',
  restoring,
  summarising,
  joinedWith,
  mark: ({ circuit }) => circuit,
};

function joinedWith(
  raw: Job | undefined,
  base: Job | undefined,
  mine: Job,
): { readonly joined: Job; readonly aside?: unknown } {
  if (raw === undefined) return { joined: mine };
  const aside = {
    ...raw,
    id: crypto.randomUUID(),
    title: notebookWords().rawSetAside(String(raw.title)).slice(0, 200),
  };
  if (raw.version > mine.version) throw new NotebookError('newer-version');
  // Nobody else wrote: there is nothing to look through, and nothing to join.
  if (base && isSame(raw, base)) return { joined: mine };
  const theirs = readable(raw);
  if (!theirs) return { joined: mine, aside };
  const job = mergeJobs(base, mine, theirs);
  if (isSame(job, mine)) return { joined: mine };
  // Its own circuit object marks the joined job, by which a later write tells whether the caller took it up.
  if (readable(job) || !readable(mine))
    return { joined: { ...job, circuit: structuredClone(job.circuit) } };
  return { joined: mine, aside };
}

/** Same fields, in whatever order. */
const isSame = (a: Job, b: Job): boolean =>
  ([...Object.keys(a), ...Object.keys(b)] as (keyof Job)[]).every(
    (key) => JSON.stringify(a[key]) === JSON.stringify(b[key]),
  );

function readable(raw: unknown): Job | null {
  try {
    return restoreJob(raw);
  } catch {
    return null;
  }
}

/** A record as a job, or a NotebookError that says why not. */
function* restoring(raw: unknown): Rests<Job> {
  try {
    return yield* restoringJob(raw);
  } catch (error) {
    const { version } = (raw ?? {}) as { readonly version?: unknown };
    const newer = typeof version === 'number' && version > JOB_VERSION;
    throw new NotebookError(newer ? 'newer-version' : 'damaged', (error as Error).message, error);
  }
}

/** A line for whatever is stored: a damaged record is shown by what is left of it. */
function* summarising(raw: unknown): Rests<JobSummary> {
  try {
    return summaryOf(yield* restoring(raw));
  } catch (error) {
    const left = raw as Partial<Record<keyof JobSummary, unknown>>;
    const word = (value: unknown) => (typeof value === 'string' ? value : '');
    return {
      id: String(left.id),
      title: word(left.title),
      guitar: { id: String(left.id), title: word(left.title) },
      wiring: '',
      createdAt: word(left.createdAt),
      changedAt: word(left.changedAt),
      readings: 0,
      repairs: 0,
      done: [],
      damaged: notebookErrorOf(error).sentence,
    };
  }
}
