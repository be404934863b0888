import type { ReadingReport, Standing, SuspectedRepair } from '../diagnosis/assessment.ts';

/** A suspect at or above this share is counted as alive: one chance in a hundred. */
const ALIVE = 0.01;

/** What one reading did to the belief. */
export interface Change {
  readonly report: ReadingReport | null;
  /** Suspects alive before and after. */
  readonly before: number;
  readonly after: number;
  /** Were alive and no longer are, the most likely of them first. */
  readonly fellAway: readonly SuspectedRepair[];
  /** Alive now, most likely first. */
  readonly leading: readonly SuspectedRepair[];
}

/** Compares the assessments around the reading called `readingId`. */
export function changeBy(readingId: string, before: Standing, after: Standing): Change {
  const now = new Map(after.suspects.map(({ repair, probability }) => [repair, probability]));
  return {
    report: after.readings.find(({ id }) => id === readingId) ?? null,
    before: before.liveSuspects,
    after: after.liveSuspects,
    fellAway: before.suspects.filter(
      ({ repair, probability }) => probability >= ALIVE && (now.get(repair) ?? 0) < ALIVE,
    ),
    leading: after.suspects.filter(({ probability }) => probability >= ALIVE),
  };
}
