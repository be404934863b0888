import type { Page } from '@playwright/test';
import { button, onScreen, startHunt } from './hunting.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** As a phone ends a page that is out of sight: without a word. */
async function endedAndOpened(page: Page): Promise<Page> {
  const address = page.url();
  await page.close({ runBeforeUnload: false });
  const again = await page.context().newPage();
  await again.goto(address);
  return again;
}

test('what is half told when the phone ends the page stands there again: sounds, a guitar, leads, values', async ({
  app,
  page,
}) => {
  test.setTimeout(120_000);
  await page.goto(app.address);

  // A guitar with a change made to it.
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page
    .getByLabel(/three single coils, 5-position blade/i)
    .first()
    .check();
  await page.getByLabel('Your name for the guitar').fill('Half told');
  await page.getByLabel('It is left-handed').check();
  let tab = await endedAndOpened(page);
  await expect(tab.getByText('Kept as you left it.')).toBeVisible();
  await expect(tab.getByLabel('Your name for the guitar')).toHaveValue('Half told');
  await expect(tab.getByLabel(/three single coils, 5-position blade/i).first()).toBeChecked();
  await expect(tab.getByLabel('It is left-handed')).toBeChecked();
  await button(tab, 'Begin afresh').click();
  await expect(tab.getByLabel('Your name for the guitar')).toHaveValue('');
  await expect(tab.getByText('Kept as you left it.')).toHaveCount(0);

  // Sounds of two positions: kept until they are in the job, and not beyond.
  await tab.getByRole('link', { name: 'Back' }).click();
  await startHunt(tab, { wiring: /two two-conductor pickups/i, title: 'Heard', open: true });
  const told = tab.locator('.place-seen');
  await tab
    .locator('.chip', { hasText: /^Silent/ })
    .first()
    .click();
  await tab
    .locator('.chip', { hasText: /^Normal/ })
    .first()
    .click();
  await expect(told.filter({ hasText: /^(silent|normal)$/ })).toHaveCount(2);
  tab = await endedAndOpened(tab);
  await onScreen(tab, 'symptom');
  await expect(tab.locator('.place-seen', { hasText: /^(silent|normal)$/ })).toHaveCount(2);
  await button(tab, 'Go on').click();
  await onScreen(tab, 'cautions');
  await button(tab, 'The guitar is unplugged').click();
  await onScreen(tab, 'asking');
  const job = tab.url();

  // A value that was measured.
  await tab.goto(`${job}/values`);
  const measured = (of: Page) =>
    of
      .locator('.value-row', { hasText: /volume/i })
      .getByLabel('Measured')
      .first();
  await measured(tab).fill('487k');
  tab = await endedAndOpened(tab);
  await expect(measured(tab)).toHaveValue('487k');
  await button(tab, 'Keep these').click();
  await onScreen(tab, 'asking');
  await tab.goto(`${job}/values`);
  await expect(measured(tab)).toHaveValue('487 kΩ');
  await expect(tab.getByText('Kept as you left it.')).toHaveCount(0);

  // Leads of a pickup.
  await tab.goto(`${app.address}#/leads`);
  await tab.getByLabel('Colour of lead 1').fill('violet');
  tab = await endedAndOpened(tab);
  await expect(tab.getByLabel('Colour of lead 1')).toHaveValue('violet');

  // Nothing is left of what became a job.
  const left = await tab.evaluate(() => Object.keys(JSON.parse(localStorage['lugwise-half-told'])));
  expect(left).toEqual(['leads']);
});
