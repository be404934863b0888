import type { Page } from '@playwright/test';
import { expect, test } from './served-app.ts';

// A newer version must never pull the screen away from a player who holds two probes: it waits.

const root = (page: Page) => page.locator('html');

async function openWithNewerVersionWaiting(page: Page, address: string, publish: () => void) {
  await page.goto(address);
  await expect(root(page)).toHaveAttribute('data-offline', 'ready');
  publish();
  await page.reload();
  await expect(root(page)).toHaveAttribute('data-update', 'waiting');
}

test('a newer version waits, however often the app is opened', async ({ app, page }) => {
  await openWithNewerVersionWaiting(page, app.address, () => app.publish('Newer'));
  await expect(page).toHaveTitle('Lugwise');
  await page.reload();
  await expect(root(page)).toHaveAttribute('data-update', 'waiting');
  await expect(page).toHaveTitle('Lugwise');
});

test('a page opened again while the very first version is being kept is told of no newer one', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await page.waitForFunction(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    // On a busy machine it may be kept before this is asked: then the page is opened again just after.
    return registration?.installing ?? registration?.waiting ?? registration?.active;
  });
  await page.reload();
  await expect(root(page)).toHaveAttribute('data-offline', 'ready');
  await page.waitForFunction(() => navigator.serviceWorker.controller);
  await page.waitForTimeout(300);
  await expect(root(page)).toHaveAttribute('data-update', 'none');
});

test('a tab is not reloaded when another tab agrees to the newer version', async ({
  app,
  page,
}) => {
  await openWithNewerVersionWaiting(page, app.address, () => app.publish('Newer'));
  await page.evaluate(() => {
    document.body.dataset['kept'] = 'as it was';
  });
  const other = await page.context().newPage();
  await other.goto(app.address);
  await other.getByRole('button', { name: 'Use it now' }).tap();
  await expect(other).toHaveTitle('Newer');
  // The first tab still shows what it showed, and still offers the newer version.
  await expect(page.locator('body')).toHaveAttribute('data-kept', 'as it was');
  await expect(root(page)).toHaveAttribute('data-update', 'waiting');
});
