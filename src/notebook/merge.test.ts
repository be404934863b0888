import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../readings/reading.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';
import type { Job } from './job.ts';
import { mergeJobs } from './merge.ts';
import { restoreJob } from './restore.ts';

const [template] = fullJob().readings as readonly [Reading];
const reading = (id: string, minute: number, round = 0): Reading => ({
  ...template,
  id,
  at: moment(minute),
  round,
});
const job = (changes: Partial<Job> = {}): Job => ({ ...emptyJob(), ...changes });
const ids = ({ readings }: Job) => readings.map(({ id }) => id);

describe('two tabs on one job', () => {
  const base = job({ readings: [reading('r1', 1)] });

  it('keeps what either added', () => {
    const mine = { ...base, readings: [...base.readings, reading('r2', 2)] };
    const theirs = { ...base, readings: [...base.readings, reading('r3', 3)] };
    expect(ids(mergeJobs(base, mine, theirs))).toEqual(['r1', 'r3', 'r2']);
  });

  it('lets go of what either took back', () => {
    const without = { ...base, readings: [] };
    const more = { ...base, readings: [...base.readings, reading('r2', 2)] };
    expect(ids(mergeJobs(base, without, more))).toEqual(['r2']);
    expect(ids(mergeJobs(base, more, without))).toEqual(['r2']);
  });

  it('takes nothing as taken back where it does not know the base', () => {
    expect(ids(mergeJobs(undefined, job({ readings: [] }), base))).toEqual(['r1']);
  });

  it('gives another id to a reading whose id the other tab used for its own', () => {
    const mine = { ...base, readings: [...base.readings, reading('r2', 2)] };
    const theirs = { ...base, readings: [...base.readings, reading('r2', 3)] };
    const merged = mergeJobs(base, mine, theirs);
    expect(merged.readings.map(({ id, at }) => [id, at])).toEqual([
      ['r1', moment(1)],
      ['r2', moment(3)],
      ['r2~2', moment(2)],
    ]);
    // The same job written again changes nothing: the renamed reading is known by what it says.
    expect(mergeJobs(mine, mine, merged)).toEqual(merged);
  });

  it('counts no reading after a repair that was taken back', () => {
    const repaired = job({ repairs: [{ repair: 'x', title: 'X', at: moment(2) }] });
    const measured = { ...repaired, readings: [reading('r1', 3, 1)] };
    const merged = mergeJobs(repaired, measured, { ...repaired, repairs: [] });
    expect(merged.readings[0]?.round).toBe(0);
    expect(restoreJob(merged)).toEqual(merged);
  });

  it('keeps the time of each refusal beside it', () => {
    const [one, two] = fullJob().readings.map(({ ask }) => ask) as [Reading['ask'], Reading['ask']];
    const mine = job({ refused: [one], refusedAt: [moment(1)] });
    const theirs = job({ refused: [two], refusedAt: [moment(2)] });
    const merged = mergeJobs(job(), mine, theirs);
    expect(merged.refused).toEqual([two, one]);
    expect(merged.refusedAt).toEqual([moment(2), moment(1)]);
    expect(mergeJobs(job(), job(), job())).toEqual(job());
  });

  it('takes a single field from whoever changed it, from the later where both did', () => {
    const named = job({ title: 'Mine', changedAt: moment(5) });
    const opened = job({ access: 'closed', changedAt: moment(6) });
    expect(mergeJobs(job(), named, opened)).toMatchObject({
      title: 'Mine',
      access: 'closed',
      changedAt: moment(6),
    });
    const renamed = job({ title: 'Theirs', changedAt: moment(6) });
    expect(mergeJobs(job(), named, renamed).title).toBe('Theirs');
    const closed = job({ closedAt: moment(4) });
    expect(mergeJobs(closed, job(), closed)).not.toHaveProperty('closedAt');
    expect(mergeJobs(job(), closed, job()).closedAt).toBe(moment(4));
  });

  it('in any order of acts and saves, holds exactly what was entered and not taken back', {
    timeout: 60_000,
  }, () => {
    const act = fc.record({
      tab: fc.constantFrom(0, 1),
      what: fc.constantFrom('add', 'undo', 'save', 'save', 'look'),
    });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), (acts) => {
        let disk = job();
        const tabs = [0, 1].map(() => ({ known: job(), now: job() }));
        const entered = new Set<string>();
        const takenBack = new Set<string>();
        let minute = 0;
        const save = (tab: { known: Job; now: Job }) => {
          disk = mergeJobs(tab.known, tab.now, disk);
          tab.known = tab.now;
        };
        for (const { tab: index, what } of acts) {
          const tab = tabs[index]!;
          const { readings } = tab.now;
          minute += 1;
          if (what === 'add') {
            // Both tabs number their readings alike, as if the other were not there.
            const added = reading(`r${readings.length + 1}`, minute);
            entered.add(added.at);
            tab.now = { ...tab.now, readings: [...readings, added] };
          } else if (what === 'undo' && readings.length > 0) {
            takenBack.add(readings.at(-1)!.at);
            tab.now = { ...tab.now, readings: readings.slice(0, -1) };
          } else if (what === 'save') save(tab);
          else if (what === 'look') {
            save(tab);
            tab.known = disk;
            tab.now = disk;
          }
        }
        for (const tab of tabs) save(tab);
        const kept = disk.readings.map(({ at }) => at);
        expect(new Set(kept)).toEqual(new Set([...entered].filter((at) => !takenBack.has(at))));
        expect(new Set(ids(disk)).size).toBe(kept.length);
        expect(restoreJob(disk)).toEqual(disk);
      }),
      { numRuns: 300 },
    );
  });
});
