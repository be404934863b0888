import type { Ask, Reading } from '../readings/reading.ts';
import type { Job, Repair } from './job.ts';
import type { Dated } from './kept.ts';

/**
 * Joins what two tabs did to one job since `base`, the version that `mine` grew from: what either
 * added stays, what either took back is gone. Without a base nothing counts as taken back. Single
 * fields that both changed go to the later `changedAt`. Readings are told apart by what was asked,
 * seen and when; two that share an id by accident are both kept, and the newcomer gets another id.
 */
export function mergeJobs(base: Job | undefined, mine: Job, theirs: Job): Job {
  const repairs = joined(base?.repairs, mine.repairs, theirs.repairs, repairKey);
  const readings = joined(base?.readings, mine.readings, theirs.readings, readingKey);
  const refusals = joined(
    base && refusalsOf(base),
    refusalsOf(mine),
    refusalsOf(theirs),
    JSON.stringify,
  );
  const pick = picker(base, mine, theirs);
  const job: Job = {
    ...theirs,
    title: pick('title'),
    guitar: pick('guitar'),
    circuit: pick('circuit'),
    meter: pick('meter'),
    access: pick('access'),
    changedAt: laterOf(mine, theirs).changedAt,
    readings: distinctIds(readings).map((reading) => withinRounds(reading, repairs.length)),
    refused: refusals.map(({ ask }) => ask),
    repairs,
  };
  return withOptional(job, {
    places: pick('places'),
    setAside:
      mine.setAside || theirs.setAside
        ? joined(base?.setAside, mine.setAside ?? [], theirs.setAside ?? [], JSON.stringify)
        : undefined,
    refusedAt: mine.refusedAt || theirs.refusedAt ? refusals.map(({ at }) => at) : undefined,
    cautionsReadAt: pick('cautionsReadAt'),
    closedAt: pick('closedAt'),
    checks: pick('checks'),
    lastCheck: pick('lastCheck'),
  });
}

export const readingKey = ({ at, ask, seen }: Reading): string => JSON.stringify([at, ask, seen]);
const repairKey = ({ at, repair }: Repair): string => JSON.stringify([at, repair]);

export const refusalsOf = (
  job: Pick<Job, 'refused' | 'refusedAt'>,
): readonly { readonly ask: Ask; readonly at: string }[] =>
  job.refused.map((ask, index) => ({ ask, at: job.refusedAt?.[index] ?? '' }));

/** Theirs in their order, without what mine took back; then what only mine has, without what they took back. */
export function joined<T>(
  base: readonly T[] | undefined,
  mine: readonly T[],
  theirs: readonly T[],
  key: (one: T) => string,
): readonly T[] {
  const [old, my, their] = [base ?? [], mine, theirs].map((list) => new Set(list.map(key)));
  return [
    ...theirs.filter((one) => my!.has(key(one)) || !old!.has(key(one))),
    ...mine.filter((one) => !their!.has(key(one)) && !old!.has(key(one))),
  ];
}

const laterOf = <T extends Dated>(mine: T, theirs: T): T =>
  mine.changedAt >= theirs.changedAt ? mine : theirs;

/** Of a field that one side changed, what it changed to; of one that both changed, the later. */
export function picker<T extends Dated>(base: T | undefined, mine: T, theirs: T) {
  const later = laterOf(mine, theirs);
  return <Key extends keyof T>(key: Key): T[Key] => {
    if (!base) return later[key];
    const same = (a: T, b: T) => JSON.stringify(a[key]) === JSON.stringify(b[key]);
    if (same(mine, base)) return theirs[key];
    return same(theirs, base) ? mine[key] : later[key];
  };
}

export function distinctIds<T extends { readonly id: string }>(
  readings: readonly T[],
): readonly T[] {
  const taken = new Set<string>();
  return readings.map((reading) => {
    let id = reading.id;
    for (let copy = 2; taken.has(id); copy++) id = `${reading.id}~${copy}`;
    taken.add(id);
    return id === reading.id ? reading : { ...reading, id };
  });
}

/** A repair taken back in one tab leaves readings of the other that were counted after it. */
const withinRounds = (reading: Reading, repairs: number): Reading =>
  reading.round > repairs ? { ...reading, round: repairs } : reading;

type Optional = Pick<
  Job,
  'places' | 'setAside' | 'refusedAt' | 'cautionsReadAt' | 'closedAt' | 'checks' | 'lastCheck'
>;

/** Leaves out a field without a value, so that a stored job looks as if it never had one. */
function withOptional(
  job: Job,
  fields: { readonly [Key in keyof Optional]: Optional[Key] | undefined },
): Job {
  const {
    places: _1,
    setAside: _2,
    refusedAt: _3,
    cautionsReadAt: _4,
    closedAt: _5,
    checks: _6,
    lastCheck: _7,
    ...rest
  } = job;
  const set = Object.entries(fields).filter(([, value]) => value !== undefined);
  return { ...rest, ...Object.fromEntries(set) };
}
