import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { exportCollection } from '../../src/notebook/collection.ts';
import { exportJob } from '../../src/notebook/exchange.ts';
import type { Job } from '../../src/notebook/job.ts';
import { MOST_PHOTOS } from '../../src/notebook/photo.ts';
import { bringIn, button, lookAtFile, onScreen, startHunt } from './hunting.ts';
import {
  atJack,
  cameraPicture,
  everythingStored,
  jobCalled,
  notebookOf,
  threeJobs,
} from './notebook-data.ts';
import { storedJob } from './player.ts';
import { expect as expectSoon, test } from './served-app.ts';

// A large picture takes a busy machine its time.
const expect = expectSoon.configure({ timeout: 20_000 });

test.use({ actionTimeout: 20_000 });

const link = (page: Page, name: string | RegExp) => page.getByRole('link', { name }).first();
const wholePage = async (page: Page, name: string | RegExp): Promise<string> => {
  const downloading = page.waitForEvent('download');
  await button(page, name).click();
  return readFileSync(await (await downloading).path(), 'utf8');
};
const inList = (page: Page, what: string): Promise<readonly string[]> =>
  page.locator(`h2:has-text("${what}") + ul .says`).allTextContents();

test('guitars with their jobs: found, gone on with, renamed and copied', async ({
  app,
  page,
  complaints,
}) => {
  await bringIn(page, app.address, notebookOf(threeJobs()));
  await onScreen(page, 'home');
  await expect.poll(() => inList(page, 'On the bench')).toEqual(['The blue one', 'Café guitar']);
  expect(await inList(page, 'Guitars')).toEqual(['The red one', 'The blue one', 'Café guitar']);

  const search = page.getByRole('searchbox', { name: 'Find a job or a guitar' });
  await search.fill('cafe');
  expect(await inList(page, 'Found')).toEqual([]);
  await expect(page.locator('.list .says')).toHaveText(['Café guitar']);
  await search.fill('HOT lead remake');
  await expect(page.locator('.list .says')).toHaveText(['Red one, spring']);
  await search.fill('zebra');
  await expect(page.getByText('No job has “zebra” in its name')).toBeVisible();
  await search.fill('');

  await link(page, /^The red one/).click();
  await onScreen(page, 'guitar');
  await expect(page.getByRole('row', { name: /volume/i })).toContainText('478');
  await link(page, 'New job on it').click();
  await page.getByLabel('Name of the job').fill('Red one, autumn');
  await button(page, 'Find a fault').click();
  await onScreen(page, 'symptom');
  const next = await storedJob(page);
  expect(next).toMatchObject({
    title: 'Red one, autumn',
    guitar: { id: 'red', title: 'The red one' },
    readings: [],
    repairs: [],
    lastCheck: { check: { celsius: 20 }, readings: [{ id: 'r1' }] },
  });
  expect(next.circuit).toEqual(threeJobs()[0]!.circuit);

  await page.goto(`${app.address}#/guitar/red`);
  await expect(page.locator('h2:has-text("Jobs") + ul .says')).toHaveText([
    'Red one, autumn',
    'Red one, spring',
  ]);
  await page.getByText('Another name for the guitar').click();
  await page.getByLabel('Name of the guitar').fill('Scarlet');
  await button(page, 'Rename').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Scarlet');

  await page.goto(`${app.address}#/job/blue/record`);
  await page.getByText('Another name for it').click();
  await page.getByLabel('Name of the job').fill('Navy');
  await button(page, 'Rename').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Navy');
  await button(page, 'Copy this job').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Navy (copy)');
  await page.goto(`${app.address}#/`);
  await expect.poll(() => inList(page, 'Guitars')).toEqual(['Navy', 'Scarlet', 'Café guitar']);
  expect(complaints).toEqual([]);
});

test('what is removed can be put back, also after the page was opened anew', async ({
  app,
  page,
}) => {
  const [spring] = threeJobs() as readonly [Job];
  await bringIn(page, app.address, exportJob(spring));
  await page.goto(`${app.address}#/job/spring/record`);
  await page.getByLabel('Add a photo').setInputFiles({
    name: 'a.jpg',
    mimeType: 'image/jpeg',
    buffer: await cameraPicture(page, 400, 300),
  });
  await expect(page.locator('.photos img')).toHaveCount(1);
  const before = await everythingStored(page);
  await page.getByText('Remove it').click();
  await button(page, 'Remove Red one, spring').click();
  await onScreen(page, 'home');
  await expect(page.getByText('No guitar yet.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('Removed: Red one, spring.')).toBeVisible();
  await button(page, 'Put back').click();
  await onScreen(page, 'record');
  await expect(page.locator('.photos img')).toHaveCount(1);
  expect(await everythingStored(page)).toEqual(before);

  // Emptied, it is gone for good, its photo with it.
  await page.getByText('Remove it').click();
  await button(page, 'Remove Red one, spring').click();
  await onScreen(page, 'home');
  await page.goto(`${app.address}#/notebook`);
  await button(page, 'Empty it for good').click();
  await button(page, 'Really, for good').click();
  await expect(page.getByText(/^Nothing\. What you remove/)).toBeVisible();
  expect(await everythingStored(page)).toMatchObject({ jobs: [], photos: [], bin: [] });
});

test('everything leaves as one file, and another phone has the same once it is brought in', async ({
  app,
  page,
  browser,
  complaints,
}) => {
  test.setTimeout(120_000);
  await bringIn(page, app.address, notebookOf(threeJobs()));
  await page.goto(`${app.address}#/job/blue/record`);
  await page.getByLabel('Add a photo').setInputFiles({
    name: 'a.jpg',
    mimeType: 'image/jpeg',
    buffer: await cameraPicture(page, 400, 300),
  });
  await expect(page.locator('.photos img')).toHaveCount(1);
  // A drawing that was begun, too.
  await page.goto(`${app.address}#/new`);
  await button(page, 'Change the drawing').click();
  await onScreen(page, 'editor');
  await page.goto(`${app.address}#/notebook`);
  const text = await wholePage(page, 'Save all as a file');

  const other = await (await browser.newContext()).newPage();
  const file = { name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(text) };
  await other.goto(`${app.address}#/import`);
  await other.getByLabel('From a file').setInputFiles(file);
  await onScreen(other, 'import-preview');
  await expect(other.locator('.list .says')).toHaveText([
    'The blue one',
    'Café guitar',
    'Red one, spring',
  ]);
  await expect(other.getByText('1 photo comes with it.')).toBeVisible();
  expect(await everythingStored(other)).toMatchObject({ jobs: [], photos: [] });
  await button(other, 'Bring it in').click();
  await onScreen(other, 'home');
  expect(await everythingStored(other)).toEqual(await everythingStored(page));

  // The same file once more changes nothing.
  await other.goto(`${app.address}#/import`);
  await other.getByLabel('From a file').setInputFiles(file);
  await expect(other.getByText('It is here already, and the same.')).toHaveCount(3);
  await other.context().close();
  expect(complaints).toEqual([]);
});

test('a file that touches a job says what it would change, and adds to it', async ({
  app,
  page,
}) => {
  const here = jobCalled('shared', 'Shared', { readings: [atJack('r1', '2026-03-01T11:00:00Z')] });
  await bringIn(page, app.address, exportJob(here));
  const there: Job = {
    ...here,
    title: 'Shared by two',
    readings: [...here.readings, atJack('r2', '2026-03-01T12:00:00Z', 8300)],
    changedAt: '2026-03-01T12:00:00Z',
  };
  const other = jobCalled('other', 'Not wanted');
  await lookAtFile(page, app.address, notebookOf([there, other]));
  await onScreen(page, 'import-preview');
  await expect(
    page.getByText('1 reading is added. Its name becomes “Shared by two”.'),
  ).toBeVisible();
  await page.getByLabel(/^Not wanted/).uncheck();
  expect((await storedJob(page)).readings).toHaveLength(1);
  await button(page, 'Bring it in').click();
  await onScreen(page, 'asking', 'verdict', 'nothing-left');
  const { jobs } = await everythingStored(page);
  expect(jobs).toHaveLength(1);
  expect(jobs![0]).toMatchObject({
    title: 'Shared by two',
    readings: [{ id: 'r1' }, { id: 'r2' }],
  });
});

test('a notebook with one job that is no good brings in the others and names it', async ({
  app,
  page,
}) => {
  const [spring, blue] = threeJobs() as readonly [Job, Job];
  await lookAtFile(page, app.address, notebookOf([{ ...spring, access: 'ajar' as 'open' }, blue]));
  await onScreen(page, 'import-preview');
  await expect(page.locator('.list-row', { hasText: 'Red one, spring' })).toContainText(
    'It cannot be read: access: expected "closed" or "open", got "ajar"',
  );
  await button(page, 'Bring it in').click();
  await onScreen(page, 'asking', 'symptom');
  expect((await storedJob(page)).id).toBe('blue');
});

test('photos are made small, counted, limited and saved with the job', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(90_000);
  await bringIn(page, app.address, exportJob(jobCalled('blue', 'The blue one')));
  await page.goto(`${app.address}#/job/blue/record`);
  await expect(
    page.getByText(/^0 of 12, 0 kB\. Each is made smaller, to at most 250 kB/),
  ).toBeVisible();
  const add = page.getByLabel('Add a photo');
  const large = await cameraPicture(page);
  expect(large.length).toBeGreaterThan(4 * MOST_PHOTOS.bytes);
  await add.setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: large });
  await expect(page.locator('.photos img')).toHaveCount(1);
  const [photo] = (await everythingStored(page))['photos'] as readonly [Record<string, number>];
  expect(Math.max(photo['width']!, photo['height']!)).toBeLessThanOrEqual(MOST_PHOTOS.edge);
  expect(photo['bytes']).toBeLessThanOrEqual(MOST_PHOTOS.bytes);
  expect(photo['width']! / photo['height']!).toBeCloseTo(1.5, 1);
  await expect
    .poll(() => page.locator('.photos img').evaluate((img: HTMLImageElement) => img.naturalWidth))
    .toBe(photo['width']);

  await add.setInputFiles({
    name: 'b.jpg',
    mimeType: 'image/jpeg',
    buffer: Buffer.from('no picture'),
  });
  await expect(page.getByRole('alert')).toHaveText(
    'This file is no picture that the phone can read.',
  );
  // All but the last come by a file.
  const data = new Uint8Array(await cameraPicture(page, 200, 150));
  const photos = Array.from({ length: MOST_PHOTOS.ofJob - 2 }, (_, at) => ({
    id: `small-${at}`,
    job: 'blue',
    words: 'The blue one',
    at: '2026-03-01T10:00:00Z',
    width: 200,
    height: 150,
    bytes: data.length,
    data,
  }));
  const { jobs } = await everythingStored(page);
  const at = '2026-03-02T10:00:00Z';
  await bringIn(page, app.address, exportCollection({ jobs: jobs!, sheets: [], photos }, at));
  await page.goto(`${app.address}#/job/blue/record`);
  await expect(page.locator('.photos img')).toHaveCount(MOST_PHOTOS.ofJob - 1);
  await add.setInputFiles({ name: 'c.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(data) });
  await expect(page.locator('.photos img')).toHaveCount(MOST_PHOTOS.ofJob);
  await expect(add).toHaveCount(0);
  const text = await wholePage(page, 'Save as a file');
  expect((JSON.parse(text) as { photos: unknown[] }).photos).toHaveLength(MOST_PHOTOS.ofJob);
  await page
    .getByRole('button', { name: /^Remove the photo/ })
    .first()
    .click();
  await expect(page.locator('.photos img')).toHaveCount(MOST_PHOTOS.ofJob - 1);
  await page.goto(`${app.address}#/notebook`);
  await expect(page.getByText(/^11, .* of 30\.0 MB$/)).toBeVisible();
  await button(page, /^Put back Photo: The blue one/).click();
  await expect(page.getByText(/^12, .* of 30\.0 MB$/)).toBeVisible();
  expect(complaints).toEqual([]);
});

test('the browser is asked to keep what is stored', async ({ app, page }) => {
  await page.addInitScript(() => {
    let kept = false;
    navigator.storage.persist = async () => {
      kept = true;
      return true;
    };
    navigator.storage.persisted = async () => kept;
  });
  await page.goto(`${app.address}#/notebook`);
  await expect(page.getByText('The browser may clear it')).toBeVisible();
  await page.goto(`${app.address}#/`);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Kept' });
  await page.goto(`${app.address}#/notebook`);
  await expect(page.getByText('has promised not to clear it')).toBeVisible();
});
