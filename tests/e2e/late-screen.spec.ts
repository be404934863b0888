import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { expect, test } from './served-app.ts';

// Requests that a service worker makes cannot be held from here.
test.use({ serviceWorkers: 'block' });

test('a screen whose code comes just after it was asked for is shown', async ({ app, page }) => {
  // Preact runs effects after the next frame, or after 35 ms where none comes: here that takes long enough for the code to come first.
  await page.addInitScript(() => {
    const wait = window.setTimeout.bind(window);
    const long = 1500;
    window.requestAnimationFrame = (then) => wait(() => then(performance.now()), long);
    window.setTimeout = ((then: () => void, after?: number) =>
      wait(then, after === 35 ? long : after)) as typeof window.setTimeout;
  });
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(/import-job/, async (route) => {
    await held;
    await route.continue();
  });
  const asked = page.waitForRequest(/import-job/);
  await page.goto(app.address);
  await asked;
  await page.getByRole('link', { name: /bring in a job/i }).click();
  await expect(page.getByRole('heading', { name: 'One moment …' })).toBeVisible();
  letThrough();
  await expect(page.getByLabel('From a file')).toBeVisible();
});

test('a screen that was answered says so until the next one is drawn', async ({ app, page }) => {
  await page.goto(app.address);
  await startHunt(page, { wiring: /one humbucker, one volume/i, title: 'Answered', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await page.evaluate(() => {
    const seen = { busy: 0, again: 0 };
    Object.assign(window, { seen });
    new MutationObserver(() => {
      const screen = document.querySelector('[data-screen=asking]');
      if (screen?.getAttribute('aria-busy') === 'true') seen.busy += 1;
      else if (screen && seen.busy > 0) seen.again += 1;
    }).observe(document, { subtree: true, attributeFilter: ['aria-busy'] });
  });
  await type(page, 'OL');
  await onScreen(page, 'changed');
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { busy: number; again: number } }).seen,
  );
  expect(seen.busy).toBeGreaterThan(0);
  expect(seen.again).toBe(0);
});
