import type { Page } from '@playwright/test';
import { simulate } from '../simulated/index.ts';
import { button, lookAtFile, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { answer, askOn, playUntilAnswered, storedJob } from './player.ts';
import { expectReadable } from './readable.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const oneKnob = { wiring: /^one humbucker/i, title: 'One knob', open: true };

async function firstQuestion(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await startHunt(page, oneKnob);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
}

/** From now on the browser has no room to store anything, until it is emptied. */
async function fillPhone(page: Page): Promise<{ empty(): Promise<void> }> {
  const put = await page.evaluateHandle(() => IDBObjectStore.prototype.put);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('No room.', 'QuotaExceededError');
    };
  });
  return {
    empty: () =>
      page.evaluate((before) => {
        IDBObjectStore.prototype.put = before;
      }, put),
  };
}

test('every screen of a hunt can be read and worked by all, light and dark', {
  tag: '@long',
}, async ({ app, page, complaints }) => {
  test.setTimeout(300_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(app.address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.locator('summary', { hasText: 'Values of its parts' }).click();
  await expectReadable(page);
  await page.getByRole('link', { name: 'Back' }).click();
  await startHunt(page, { ...oneKnob, open: false });
  await expectReadable(page);
  await button(page, /Do the knobs work/).click();
  await expectReadable(page);
  await button(page, 'Not tried yet').click();
  await expectReadable(page);
  await readCautions(page);
  await expectReadable(page);
  await button(page, 'OL? Help').click();
  await expectReadable(page);
  await button(page, 'Back to the reading').click();
  await button(page, 'Jumps about').click();
  await expectReadable(page);
  await button(page, 'It is steady now').click();
  await button(page, 'My own reading').click();
  await page.getByLabel('Two other points').check();
  await page.locator('summary').click();
  await expectReadable(page);
  await button(page, 'Back').click();
  await onScreen(page, 'asking');
  await type(page, '1');
  await expectReadable(page);
  await button(page, '1 Ω').click();
  await onScreen(page, 'changed', 'doubtful');
  await expectReadable(page);
  await button(page, 'Undo').click();
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'screens');
  const full = await fillPhone(page);
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'storage-failed');
  await expectReadable(page);
  await full.empty();
  await button(page, 'Try again').click();
  await onScreen(page, 'changed');
  await expectReadable(page);
  const seen = new Set<string>();
  expect(
    await playUntilAnswered(page, guitar, 20, async (screen) => {
      if (seen.has(screen)) return;
      seen.add(screen);
      await expectReadable(page);
    }),
  ).toBe('verdict');
  expect(seen).toContain('opening');
  await expectReadable(page);
  await button(page, 'How to mend it').click();
  await expectReadable(page);
  await button(page, 'Back').click();
  await page.getByRole('link', { name: 'See it on the wiring' }).click();
  await expectReadable(page);
  await page.locator('.wiring .whole-target').last().press('Enter');
  await expect(page.locator('.panel h2')).toBeFocused();
  await expectReadable(page);
  await page.locator('.strip-job').click();
  await expectReadable(page);
  await page.getByRole('link', { name: 'Values and meter' }).click();
  await expectReadable(page);
  await page.locator('.strip-job').click();
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await expectReadable(page);
  await page.goto(`${app.address}#/`);
  await onScreen(page, 'home');
  await expectReadable(page);
  await lookAtFile(page, app.address, '{}');
  await page.getByRole('alert').waitFor();
  await expectReadable(page);
  await page.goto(`${app.address}#/job/none`);
  await onScreen(page, 'missing');
  await expectReadable(page);
  expect(complaints).toEqual([]);
});

test('a repair is checked by the readings that failed, and the job closed', async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  await firstQuestion(page, app.address);
  const { circuit } = await storedJob(page);
  const broken = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'recheck');
  expect(await playUntilAnswered(page, broken)).toBe('verdict');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('output jack');
  await button(page, 'How to mend it').click();
  await button(page, 'I did it').click();
  await onScreen(page, 'asking');
  await expect(page.locator('.asking-why')).toContainText('this did not fit before');
  expect(await playUntilAnswered(page, simulate(circuit, [], 'recheck'))).toBe('verdict');
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  expect((await storedJob(page)).repairs).toHaveLength(1);
  await page.getByRole('link', { name: 'Home' }).last().click();
  await expect(page.getByText('No job is open.')).toBeVisible();
  await page.getByRole('link', { name: /One knob/ }).click();
  await onScreen(page, 'guitar');
  await expect(page.getByRole('link', { name: /closed/ })).toBeVisible();
});

test('a phone that is full says so, keeps the entry, and stores it later', async ({
  app,
  page,
}) => {
  await firstQuestion(page, app.address);
  const full = await fillPhone(page);
  await type(page, '8.9k');
  await onScreen(page, 'storage-failed');
  await expect(page.getByRole('alert')).toContainText('no room left');
  await full.empty();
  await button(page, 'Try again').click();
  await onScreen(page, 'changed');
  expect((await storedJob(page)).readings).toHaveLength(1);
});

test('a point out of reach is not asked again, and undo asks it', async ({ app, page }) => {
  await firstQuestion(page, app.address);
  const first = await page.locator('.screen').textContent();
  await button(page, 'Can’t reach it').click();
  await expect(page.locator('.screen')).not.toHaveText(first ?? '');
  await onScreen(page, 'asking');
  expect((await storedJob(page)).refused).toHaveLength(1);
  await button(page, 'Undo').click();
  await onScreen(page, 'asking');
  expect((await storedJob(page)).refused).toHaveLength(0);
});

test('a job leaves as a file and comes back on another phone', async ({ app, page, browser }) => {
  await firstQuestion(page, app.address);
  await type(page, '8.9k');
  await onScreen(page, 'changed');
  await page.locator('.strip-job').click();
  const downloading = page.waitForEvent('download');
  await button(page, 'Save as a file').click();
  const file = await (await downloading).path();
  const other = await (await browser.newContext()).newPage();
  await other.goto(app.address);
  await other.getByRole('link', { name: /bring in a job/i }).click();
  await other.getByLabel('From a file').setInputFiles(file);
  await onScreen(other, 'import-preview');
  await button(other, 'Bring it in').click();
  await onScreen(other, 'asking', 'opening', 'verdict');
  const [here, there] = [await storedJob(page), await storedJob(other)];
  expect(there.readings).toEqual(here.readings);
  await other.context().close();
});

test('a file that is no job is refused in one sentence, and nothing is stored', async ({
  app,
  page,
}) => {
  await lookAtFile(page, app.address, '{"format":"lugwise-job","version":1}');
  await expect(page.getByRole('alert')).toBeVisible();
  await page.goto(`${app.address}#/`);
  await expect(page.getByText('No guitar yet.')).toBeVisible();
});

test('the focus goes to the title of each new screen', async ({ app, page }) => {
  await firstQuestion(page, app.address);
  await expect(page.locator('h1')).toBeFocused();
  await button(page, 'OL? Help').click();
  await expect(page.locator('h1')).toBeFocused();
});
