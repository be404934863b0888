import { JOB_VERSION, type Job } from './job.ts';

/** What a job begins with; it is on a guitar of its own unless one is named. */
type Beginning = Pick<Job, 'id' | 'title' | 'circuit' | 'meter' | 'access'> &
  Partial<Pick<Job, 'guitar' | 'places' | 'lastCheck' | 'practice'>>;

/** A job on which nothing was read yet. `at` is ISO 8601. */
export const begunJob = (beginning: Beginning, at: string): Job => ({
  format: 'lugwise-job',
  version: JOB_VERSION,
  guitar: { id: beginning.id, title: beginning.title },
  ...beginning,
  createdAt: at,
  changedAt: at,
  readings: [],
  refused: [],
  repairs: [],
});

/** The job once more, under another name. */
export const copiedJob = (job: Job, id: string, title: string, at: string): Job => ({
  ...job,
  id,
  title: title.slice(0, 200),
  createdAt: at,
  changedAt: at,
});
