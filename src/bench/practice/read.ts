import type { Job } from '../../notebook/job.ts';
import type { PracticeReading } from '../../practice/reading.ts';
import type { Ask } from '../../readings/reading.ts';
import type { Ports } from '../ports.ts';

/** What the practice guitar shows as it stands: mended where the job says so. `again` counts readings not stored. */
export const readPractice = (
  engine: Ports['engine'],
  { seed }: NonNullable<Job['practice']>,
  job: Pick<Job, 'readings' | 'repairs'>,
  ask: Ask,
  again = 0,
): Promise<PracticeReading> =>
  engine.practiceReading({
    seed,
    ask,
    repairs: job.repairs.map(({ repair }) => repair),
    before: job.readings.length + again,
  });
