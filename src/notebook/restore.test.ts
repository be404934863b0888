import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { emptyJob, fullJob } from './job.fixture.ts';
import firstVersion from './job-version-1.fixture.json' with { type: 'json' };
import { migrated, restoreJob } from './restore.ts';

type Loose = Record<string, unknown>;

/** A job as plain data with the value at `path` replaced, or the key removed for undefined. */
function altered(path: string, value: unknown): unknown {
  const job = JSON.parse(JSON.stringify(fullJob()));
  const keys = path.replace(/\[(\d+)\]/g, '.$1').split('.');
  const last = keys.pop()!;
  let at = job as Loose;
  for (const key of keys) at = at[key] as Loose;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return job;
}

describe('everything loaded passes one door', () => {
  it.each(startingWirings.map(({ id }) => id))('takes a job on %s unchanged', (wiring) => {
    const job = fullJob(wiring);
    const raw = JSON.parse(JSON.stringify(job));
    expect(restoreJob(raw)).toEqual(job);
    // The order of keys decides whether two asks are the same text.
    expect(JSON.stringify(restoreJob(raw))).toBe(JSON.stringify(job));
  });

  it('takes a job without readings, and one closed', () => {
    expect(restoreJob(emptyJob())).toEqual(emptyJob());
    const closed = { ...emptyJob(), closedAt: emptyJob().changedAt };
    expect(restoreJob(closed)).toEqual(closed);
  });

  it.each([
    [
      'readings[0].seen.ohms',
      -5,
      'readings[0].seen.ohms: expected a number of ohms from 0 to 1e12 or "open", got -5',
    ],
    [
      'readings[0].seen.ohms',
      null,
      'readings[0].seen.ohms: expected a number of ohms from 0 to 1e12 or "open", got null',
    ],
    ['readings[0].seen.ohms', undefined, 'readings[0].seen.ohms: is missing'],
    [
      'readings[1].seen.kind',
      'heard',
      'readings[1].seen.kind: expected "ohms" or "beep" or "turn" or "flex" or "tap" or "farads" or "listen" or "touch" or "hum" or "look" or "pole", got "heard"',
    ],
    [
      'readings[2].seen',
      { kind: 'tap', swing: 'plus' },
      'readings[2].seen.kind: expected "beep" as asked, got "tap"',
    ],
    [
      'readings[0].ask.red',
      'jack.tipp',
      'readings[0].ask.red: there is no lug or lead end called jack.tipp in this guitar',
    ],
    [
      'readings[0].ask.setting.knobs',
      { treble: 10 },
      'readings[0].ask.setting: the setting names a knob "treble" that this guitar does not have',
    ],
    [
      'readings[0].ask.setting.knobs.volume',
      11,
      'readings[0].ask.setting.knobs.volume: expected a knob figure from 0 to 10, got 11',
    ],
    [
      'readings[0].ask.setting.positions',
      { selector: 'bridge' },
      'readings[0].ask.setting: the setting names a switch "selector" that this guitar does not have',
    ],
    [
      'readings[0].ask.setting.lifted',
      ['nothing@to'],
      'readings[0].ask.setting: the setting lifts nothing@to, which is no joint of this guitar',
    ],
    [
      'readings[3].ask.pot',
      'bridgeSlug',
      'readings[3].ask.pot: "bridgeSlug" is a coil; expected a pot',
    ],
    ['readings[5].ask.coil', 'ghost', 'readings[5].ask.coil: there is no part called "ghost"'],
    ['readings[1].id', 'r1', 'readings[1].id: two readings are called "r1"'],
    ['readings[0].round', 3, 'readings[0].round: expected at most 1, the number of repairs, got 3'],
    ['readings[0].round', 0.5, 'readings[0].round: expected a whole number, got 0.5'],
    [
      'readings[0].at',
      'yesterday',
      'readings[0].at: expected a time as in "2026-03-01T18:30:00Z", got "yesterday"',
    ],
    ['readings[0].note', 'x', 'readings[0]: "note" is not a key that is known here'],
    [
      'refused[0].black',
      'x.y',
      'refused[0].black: there is no lug or lead end called x.y in this guitar',
    ],
    ['refusedAt', [], 'refusedAt: expected one time for each of the 1 refused, got 0'],
    ['access', 'ajar', 'access: expected "closed" or "open", got "ajar"'],
    ['meter.limit', 5, 'meter.limit: expected a number of ohms from 1000 to 1e12, got 5'],
    [
      'circuit.parts[0].ohms.nominal',
      -4300,
      'circuit.parts[0].ohms.nominal: expected a number of ohms from 0.001 to 1e9, got -4300',
    ],
    [
      'circuit.leads[0].to',
      'volume.9',
      'circuit: lead hot ends on volume.9, which is no lug of this guitar',
    ],
    ['circuit.parts', [], 'circuit: the circuit has no parts: place at least a pickup and a jack'],
    [
      'circuit.parts[0].kind',
      'tube',
      /^circuit\.parts\[0\]\.kind: expected "coil" or .* got "tube"$/,
    ],
    [
      'circuit.parts[0].id',
      'constructor',
      'circuit.parts[0].id: expected a name of letters, digits, - and _ that starts with a letter, got "constructor"',
    ],
    [
      'title',
      'x'.repeat(201),
      'title: expected a title in words of at most 200 characters, got one of 201',
    ],
    ['readings', 'many', 'readings: expected a list, got "many"'],
    [
      'readings',
      new Array(2001).fill(null),
      'readings: expected a list of 0 to 2000, got one of 2001',
    ],
    ['format', 'other', 'format: expected "lugwise-job", got "other"'],
    ['version', '1', 'version: expected a whole number from 1, got "1"'],
    [
      'version',
      3,
      'version: the job was written by a newer Lugwise (version 3); this one reads up to version 2. Update it, then open the job again',
    ],
  ])('%s: says what and where', (path, value, sentence) => {
    expect(() => restoreJob(altered(path, value))).toThrow(
      typeof sentence === 'string' ? expect.objectContaining({ message: sentence }) : sentence,
    );
  });

  it.each([[null], [undefined], [[]], ['text'], [7]])('%j is no job', (raw) => {
    expect(() => restoreJob(raw)).toThrow('This is not a job');
  });

  it('refuses a key that would reach the prototype', () => {
    const text = JSON.stringify(fullJob()).replace('"knobs":{', '"knobs":{"__proto__":5,');
    expect(() => restoreJob(JSON.parse(text))).toThrow('the key "__proto__"');
    const top = JSON.stringify(fullJob()).replace('{', '{"__proto__":{"closedAt":"x"},');
    expect(() => restoreJob(JSON.parse(top))).toThrow('"__proto__" is not a key');
  });
});

describe('an older version is brought up step by step', () => {
  const steps = {
    1: (job: object) => ({ ...job, meter: 'one' }),
    2: (job: object) => ({ ...job, meter: `${(job as { meter: string }).meter}, two` }),
  };
  const old = { format: 'lugwise-job', version: 1 };

  it('each step sees what the one before it made', () => {
    expect(migrated(old, steps, 3)).toEqual({ ...old, version: 3, meter: 'one, two' });
    expect(old.version).toBe(1);
  });

  it('a file of version 1 becomes a job on a guitar of its own', () => {
    const before = structuredClone(firstVersion);
    const job = restoreJob(firstVersion);
    expect(job).toEqual({
      ...before,
      version: 2,
      guitar: { id: 'old-1', title: 'A job of version 1' },
    });
    expect(firstVersion).toEqual(before);
  });

  it('says when a step is missing', () => {
    expect(() => migrated(old, {}, 2)).toThrow('there is no step from version 1 to the next');
  });
});
