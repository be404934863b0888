import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { exportJob } from '../../src/notebook/exchange.ts';
import type { Job } from '../../src/notebook/job.ts';
import oldJob from '../../src/notebook/job-version-1.fixture.json' with { type: 'json' };
import { bringIn, button, lookAtFile, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { atJack, everythingStored, jobCalled } from './notebook-data.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const saved = async (page: Page, name: string): Promise<string> => {
  const downloading = page.waitForEvent('download');
  await button(page, name).click();
  return readFileSync(await (await downloading).path(), 'utf8');
};
const jobsIn = (text: string): readonly Job[] => (JSON.parse(text) as { jobs: Job[] }).jobs;
const bar = (page: Page) => page.getByRole('complementary', { name: 'Storage' });
const measured = () =>
  jobCalled('blue', 'The blue one', { readings: [atJack('r1', '2026-03-01T11:00:00Z')] });

/** A page of the app's address that is not the app, to make a database before it does. */
async function besideTheApp(page: Page, address: string): Promise<void> {
  await page.goto(`${address}manifest.webmanifest`);
}

test('a phone with no room left: the browser itself refuses, nothing is lost, and it is stored later', async ({
  app,
  page,
}) => {
  // How much the browser gives is set from outside (Chrome DevTools Protocol, Storage.overrideQuotaForOrigin).
  const devtools = await page.context().newCDPSession(page);
  const quota = (quotaSize: number) =>
    devtools.send('Storage.overrideQuotaForOrigin', {
      origin: new URL(app.address).origin,
      quotaSize,
    });
  await quota(20_000_000);
  await bringIn(page, app.address, exportJob(measured()));
  await onScreen(page, 'asking');
  await fillUp(page);
  // The database tidies itself up at times, and has room again: less than it uses is full for sure.
  await quota(1_000_000);
  await button(page, 'My own reading').click();
  await button(page, 'Enter it').click();
  await onScreen(page, 'asking');
  await type(page, '8.4k');
  await onScreen(page, 'storage-failed');
  await expect(page.getByRole('alert')).toContainText('There is no room left on this device.');
  expect((await storedJob(page)).readings).toHaveLength(1);
  await button(page, 'Go on anyway').click();
  await expect(bar(page)).toContainText('There is no room left on this device.');
  expect(jobsIn(await saved(page, 'Save all as a file'))[0]?.readings).toHaveLength(2);
  await expect(bar(page)).toContainText('Saved as a file.');
  // The page may not be closed by a slip.
  let asked = 0;
  page.on('dialog', (dialog) => {
    asked += 1;
    return dialog.dismiss();
  });
  await page.goto('about:blank').catch(() => undefined);
  expect(asked).toBe(1);
  await bar(page).getByRole('button', { name: 'Try again' }).click();
  await expect(bar(page)).toContainText('Tried again: it is still not stored.');
  await expect(bar(page)).toContainText('There is no room left on this device.');
  await quota(200_000_000);
  await bar(page).getByRole('button', { name: 'Try again' }).click();
  await expect(bar(page)).toHaveCount(0);
  expect((await storedJob(page)).readings).toHaveLength(2);
});

test('a browser that stores nothing: the whole way works, and leaves as a file', async ({
  app,
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Not in this window.', 'SecurityError');
    };
  });
  await page.goto(app.address);
  await expect(bar(page)).toContainText('This browser stores nothing for Lugwise');
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Private', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await type(page, '8.4k');
  await onScreen(page, 'changed');
  await expect(bar(page)).toBeVisible();
  const [job] = jobsIn(await saved(page, 'Save all as a file'));
  expect(job).toMatchObject({
    title: 'Private',
    readings: [{ seen: { kind: 'ohms', ohms: 8400 } }],
  });
});

test('an older app on a newer notebook says so, and hands over what is stored', async ({
  app,
  page,
}) => {
  await bringIn(page, app.address, exportJob(measured()));
  await onScreen(page, 'asking');
  await besideTheApp(page, app.address);
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lugwise', 99);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );
  await page.goto(app.address);
  await expect(bar(page)).toContainText('written by a newer Lugwise');
  const jobs = jobsIn(await saved(page, 'Save all as a file'));
  expect(jobs).toEqual([measured()]);
  expect((await everythingStored(page))['jobs']).toEqual([measured()]);
});

test('a notebook of the first version is taken over with all that is in it', async ({
  app,
  page,
}) => {
  await besideTheApp(page, app.address);
  await page.evaluate(
    (job) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lugwise', 1);
        opening.onupgradeneeded = () => opening.result.createObjectStore('jobs', { keyPath: 'id' });
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction('jobs', 'readwrite');
          tx.objectStore('jobs').put(job);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    oldJob as unknown,
  );
  await page.goto(app.address);
  await page
    .getByRole('link', { name: /^A job of version 1/ })
    .first()
    .click();
  await onScreen(page, 'cautions', 'symptom', 'asking');
  await page.goto(`${app.address}#/job/old-1/record`);
  await page.getByText('Another name for it').click();
  await page.getByLabel('Name of the job').fill('Renamed');
  await button(page, 'Rename').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Renamed');
  const { jobs, photos, bin } = await everythingStored(page);
  expect([photos, bin]).toEqual([[], []]);
  expect(jobs).toMatchObject([
    { version: 2, title: 'Renamed', readings: oldJob.readings, circuit: oldJob.circuit },
  ]);
});

test('damaged records are named, leave as a file untouched, and keep no other out', async ({
  app,
  page,
}) => {
  await bringIn(page, app.address, exportJob(measured()));
  await onScreen(page, 'asking');
  const broken = { ...measured(), id: 'broken', title: 'Half written', readings: [{ id: 'r1' }] };
  const foreign = { id: 'foreign' };
  await putRaw(page, [broken, foreign]);
  await page.goto(`${app.address}#/`);
  await page.reload();
  const row = page.locator('h2:has-text("On the bench") + ul > li', { hasText: 'Half written' });
  await expect(row).toContainText('The stored job is damaged.');
  await expect(row).toContainText('readings[0].ask: is missing');
  await expect(page.getByRole('link', { name: /^The blue one/ }).first()).toBeVisible();
  const downloading = page.waitForEvent('download');
  await row.getByRole('button', { name: 'Save as a file' }).click();
  const file = readFileSync(await (await downloading).path(), 'utf8');
  expect(JSON.parse(file)).toEqual(broken);
  await page.goto(`${app.address}#/notebook`);
  const all = await saved(page, 'Save all as a file');
  expect(jobsIn(all)).toEqual([measured(), broken, foreign]);
  await lookAtFile(page, app.address, all);
  await expect(page.locator('.list-row', { hasText: 'Half written' })).toContainText(
    'It cannot be read: readings[0].ask: is missing',
  );
  await page.goto(`${app.address}#/`);
  await row.getByRole('button', { name: 'Remove' }).click();
  await expect(row).toHaveCount(0);
  await expect(page.getByText('Removed: Half written.')).toBeVisible();
});

test('a damaged sheet of leads leaves as a file, is removed, and put back as it was', async ({
  app,
  page,
}) => {
  const broken = { id: 'torn', format: 'lugwise-pickup', title: 'Torn pickup', readings: 3 };
  await page.goto(app.address);
  await expect(page.getByText('Do two pickups fight')).toBeVisible();
  await putRaw(page, [broken], 'sheets');
  await page.reload();
  const row = page.locator('li', { hasText: 'Torn pickup' });
  await expect(row).toContainText('is damaged');
  const downloading = page.waitForEvent('download');
  await row.getByRole('button', { name: 'Save as a file' }).click();
  expect(JSON.parse(readFileSync(await (await downloading).path(), 'utf8'))).toEqual(broken);
  await row.getByRole('button', { name: 'Remove' }).click();
  await expect(row).toHaveCount(0);
  await expect(page.getByText('Removed: Torn pickup.')).toBeVisible();
  await button(page, 'Put back').click();
  await expect(row).toContainText('is damaged');
  await page.reload();
  await expect(row).toContainText('is damaged');
});

test('a database that no Lugwise made is left alone, and what is in it leaves as a file', async ({
  app,
  page,
}) => {
  await besideTheApp(page, app.address);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('lugwise', 3);
        opening.onupgradeneeded = () => opening.result.createObjectStore('jobs', { keyPath: 'id' });
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      }),
  );
  await putRaw(page, [measured()]);
  await page.goto(app.address);
  await expect(bar(page)).toContainText('What this device stored for Lugwise is damaged.');
  expect(jobsIn(await saved(page, 'Save all as a file'))).toEqual([measured()]);
});

test('two tabs that read the same guitar at once keep each other’s readings', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(90_000);
  await bringIn(page, app.address, exportJob(jobCalled('shared', 'Shared')));
  await onScreen(page, 'asking', 'symptom');
  const other = await page.context().newPage();
  await other.goto(`${app.address}#/job/shared`);
  for (const tab of [page, other]) {
    if ((await onScreen(tab, 'asking', 'symptom')) === 'symptom')
      await button(tab, 'Not tried yet').click();
    await onScreen(tab, 'asking');
  }
  const figures = ['8.1k', '8.2k', '8.3k', '8.4k', '8.5k', '8.6k'];
  for (let at = 0; at < figures.length; at += 2)
    await Promise.all(
      [page, other].map(async (tab, which) => {
        await button(tab, 'My own reading').click();
        await button(tab, 'Enter it').click();
        await onScreen(tab, 'asking');
        await type(tab, figures[at + which]!);
        await onScreen(tab, 'changed');
        await button(tab, 'Go on').click();
        await onScreen(tab, 'asking', 'verdict');
      }),
    );
  const { readings } = await storedJob(page);
  const ohms = readings.flatMap(({ seen }) => (seen.kind === 'ohms' ? [seen.ohms] : []));
  expect(ohms.sort()).toEqual([8100, 8200, 8300, 8400, 8500, 8600]);
  expect(new Set(readings.map(({ id }) => id)).size).toBe(readings.length);
});

/** Other work takes all the room there is: at the end not even a hundred bytes are taken. */
async function fillUp(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('other-work', 1);
      opening.onupgradeneeded = () =>
        opening.result.createObjectStore('pile', { autoIncrement: true });
      opening.onsuccess = () => resolve(opening.result);
    });
    const isTaken = (size: number) =>
      new Promise<boolean>((resolve) => {
        const tx = db.transaction('pile', 'readwrite');
        // What can be made smaller would be.
        const noise = new Uint8Array(size).map(() => 256 * Math.random());
        tx.objectStore('pile').put(noise).onerror = (event) => event.preventDefault();
        tx.oncomplete = () => resolve(true);
        tx.onabort = () => resolve(false);
      });
    for (const size of [1_000_000, 100_000, 10_000, 1000, 100])
      for (let tries = 0; tries < 40 && (await isTaken(size)); tries++);
    db.close();
  });
}

/** Puts records past all checks, as a broken app would. */
async function putRaw(
  page: Page,
  records: readonly unknown[],
  store: 'jobs' | 'sheets' = 'jobs',
): Promise<void> {
  await page.evaluate(
    ([all, name]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('lugwise');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const tx = opening.result.transaction(name, 'readwrite');
          for (const record of all) tx.objectStore(name).put(record);
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [records, store] as const,
  );
}
