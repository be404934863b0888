import { checkCircuit } from '../circuit/check.ts';
import type { Circuit } from '../circuit/circuit.ts';
import type { Access } from '../diagnosis/assessment.ts';
import { circuitShape } from './circuit-shape.ts';
import type { Job } from './job.ts';
import { placesShape } from './job-shape.ts';

/** A wiring with the places of its parts. */
export interface Drawn {
  readonly circuit: Circuit;
  readonly places: NonNullable<Job['places']>;
}

/**
 * A wiring while it is drawn. `start` and the acts give `now`; where an act of an older app no longer does, `now` stands. What is
 * done and undone is the editor's own, and read by it alone.
 */
export interface WiringDraft {
  readonly format: 'lugwise-draft';
  readonly id: string;
  /** The person's own name for the guitar. */
  readonly title: string;
  readonly access: Access;
  /** The job whose wiring is drawn anew; absent for a new guitar. */
  readonly job?: string;
  /** ISO 8601. */
  readonly changedAt: string;
  readonly start: Drawn;
  readonly done: readonly unknown[];
  readonly undone: readonly unknown[];
  readonly now: Drawn;
}

/** A stored draft as it may be trusted, or null where it is none. A wiring without parts is no fault while it is drawn. */
export function restoredDraft(raw: unknown): WiringDraft | null {
  const draft = raw as Partial<WiringDraft> | null;
  try {
    for (const drawn of [draft?.start, draft?.now]) {
      circuitShape(drawn?.circuit, 'circuit');
      placesShape(drawn?.places, 'places');
      if (drawn && drawn.circuit.parts.length > 0) checkCircuit(drawn.circuit);
    }
  } catch {
    return null;
  }
  const words = [draft?.id, draft?.title, draft?.changedAt];
  const fits =
    draft?.format === 'lugwise-draft' &&
    words.every((word) => typeof word === 'string') &&
    Array.isArray(draft.done) &&
    Array.isArray(draft.undone);
  return fits
    ? { ...(draft as WiringDraft), access: draft.access === 'open' ? 'open' : 'closed' }
    : null;
}
