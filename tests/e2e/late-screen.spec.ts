import type { Page } from '@playwright/test';
import { draw } from './drawing-board.ts';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

// Requests that a service worker makes cannot be held from here.
test.use({ serviceWorkers: 'block' });

/** A file of this name comes only once it is let through. */
async function held(page: Page, name: RegExp) {
  let letThrough = () => {};
  const free = new Promise<void>((resolve) => {
    letThrough = resolve;
  });
  await page.route(name, async (route) => {
    await free;
    await route.continue();
  });
  return { asked: page.waitForRequest(name), letThrough: () => letThrough() };
}

const SUMS = /expression-math/;

test('a screen whose code comes just after it was asked for is shown', async ({ app, page }) => {
  // Preact runs effects after the next frame, or after 35 ms where none comes: here that takes long enough for the code to come first.
  await page.addInitScript(() => {
    const wait = window.setTimeout.bind(window);
    const long = 1500;
    window.requestAnimationFrame = (then) => wait(() => then(performance.now()), long);
    window.setTimeout = ((then: () => void, after?: number) =>
      wait(then, after === 35 ? long : after)) as typeof window.setTimeout;
  });
  const code = await held(page, /import-job/);
  await page.goto(app.address);
  await code.asked;
  await page.getByRole('link', { name: /bring in a job/i }).click();
  await expect(page.getByRole('heading', { name: 'One moment …' })).toBeVisible();
  code.letThrough();
  await expect(page.getByLabel('From a file')).toBeVisible();
});

test('a sum that takes a while on the drawing board takes back nothing that is done meanwhile', async ({
  app,
  page,
}) => {
  const sums = await held(page, SUMS);
  const board = await draw(page, app.address, /one humbucker, one volume/i);
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
  const sums = await held(page, SUMS);
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
  // Before anything else is drawn: what looks for the next screen would find the old one.
  const saysSo = await button(page, 'Undo').evaluate((undo: HTMLElement) => {
    undo.click();
    return document.querySelector('[data-screen]')?.getAttribute('aria-busy');
  });
  expect(saysSo).toBe('true');
  await onScreen(page, 'asking');
  expect((await storedJob(page)).readings).toHaveLength(0);
});
