import type { Circuit } from '../../circuit/circuit.ts';
import type { Job } from '../../notebook/job.ts';
import { refitted } from '../../notebook/rewire.ts';
import { tryingWords } from '../../words/en/trials.ts';

/** Why a wiring cannot take the place of the job's: a reading or a refusal is of a part that it does not have. Null where it can. */
export function blockedBy(job: Job, wiring: Circuit): string | null {
  const lost = [...job.readings.map(({ ask }) => ask), ...job.refused].filter(
    (ask) => refitted(job.circuit, wiring, ask) === null,
  ).length;
  if (lost === 0) return null;
  return tryingWords().ofAPartThatThisTakesAway(lost);
}
