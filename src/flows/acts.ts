import type { Ask, Reading, Seen } from '../readings/reading.ts';
import type { DoneRepair, Work } from './work.ts';

/** One answer of the person: what was asked and what was seen. */
export interface Answer {
  readonly ask: Ask;
  readonly seen: Seen;
}

/** Asks are plain data: the same words in the same order are the same ask. */
export const sameAsk = (a: Ask, b: Ask): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Adds readings taken together; undo takes them back together, by their common `at`. */
export function withAnswers(work: Work, answers: readonly Answer[], at: string): Work {
  let last = lastNumber(work.readings);
  const readings = answers.map((answer): Reading => {
    last += 1;
    return { id: `r${last}`, ...answer, at, round: work.repairs.length };
  });
  return { ...work, readings: [...work.readings, ...readings], changedAt: at };
}

export function withRefusal(work: Work, ask: Ask, at: string): Work {
  // Refusals from before their time was kept count as the oldest.
  const times = work.refused.map((_, index) => work.refusedAt?.[index] ?? '');
  return {
    ...work,
    refused: [...work.refused, ask],
    refusedAt: [...times, at],
    changedAt: at,
  };
}

export const withRepair = (work: Work, done: DoneRepair): Work => ({
  ...work,
  repairs: [...work.repairs, done],
  changedAt: done.at,
});

export const withCautionsRead = (work: Work, at: string): Work => ({
  ...work,
  cautionsReadAt: at,
  changedAt: at,
});

export const withGuitarOpen = (work: Work, at: string): Work => ({
  ...work,
  access: 'open',
  changedAt: at,
});

/** The parts as they really are, or another meter: not an act that undo takes back, because the old values can be typed again. */
export const withCorrection = (
  work: Work,
  told: Pick<Work, 'circuit' | 'meter'>,
  at: string,
): Work => ({
  ...work,
  circuit: told.circuit,
  meter: told.meter,
  changedAt: at,
});

export const withClosing = (work: Work, at: string): Work => ({
  ...work,
  closedAt: at,
  changedAt: at,
});

export function withReopening(work: Work, at: string): Work {
  const { closedAt: _, ...rest } = work;
  return { ...rest, changedAt: at };
}

/** The last thing the person did, as data: a screen finds the words. */
export type LastAct =
  | { readonly kind: 'readings'; readonly readings: readonly Reading[]; readonly at: string }
  | { readonly kind: 'refusal'; readonly ask: Ask; readonly at: string }
  | { readonly kind: 'repair'; readonly repair: DoneRepair; readonly at: string }
  | { readonly kind: 'cautions'; readonly at: string }
  | { readonly kind: 'closing'; readonly at: string };

/** The act that undo would take back. Null on untouched work. */
export function lastAct(work: Work): LastAct | null {
  const acts: LastAct[] = [];
  const { cautionsReadAt, closedAt } = work;
  const reading = work.readings.at(-1);
  const refusal = work.refused.at(-1);
  const repair = work.repairs.at(-1);
  if (cautionsReadAt) acts.push({ kind: 'cautions', at: cautionsReadAt });
  if (reading)
    acts.push({
      kind: 'readings',
      readings: work.readings.filter(({ at }) => at === reading.at),
      at: reading.at,
    });
  if (refusal)
    acts.push({
      kind: 'refusal',
      ask: refusal,
      at: work.refusedAt?.[work.refused.length - 1] ?? '',
    });
  if (repair) acts.push({ kind: 'repair', repair, at: repair.at });
  if (closedAt) acts.push({ kind: 'closing', at: closedAt });
  // Acts in one millisecond keep the order above: a closing comes after all else.
  return acts.reduce<LastAct | null>((last, act) => (last && last.at > act.at ? last : act), null);
}

/** The work without its last act. */
export function withoutLastAct(work: Work, at: string): Work {
  const act = lastAct(work);
  const changed = { ...work, changedAt: at };
  switch (act?.kind) {
    case undefined:
      return work;
    case 'readings':
      return { ...changed, readings: work.readings.filter((one) => one.at !== act.at) };
    case 'refusal':
      return {
        ...changed,
        refused: work.refused.slice(0, -1),
        ...(work.refusedAt && { refusedAt: work.refusedAt.slice(0, -1) }),
      };
    case 'repair':
      return { ...changed, repairs: work.repairs.slice(0, -1) };
    case 'cautions': {
      const { cautionsReadAt: _, ...rest } = changed;
      return rest;
    }
    case 'closing':
      return withReopening(work, at);
  }
}

function lastNumber(readings: readonly Reading[]): number {
  return readings.reduce(
    (last, { id }) => Math.max(last, Number(/^r(\d+)$/.exec(id)?.[1] ?? 0)),
    0,
  );
}
