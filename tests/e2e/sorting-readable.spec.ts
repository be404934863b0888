import { exportJob } from '../../src/notebook/exchange.ts';
import { pickupSheet, togetherSheet } from '../../src/notebook/sheet.fixture.ts';
import { bringIn, button, onScreen } from './hunting.ts';
import { expectReadable } from './readable.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

test('every screen of a pickup on the mat can be read and worked by all, light and dark', {
  tag: '@long',
}, async ({ app, page, complaints }) => {
  test.setTimeout(180_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(app.address);
  await page.getByRole('link', { name: /which lead does what/i }).click();
  await onScreen(page, 'sort-telling');
  await expectReadable(page);

  await bringIn(page, app.address, exportJob(pickupSheet()));
  await onScreen(page, 'sort-asking');
  await expectReadable(page);
  await button(page, /Help/).click();
  await onScreen(page, 'sort-help');
  await expectReadable(page);
  await button(page, 'Back to the reading').click();
  // Nothing more can be read: what is known so far is shown.
  for (let left = 0; left < 40; left += 1) {
    if ((await onScreen(page, 'sort-asking', 'sort-result')) === 'sort-result') break;
    await button(page, 'Can’t do it').click();
    await page.locator('[data-screen=waiting]').waitFor({ state: 'detached' });
  }
  await onScreen(page, 'sort-result');
  await expectReadable(page);

  await bringIn(page, app.address, exportJob(togetherSheet()));
  await onScreen(page, 'together-asking', 'together-result');
  await expectReadable(page);
  await page.goto(`${app.address}#/together`);
  await onScreen(page, 'together-telling');
  await expectReadable(page);
  expect(complaints).toEqual([]);
});
