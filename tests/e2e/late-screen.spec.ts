import type { Page } from '@playwright/test';
import { DrawingBoard } from './drawing-board.ts';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { storedJob } from './player.ts';
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

/** What works sums out comes only once it is let through. */
async function holdSums(page: Page) {
  let letThrough = () => {};
  const held = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(/expression-math/, async (route) => {
    await held;
    await route.continue();
  });
  return {
    asked: page.waitForRequest(/expression-math/),
    letThrough: () => letThrough(),
  };
}

test('a sum that takes a while on the drawing board takes back nothing that is done meanwhile', async ({
  app,
  page,
}) => {
  const sums = await holdSums(page);
  await page.goto(`${app.address}#/new`);
  await page.getByLabel(/one humbucker, one volume/i).check();
  await button(page, 'Change the drawing').click();
  await onScreen(page, 'editor');
  const board = new DrawingBoard(page);
  await board.touchPart('volume');
  await page.getByLabel('Printed').fill('2x220k in series');
  await page.getByLabel('Name', { exact: true }).fill('loud');
  await sums.asked;
  await board.tap(board.button('Turn'));
  await expect(page.locator('.panel h2')).toHaveText('Loud');
  sums.letThrough();
  // The value is an act of its own: taken back, the turn is the newest, and then the name.
  const printed = page.getByLabel('Printed');
  await expect(printed).toHaveValue(/^440\skΩ$/);
  await expect(page.locator('.panel h2')).toHaveText('Loud');
  const undo = board.button('Undo');
  for (let acts = 3; acts > 0; acts -= 1) await undo.click();
  await expect(undo).toBeDisabled();
});

test('the value that stands in the field is made the intended one, also where it takes a while to be worked out', async ({
  app,
  page,
}) => {
  const sums = await holdSums(page);
  await page.goto(app.address);
  await startHunt(page, {
    wiring: /^one single coil, one volume and one tone/i,
    title: 'Late sum',
  });
  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'Try a value' }).click();
  await onScreen(page, 'trial');
  await page.getByLabel('What to try').selectOption({ label: 'Volume' });
  const field = page.getByLabel(/Resistance|Capacitance/).first();
  await field.fill('100k');
  const keep = button(page, 'Make it the intended wiring');
  await expect(keep).toBeEnabled();
  await field.fill('2x220k in series');
  await sums.asked;
  await keep.click();
  sums.letThrough();
  await onScreen(page, 'record');
  const values = async () => JSON.stringify((await storedJob(page)).circuit.parts);
  await expect.poll(values).toContain('440000');
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
