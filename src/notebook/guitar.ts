import type { JobSummary } from './job-summary.ts';

/** A guitar is its jobs: the wiring, the measured values and the last closing check are those of the newest. */
export interface GuitarSummary {
  readonly id: string;
  readonly title: string;
  /** Newest first, and at least one. */
  readonly jobs: readonly JobSummary[];
}

/** The guitars of these jobs, which come newest first; so do the guitars. */
export function guitarsOf(jobs: readonly JobSummary[]): readonly GuitarSummary[] {
  const guitars = new Map<string, JobSummary[]>();
  for (const job of jobs) {
    const known = guitars.get(job.guitar.id);
    if (known) known.push(job);
    else guitars.set(job.guitar.id, [job]);
  }
  return [...guitars].map(([id, [newest, ...older]]) => ({
    id,
    title: newest!.guitar.title,
    jobs: [newest!, ...older],
  }));
}
