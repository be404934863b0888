import type { Locator, Page } from '@playwright/test';
import { draw } from './drawing-board.ts';
import { button, onScreen } from './hunting.ts';
import { expect, test } from './served-app.ts';

/** A second touch that comes before anything was stored for the first. */
const touchTwice = (what: Locator): Promise<void> =>
  what.evaluate((element: HTMLElement) => {
    element.click();
    element.click();
  });

const countOf = (page: Page, store: string): Promise<number> =>
  page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('lugwise');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const count = opening.result.transaction(name).objectStore(name).count();
          count.onerror = () => reject(count.error);
          count.onsuccess = () => {
            opening.result.close();
            resolve(count.result);
          };
        };
      }),
    store,
  );

test('what is touched twice while it is stored is begun once', async ({ app, page }) => {
  await page.goto(`${app.address}#/new`);
  await touchTwice(button(page, 'Start'));
  await page.locator('[data-screen=symptom]').waitFor();
  await page.goto(`${app.address}#/together`);
  await touchTwice(button(page, 'Start'));
  await page.locator('[data-screen=together-cautions]').waitFor();
  // Whatever was asked to be stored before this is stored when it is.
  await page.goto(`${app.address}#/new`);
  await touchTwice(button(page, 'Reading card'));
  await page.locator('[data-screen=card]').waitFor();
  await expect.poll(() => countOf(page, 'jobs')).toBe(2);
  expect(await countOf(page, 'sheets')).toBe(1);
});

test('what is done on the drawing board is kept, also where the board is left at once', async ({
  app,
  page,
}) => {
  const board = await draw(page, app.address, /one humbucker, one volume/i);
  await board.add('Resistor');
  await board.add('Capacitor');
  await page.evaluate(() => {
    // A phone whose next frame takes its time: what waits for it comes after the board was left.
    window.requestAnimationFrame = (then) => window.setTimeout(() => then(performance.now()), 3000);
    const wait = window.setTimeout.bind(window);
    window.setTimeout = ((then: () => void, after?: number) =>
      wait(then, after === 35 ? 3000 : after)) as typeof window.setTimeout;
    const [undo] = [...document.querySelectorAll('button')].filter(
      ({ textContent }) => textContent === 'Undo',
    );
    undo?.click();
    document.querySelector<HTMLElement>('.strip-home')?.click();
  });
  await page.locator('.draft a').click();
  await onScreen(page, 'editor');
  await expect(board.button('Redo')).toBeEnabled();
  await expect(page.locator('.whole-target[aria-label=resistor]')).toHaveCount(1);
  await expect(page.locator('.whole-target[aria-label=capacitor]')).toHaveCount(0);
});

test('two fields that are filled in at once are both kept', async ({ app, page }) => {
  await page.goto(`${app.address}#/leads`);
  const colours = page.getByLabel(/^Colour of lead/);
  await colours.first().waitFor();
  // As by what fills forms in: no key is pressed, and nothing is drawn between the two.
  await colours.evaluateAll((fields: HTMLInputElement[]) => {
    for (const [at, field] of fields.slice(0, 2).entries()) {
      field.value = `colour ${at}`;
      field.dispatchEvent(new Event('input', { bubbles: true }));
    }
  });
  await expect(colours.nth(0)).toHaveValue('colour 0');
  await expect(colours.nth(1)).toHaveValue('colour 1');
  // Drawn once more, as they are kept.
  await page.getByLabel('5', { exact: true }).check();
  await expect(colours).toHaveCount(5);
  await expect(colours.nth(0)).toHaveValue('colour 0');
  await expect(colours.nth(1)).toHaveValue('colour 1');
});

test('a practice guitar is heard in everything, also where it is played as soon as it can be', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await page.evaluate(() => {
    const watching = new MutationObserver(() => {
      const play = document.querySelector<HTMLElement>('[data-screen=symptom] button.large');
      if (!play) return;
      watching.disconnect();
      play.click();
    });
    watching.observe(document, { subtree: true, childList: true });
  });
  await button(page, /^Practise/).click();
  await expect(page.locator('.announcer')).toContainText('filled in');
  const heads = page.locator('.places-head');
  expect(await heads.count()).toBeGreaterThan(1);
  await expect(heads.locator('.soft')).toHaveCount(0);
});
