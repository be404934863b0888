import type { Job, JobGuitar } from './job.ts';

/** A line of the list of jobs. */
export interface JobSummary {
  readonly id: string;
  readonly title: string;
  readonly guitar: JobGuitar;
  /** The wiring in generic words. */
  readonly wiring: string;
  readonly createdAt: string;
  readonly changedAt: string;
  readonly closedAt?: string;
  readonly readings: number;
  readonly repairs: number;
  /** A made-up guitar to learn on. */
  readonly practice?: true;
  /** When the last closing check came to its end. */
  readonly checkedAt?: string;
  /** What was done, in words, for a search. */
  readonly done: readonly string[];
  /** Why the job cannot be opened; `rescue` still gives it as a file. */
  readonly damaged?: string;
}

export function summaryOf(job: Job): JobSummary {
  const { id, title, guitar, createdAt, changedAt, closedAt } = job;
  const checkedAt = job.checks?.findLast(({ endedAt }) => endedAt !== undefined)?.endedAt;
  return {
    id,
    title,
    guitar,
    wiring: job.circuit.title,
    createdAt,
    changedAt,
    ...(closedAt !== undefined && { closedAt }),
    readings: job.readings.length,
    repairs: job.repairs.length,
    ...(job.practice && { practice: true as const }),
    ...(checkedAt !== undefined && { checkedAt }),
    done: job.repairs.map((repair) => repair.title),
  };
}

/** Lines of real jobs, and lines of practice. */
export const realAndPractice = (lines: readonly JobSummary[]) => ({
  jobs: lines.filter(({ practice }) => !practice),
  practised: lines.filter(({ practice }) => practice),
});
