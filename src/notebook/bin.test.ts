import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DAYS_IN_BIN } from './bin.ts';
import { freshDevice, opened, putDeviceAway, putRaw, tab, throwing } from './device.fixture.ts';
import { emptyJob, fullJob, moment } from './job.fixture.ts';
import type { Photo } from './photo.ts';
import { pickupSheet } from './sheet.fixture.ts';

beforeEach(freshDevice);
afterEach(putDeviceAway);

const photo: Photo = {
  id: 'p1',
  job: 'job-1',
  words: 'the jack',
  at: moment(1),
  width: 10,
  height: 10,
  bytes: 4,
  data: Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]),
};
const titles = async () => {
  const notebook = await tab();
  return (await notebook.bin.list()).map(({ what, title }) => `${what}: ${title}`);
};

describe('what is removed', () => {
  it('can be put back from another tab, a job with its photos', async () => {
    const notebook = await tab();
    await notebook.write(fullJob());
    await notebook.sheets.write(pickupSheet());
    await notebook.photos.add(photo);
    await notebook.remove('job-1');
    await notebook.sheets.remove('sheet-1');
    expect(await notebook.list()).toEqual([]);
    expect((await titles()).sort()).toEqual(['jobs: The blue one', 'sheets: The covered one']);
    const later = await tab();
    for (const { id } of await later.bin.list()) await later.bin.putBack(id);
    expect(await later.read('job-1')).toEqual(fullJob());
    expect(await later.sheets.read('sheet-1')).toEqual(pickupSheet());
    expect(await later.photos.of('job-1')).toEqual([photo]);
    expect(await titles()).toEqual([]);
  });

  it('comes back beside what has taken its place', async () => {
    const notebook = await tab();
    await notebook.write(fullJob());
    await notebook.remove('job-1');
    await notebook.write(emptyJob());
    const [removed] = await notebook.bin.list();
    const id = await notebook.bin.putBack(removed!.id);
    expect(id).not.toBe('job-1');
    expect(await notebook.read('job-1')).toEqual(emptyJob());
    expect(await notebook.read(id)).toEqual({ ...fullJob(), id });
  });

  it('may be damaged, and comes back as it was', async () => {
    const torn = { id: 'torn', title: 'Torn', readings: 'none' };
    await putRaw(torn);
    const notebook = await tab();
    await notebook.remove('torn');
    const [removed] = await notebook.bin.list();
    await notebook.bin.putBack(removed!.id);
    expect(JSON.parse(await notebook.rescue('torn'))).toEqual(torn);
  });

  it('goes for good with its photos when the bin is emptied or its days are over', async () => {
    const notebook = await tab();
    await notebook.write(fullJob());
    await notebook.photos.add(photo);
    await notebook.remove('job-1');
    await notebook.bin.empty();
    expect([await titles(), await notebook.photos.size()]).toEqual([[], { count: 0, bytes: 0 }]);
    await notebook.write(emptyJob());
    await notebook.remove('job-1');
    expect(await titles()).toHaveLength(1);
    const days = (count: number) => Date.now() + count * 86_400_000;
    vi.spyOn(Date, 'now').mockReturnValue(days(DAYS_IN_BIN - 1));
    expect(await titles()).toHaveLength(1);
    vi.spyOn(Date, 'now').mockReturnValue(days(DAYS_IN_BIN + 1));
    await vi.waitFor(async () => expect(await titles()).toEqual([]));
  });

  it('stays where it is while there is no room for the bin, unless it is to go for good', async () => {
    const notebook = await tab();
    await notebook.write(fullJob());
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(throwing('QuotaExceededError'));
    await expect(notebook.remove('job-1')).rejects.toMatchObject({ code: 'full' });
    expect(await notebook.read('job-1')).toEqual(fullJob());
    await notebook.remove('job-1', 'forever');
    expect([await notebook.list(), await titles()]).toEqual([[], []]);
  });

  it('is put back in a page that keeps everything itself, too', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const notebook = await tab();
    opened.push(notebook);
    await notebook.write(fullJob());
    await notebook.remove('job-1');
    const [removed] = await notebook.bin.list();
    expect(removed).toMatchObject({ title: 'The blue one' });
    await notebook.bin.putBack(removed!.id);
    expect(await notebook.read('job-1')).toEqual(fullJob());
  });
});
