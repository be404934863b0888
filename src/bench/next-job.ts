import { checkEvidence } from '../flows/index.ts';
import { begunJob } from '../notebook/begun-job.ts';
import type { Job, LastCheck } from '../notebook/job.ts';

/** The last closing check that came to its end, with what was read for it. */
function lastCheckOf(job: Job): LastCheck | undefined {
  const check = job.checks?.findLast(({ endedAt }) => endedAt !== undefined);
  if (!check) return job.lastCheck;
  // An earlier job counts its own repairs: here there is none yet.
  const readings = checkEvidence(job, check).readings.map((reading) => ({ ...reading, round: 0 }));
  return { check, readings };
}

/** A new job on the guitar of this one: wiring, measured values, meter and the last closing check come along. */
export function nextJob(
  job: Job,
  { id, title, at }: { readonly id: string; readonly title: string; readonly at: string },
): Job {
  const { circuit, places, meter, guitar } = job;
  const lastCheck = lastCheckOf(job);
  return begunJob(
    {
      id,
      title,
      guitar,
      circuit,
      ...(places && { places }),
      meter,
      access: 'closed',
      ...(lastCheck && { lastCheck }),
    },
    at,
  );
}
