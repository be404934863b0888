import AxeBuilder from '@axe-core/playwright';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { expect, test } from './served-app.ts';
import { withVoice } from './spoken.ts';

test.use({ actionTimeout: 20_000 });

test('a device without a voice says so, and the bench can be worked by all', async ({
  app,
  page,
  complaints,
}) => {
  await page.goto(app.address);
  await page.getByRole('link', { name: /hearing/i }).click();
  await expect(page.getByText(/has no voice/)).toBeVisible();
  await expect(page.getByLabel(/Say where the probes go/)).toHaveCount(0);
  for (const light of ['Bright', 'Dark']) {
    await page.getByLabel(light).check();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations).toEqual([]);
  }
  // The choice outlives the page.
  const ground = () =>
    page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  const dark = await ground();
  await page.reload();
  await expect(page.locator('[data-screen=bench]')).toBeVisible();
  expect(await ground()).toBe(dark);
  expect(complaints).toEqual([]);
});

test('the microphone refused leaves the keys, and says where it can be allowed', async ({
  app,
  page,
}) => {
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () =>
      Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await page.goto(app.address);
  await page.getByRole('link', { name: /hearing/i }).click();
  await button(page, /^Learn my meter/).click();
  await expect(page.getByRole('alert')).toContainText('Allow the microphone');
  await expect(button(page, /^Learn my meter/)).toBeVisible();
});

test('where the probes go, what is healthy and what was seen are spoken', async ({ app, page }) => {
  const said = await withVoice(page);
  await page.goto(app.address);
  await page.getByRole('link', { name: /hearing/i }).click();
  await page.getByLabel(/Say where the probes go/).check();
  await button(page, 'Say something').click();
  await expect.poll(said).toContain('kilo-ohm');
  await page.getByRole('link', { name: 'Done' }).click();
  await startHunt(page, { wiring: /one humbucker, one volume/i, title: 'Spoken', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await expect
    .poll(said)
    .toMatch(/red probe on the tip.*, black probe on .*sleeve.*Healthy: (about )?[\d.]+ kilo-ohm/i);
  await type(page, 'OL');
  await onScreen(page, 'changed');
  await expect.poll(said).toMatch(/open.*not as it should be/);
  expect(await said()).not.toMatch(/Ω|\bOL\b/);
});
