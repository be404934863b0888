import type { Evidence } from '../diagnosis/assessment.ts';
import { evidenceOf, type Work } from '../flows/index.ts';
import { preferences } from './preferences.ts';

/** Evidence as this person takes it: whoever works by ear is asked for beeps. */
export const asTaken = (evidence: Evidence): Evidence => ({
  ...evidence,
  byEar: preferences.value.hears,
});

/** The evidence that the engine is told of a piece of work. */
export const toldOf = (work: Work): Evidence => asTaken(evidenceOf(work));
