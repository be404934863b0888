import { checkCircuit, checkSetting } from '../circuit/check.ts';
import { EVERYWHERE } from '../circuit/edit.ts';
import { CircuitError } from '../circuit/errors.ts';
import { type Layout, layoutOf, nodeAt, siteAt } from '../circuit/netlist.ts';
import type { PartId, PartKind } from '../circuit/parts/part.ts';
import type { Rests } from '../diagnosis/rests.ts';
import type { Ask } from '../readings/reading.ts';
import { notebookWords } from '../words/en/notebook.ts';
import { atOnce } from './aside.ts';
import { JOB_VERSION, type Job } from './job.ts';
import { jobShape } from './job-shape.ts';
import { JobShapeError, shown } from './shape.ts';

type Loose = Readonly<Record<string, unknown>>;
/** Steps from one version to the next: `steps[n]` turns a job of version n into one of n + 1. */
export type Steps = Readonly<Record<number, (job: Loose) => Loose>>;

const steps: Steps = {
  // Until then every job was a guitar of its own.
  1: (job) => ({ ...job, guitar: { id: job['id'], title: job['title'] } }),
};

/**
 * Everything that is loaded, from the disk or from a file, passes here once and is trusted after.
 * Older versions are brought up to the present one; then shape, circuit and every name are checked.
 * Throws JobShapeError, whose sentence names the place and is fit to show. `raw` is not changed.
 */
export function* restoringJob(raw: unknown): Rests<Job> {
  const job = migrated(raw, steps, JOB_VERSION);
  jobShape(job, '');
  yield;
  const checked = job as unknown as Job;
  within('circuit', () => checkCircuit(checked.circuit));
  yield;
  checkNames(checked);
  return checked;
}

/** The same in one piece. */
export const restoreJob = (raw: unknown): Job => atOnce(restoringJob(raw));

/** Brings a job of an older version up to `present`; refuses newer ones, and what is no job at all. */
export function migrated(
  raw: unknown,
  steps: Steps,
  present: number,
  format = 'lugwise-job',
): Loose {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    throw new JobShapeError('', notebookWords().thisIsNotAJobExpectedAn(shown(raw)));
  let job = raw as Loose;
  if (job['format'] !== format)
    throw new JobShapeError(
      'format',
      notebookWords().expectedFormatGotShown(format, shown(job['format'])),
    );
  const from = job['version'];
  if (typeof from !== 'number' || !Number.isInteger(from) || from < 1)
    throw new JobShapeError('version', notebookWords().expectedAWholeNumberFrom1(shown(from)));
  if (from > present)
    throw new JobShapeError('version', notebookWords().theJobWasWrittenByANewer(from, present));
  for (let version = from; version < present; version++) {
    const step = steps[version];
    if (!step)
      throw new JobShapeError('version', notebookWords().thereIsNoStepFromVersionVersion(version));
    job = { ...step(job), version: version + 1 };
  }
  return job;
}

function checkNames(job: Job): void {
  const layout = layoutOf(job.circuit);
  const ids = new Set<string>();
  for (const [index, reading] of job.readings.entries()) {
    const place = `readings[${index}]`;
    if (ids.has(reading.id))
      throw new JobShapeError(
        `${place}.id`,
        notebookWords().twoReadingsAreCalledReading(reading.id),
      );
    ids.add(reading.id);
    if (reading.round > job.repairs.length)
      throw new JobShapeError(
        `${place}.round`,
        notebookWords().expectedAtMostCountTheNumber(job.repairs.length, reading.round),
      );
    checkAsk(layout, reading.ask, `${place}.ask`);
  }
  for (const [index, ask] of job.refused.entries()) checkAsk(layout, ask, `refused[${index}]`);
  for (const [index, { ask }] of (job.lastCheck?.readings ?? []).entries())
    checkAsk(layout, ask, `lastCheck.readings[${index}].ask`);
  checkRefusalTimes(job);
}

/** Where the times of refusals are kept there is one for each. */
export function checkRefusalTimes({
  refused,
  refusedAt,
}: Pick<Job, 'refused' | 'refusedAt'>): void {
  if (refusedAt && refusedAt.length !== refused.length)
    throw new JobShapeError(
      'refusedAt',
      notebookWords().expectedOneTimeForEachOfThe(refused.length, refusedAt.length),
    );
}

/** Every point, part and control that an ask names must be one of this guitar. */
export function checkAsk(layout: Layout, ask: Ask, place: string): void {
  within(`${place}.setting`, () => checkSetting(layout.circuit, ask.setting));
  if ('red' in ask) {
    within(`${place}.red`, () => nodeAt(layout, ask.red));
    within(`${place}.black`, () => nodeAt(layout, ask.black));
  }
  switch (ask.kind) {
    case 'turn':
      checkPart(layout, ask.pot, 'pot', `${place}.pot`);
      break;
    case 'tap':
    case 'pole':
      checkPart(layout, ask.coil, 'coil', `${place}.coil`);
      break;
    case 'farads':
      checkPart(layout, ask.part, 'capacitor', `${place}.part`);
      break;
    case 'flex':
      if (ask.site !== EVERYWHERE && !layout.parts.has(ask.site))
        within(`${place}.site`, () => siteAt(layout, ask.site));
      break;
    case 'touch':
      within(`${place}.metal`, () => nodeAt(layout, ask.metal));
      break;
    case 'hum':
      within(`${place}.against`, () => checkSetting(layout.circuit, ask.against));
      break;
    case 'look':
      if (!layout.parts.has(ask.at)) within(`${place}.at`, () => siteAt(layout, ask.at));
  }
}

function checkPart(layout: Layout, id: PartId, kind: PartKind, place: string): void {
  const got = layout.parts.get(id)?.kind;
  if (got === undefined) throw new JobShapeError(place, notebookWords().thereIsNoPartCalledId(id));
  if (got !== kind)
    throw new JobShapeError(place, notebookWords().idIsAGotExpectedAKind(id, got, kind));
}

/** Puts the place in the job before a sentence about the circuit. */
export function within<T>(place: string, check: () => T): T {
  try {
    return check();
  } catch (error) {
    if (error instanceof CircuitError) throw new JobShapeError(place, error.message);
    throw error;
  }
}
