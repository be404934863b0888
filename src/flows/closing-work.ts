import type { ClosingEvidence } from '../closing/closing.ts';
import { type DoneCheck, evidenceOf, type Work } from './work.ts';

/** The check that is under way. */
export const checkUnderWay = (work: Pick<Work, 'checks'>): DoneCheck | null => {
  const last = work.checks?.at(-1);
  return last && last.endedAt === undefined ? last : null;
};

export function withCheck(work: Work, check: DoneCheck): Work {
  const ended = (work.checks ?? []).filter(({ endedAt }) => endedAt !== undefined);
  const { closedAt: _, ...open } = work;
  return {
    ...open,
    access: check.stage === 'closed' ? work.access : 'open',
    checks: [...ended, check],
    changedAt: check.startedAt,
  };
}

/** The check is through: the job is closed with it. */
export function withCheckEnded(work: Work, at: string, celsius?: number): Work {
  const check = checkUnderWay(work);
  if (!check) return work;
  const ended: DoneCheck = { ...check, endedAt: at, ...(celsius === undefined ? {} : { celsius }) };
  return {
    ...work,
    checks: [...(work.checks ?? []).slice(0, -1), ended],
    closedAt: at,
    changedAt: at,
  };
}

/**
 * What the engine is told of one check: the readings since the check before it ended, and up to its own end. What a hunt has read in
 * between counts, so that it need not be read again.
 */
export function checkEvidence(work: Work, check: DoneCheck): ClosingEvidence {
  const checks = work.checks ?? [];
  const at = checks.findIndex(({ startedAt }) => startedAt === check.startedAt);
  const previous = at > 0 ? checks[at - 1] : undefined;
  const { access: _, ...evidence } = evidenceOf(work);
  const before = previous
    ? readingsBetween(work, checks[at - 2]?.endedAt, previous.endedAt)
    : work.lastCheck?.readings;
  return {
    ...evidence,
    stage: check.stage,
    readings: readingsBetween(work, previous?.endedAt, check.endedAt),
    ...(check.endedAt === undefined ? {} : { ended: true }),
    ...(before ? { before } : {}),
  };
}

const readingsBetween = (work: Work, from: string | undefined, to: string | undefined) =>
  work.readings.filter(
    ({ at }) => (from === undefined || at > from) && (to === undefined || at <= to),
  );
