import type { SeenPickup } from '../circuit/seen-pickup.ts';
import { ohms } from '../circuit/units.ts';
import type { Ask, Meter, Reading, Seen } from '../readings/reading.ts';

/** What is kept of a pickup on the mat: what was told and seen, never what was concluded. */
export interface SortWork {
  readonly seen: SeenPickup;
  readonly meter: Meter;
  readonly readings: readonly Reading[];
  readonly refused: readonly Ask[];
  /** When each of `refused` was refused, in the same order. ISO 8601. */
  readonly refusedAt?: readonly string[];
  readonly cautionsReadAt?: string;
  readonly changedAt: string;
}

/** A usual hand-held meter (common practice, no source). */
export const freshSort = (seen: SeenPickup, at: string): SortWork => ({
  seen,
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
  readings: [],
  refused: [],
  changedAt: at,
});

export function withReading(work: SortWork, ask: Ask, seen: Seen, at: string): SortWork {
  const last = work.readings.reduce(
    (most, { id }) => Math.max(most, Number(/^r(\d+)/.exec(id)?.[1] ?? 0)),
    0,
  );
  return {
    ...work,
    readings: [...work.readings, { id: `r${last + 1}`, ask, seen, at, round: 0 }],
    changedAt: at,
  };
}

/** Refusals from before their time was kept count as the oldest. */
const refusalTimes = ({ refused, refusedAt }: SortWork): readonly string[] =>
  refused.map((_, index) => refusedAt?.[index] ?? '');

export const withoutAsk = (work: SortWork, ask: Ask, at: string): SortWork => ({
  ...work,
  refused: [...work.refused, ask],
  refusedAt: [...refusalTimes(work), at],
  changedAt: at,
});

/** What could not be done before is asked again. */
export const withRefusedAgain = (work: SortWork, at: string): SortWork => ({
  ...work,
  refused: [],
  refusedAt: [],
  changedAt: at,
});

export const hasActs = ({ readings, refused }: SortWork): boolean =>
  readings.length + refused.length > 0;

/** Without the last thing that was answered or left out, whichever came later; of one moment the refusal. */
export function withoutLast(work: SortWork, at: string): SortWork {
  const refusedLast = refusalTimes(work).at(-1);
  const readLast = work.readings.at(-1)?.at;
  if (refusedLast !== undefined && (readLast === undefined || refusedLast >= readLast))
    return {
      ...work,
      refused: work.refused.slice(0, -1),
      refusedAt: refusalTimes(work).slice(0, -1),
      changedAt: at,
    };
  return { ...work, readings: work.readings.slice(0, -1), changedAt: at };
}
