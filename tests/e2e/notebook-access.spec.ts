import type { Page } from '@playwright/test';
import { exportJob } from '../../src/notebook/exchange.ts';
import type { Job } from '../../src/notebook/job.ts';
import { bringIn, button, lookAtFile, onScreen, overflow } from './hunting.ts';
import { atJack, cameraPicture, jobCalled, notebookOf, threeJobs } from './notebook-data.ts';
import { expectReadable } from './readable.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000, viewport: { width: 320, height: 640 } });

/** What stands on this screen can be read and worked by all, and nothing runs off its side. */
async function expectScreen(page: Page, name: string): Promise<void> {
  await onScreen(page, name);
  await expectReadable(page);
  expect((await overflow(page))[1]).toBe(0);
}

test('jobs and guitars can be read and worked by all, light and dark', { tag: '@long' }, async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  await bringIn(page, app.address, notebookOf(threeJobs()));
  await page.getByRole('searchbox').fill('nothing like it');
  await expectScreen(page, 'home');
  await page.getByRole('searchbox').fill('');
  await expectScreen(page, 'home');
  await page.goto(`${app.address}#/guitar/red`);
  await page.getByText('Another name for the guitar').click();
  await expectScreen(page, 'guitar');
  await page.getByRole('link', { name: 'New job on it' }).click();
  await expectScreen(page, 'next-job');
});

test('photos, what was removed, and a file looked at can be read and worked by all, light and dark', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(180_000);
  await bringIn(page, app.address, notebookOf(threeJobs()));
  await page.goto(`${app.address}#/job/blue/record`);
  const buffer = await cameraPicture(page, 200, 150);
  await page
    .getByLabel('Add a photo')
    .setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer });
  await expect(page.locator('.photos img')).toHaveCount(1);
  await page.getByText('Remove it').click();
  await expectScreen(page, 'record');
  await button(page, 'Remove The blue one').click();
  await onScreen(page, 'home');
  await page.goto(`${app.address}#/notebook`);
  await expect(page.getByText('Put back')).toBeVisible();
  await expectScreen(page, 'notebook');
  const [spring] = threeJobs() as readonly [Job];
  const more = { ...spring, readings: [...spring.readings, atJack('r9', '2026-03-01T12:00:00Z')] };
  const torn = { ...jobCalled('torn', 'Torn'), access: 'ajar' as 'open' };
  await lookAtFile(page, app.address, notebookOf([more, jobCalled('new', 'New one'), torn]));
  await expectScreen(page, 'import-preview');
});

test('the notebook is worked by keys alone', async ({ app, page }) => {
  await bringIn(page, app.address, exportJob(jobCalled('blue', 'The blue one')));
  await page.goto(`${app.address}#/job/blue/record`);
  await onScreen(page, 'record');
  const reach = async (name: string) => {
    for (let steps = 0; steps < 60; steps++) {
      await page.keyboard.press('Tab');
      const words = await page.evaluate(() => {
        const at = document.activeElement;
        return (at?.closest('label')?.textContent ?? at?.textContent ?? '').trim();
      });
      if (words === name) return;
    }
    throw new Error(`“${name}” cannot be reached by the Tab key.`);
  };
  await reach('Add a photo');
  const outline = await page
    .locator('.pick')
    .evaluate((label) => getComputedStyle(label).outlineStyle);
  expect(outline).toBe('solid');
  await reach('Remove it');
  await page.keyboard.press('Enter');
  await reach('Remove The blue one');
  await page.keyboard.press('Enter');
  await onScreen(page, 'home');
  await reach('Put back');
  await page.keyboard.press('Enter');
  await onScreen(page, 'record');
});
