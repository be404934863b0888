import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openFile } from './collection.ts';
import { freshDevice, putDeviceAway, tab } from './device.fixture.ts';
import { exportJob } from './exchange.ts';
import { emptyJob, moment } from './job.fixture.ts';
import { restoreSheet } from './restore-sheet.ts';
import { pickupSheet, togetherSheet } from './sheet.fixture.ts';
import type { PickupSheet } from './sheet.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

const withReading = (sheet: PickupSheet, minute: number): PickupSheet => {
  const [first] = sheet.readings;
  if (!first) throw new Error('a sheet without readings');
  const reading = { ...first, id: `r${sheet.readings.length + 1}`, at: moment(minute) };
  return { ...sheet, readings: [...sheet.readings, reading], changedAt: moment(minute) };
};

describe('a sheet in the notebook', () => {
  it.each([pickupSheet(), togetherSheet()])('is kept as it was: $format', async (sheet) => {
    const first = await tab();
    await first.sheets.write(sheet);
    first.close();
    const second = await tab();
    expect(await second.sheets.read(sheet.id)).toEqual(sheet);
    expect(await second.sheets.list()).toEqual([
      {
        id: sheet.id,
        format: sheet.format,
        title: sheet.title,
        createdAt: sheet.createdAt,
        changedAt: sheet.changedAt,
        readings: sheet.readings.length,
      },
    ]);
    await second.sheets.remove(sheet.id);
    expect(await second.sheets.list()).toEqual([]);
    // Undo of the removal.
    await second.sheets.write(sheet);
    expect(await second.sheets.read(sheet.id)).toEqual(sheet);
  });

  it('keeps what two tabs added, and lets each take back its own', async () => {
    const [a, b] = [await tab(), await tab()];
    await a.sheets.write(pickupSheet());
    const [inA, inB] = [await a.sheets.read('sheet-1'), await b.sheets.read('sheet-1')];
    if (inA.format !== 'lugwise-pickup' || inB.format !== 'lugwise-pickup') throw new Error('no');
    await Promise.all([a.sheets.write(withReading(inA, 10)), b.sheets.write(withReading(inB, 11))]);
    const both = await (await tab()).sheets.read('sheet-1');
    expect(
      both.readings
        .slice(-2)
        .map(({ at }) => at)
        .sort(),
    ).toEqual([moment(10), moment(11)]);
    expect(new Set(both.readings.map(({ id }) => id)).size).toBe(both.readings.length);
    await a.sheets.write(inA);
    const after = await b.sheets.read('sheet-1');
    expect(after.readings.slice(-1).map(({ at }) => at)).toEqual([moment(11)]);
  });

  it('finds room in a notebook from before there were sheets', async () => {
    const old = await openDB('lugwise', 1, {
      upgrade: (fresh) => void fresh.createObjectStore('jobs', { keyPath: 'id' }),
    });
    await old.put('jobs', emptyJob());
    old.close();
    const notebook = await tab();
    await notebook.sheets.write(pickupSheet());
    expect(await notebook.read('job-1')).toEqual(emptyJob());
    expect(await notebook.sheets.read('sheet-1')).toEqual(pickupSheet());
  });

  it('is listed where it is damaged, and can be carried away', async () => {
    const notebook = await tab();
    await notebook.sheets.write(pickupSheet());
    const db = await openDB('lugwise');
    await db.put('sheets', { ...pickupSheet(), seen: null });
    db.close();
    const [line] = await notebook.sheets.list();
    expect(line?.damaged).toContain('seen: expected an object, got null');
    await expect(notebook.sheets.read('sheet-1')).rejects.toMatchObject({ code: 'damaged' });
    expect(JSON.parse(await notebook.sheets.rescue('sheet-1')).title).toBe('The covered one');
  });

  it('lasts for the page where there is no disk, and moves to it later', async () => {
    const { indexedDB } = globalThis;
    Object.assign(globalThis, { indexedDB: undefined });
    const notebook = await tab();
    expect(notebook.place).toBe('memory');
    await notebook.sheets.write(togetherSheet());
    expect(await notebook.sheets.list()).toHaveLength(1);
    Object.assign(globalThis, { indexedDB });
    const next = await notebook.retry();
    expect(next.place).toBe('disk');
    expect(await next.sheets.read('sheet-2')).toEqual(togetherSheet());
    next.close();
  });
});

describe('a sheet as a file', () => {
  it.each([pickupSheet(), togetherSheet()])('comes back whole: $format', (sheet) => {
    expect(openFile(exportJob(sheet))).toMatchObject({ ok: true, sheets: [sheet], jobs: [] });
  });

  it('is told from a job', () => {
    expect(openFile(exportJob(emptyJob()))).toMatchObject({ ok: true, jobs: [emptyJob()] });
  });

  it.each<[string, (sheet: Record<string, unknown>) => void, string]>([
    [
      'a lead too many',
      (raw) => {
        raw['seen'] = { ...pickupSheet().seen, leads: [] };
      },
      'seen.leads: expected a list of 2 to 6, got one of 0',
    ],
    [
      'two leads alike',
      (raw) => {
        const seen = pickupSheet().seen;
        raw['seen'] = { ...seen, leads: seen.leads.map((lead) => ({ ...lead, id: 'lead1' })) };
      },
      'seen: two things are called "lead1End"',
    ],
    [
      'a reading of another point',
      (raw) => {
        (raw['readings'] as { ask: { red: string } }[])[0]!.ask.red = 'lead9End.joint';
      },
      'readings[0].ask.red: there is no lug or lead end called lead9End.joint in this guitar',
    ],
    [
      'a refusal without its time',
      (raw) => {
        raw['refusedAt'] = [];
      },
      'refusedAt: expected one time for each of the 1 refused, got 0',
    ],
    [
      'a newer version',
      (raw) => {
        raw['version'] = 2;
      },
      'version: the job was written by a newer Lugwise (version 2); this one reads up to version 1. Update it, then open the job again',
    ],
  ])('is refused in one line: %s', (_name, spoil, sentence) => {
    const raw = JSON.parse(exportJob(pickupSheet()));
    spoil(raw);
    expect(openFile(JSON.stringify(raw))).toEqual({ ok: false, sentence });
  });

  it('of pickups that play together names its pickups', () => {
    const raw = JSON.parse(exportJob(togetherSheet()));
    raw.readings[0].pickup = 'pickup9';
    expect(() => restoreSheet(raw)).toThrow(
      'readings[0].pickup: there is no pickup called "pickup9"',
    );
    raw.readings[0] = { ...togetherSheet().readings[0], coil: 'b' };
    expect(() => restoreSheet(raw)).toThrow(
      'readings[0].coil: bridge pickup has one coil, which is "a"',
    );
  });
});
