import type { Page } from '@playwright/test';
import { exportJob } from '../../src/notebook/exchange.ts';
import { bringIn, button, onScreen, overflow, readCautions, startHunt, type } from './hunting.ts';
import { atJack, jobCalled } from './notebook-data.ts';
import { expect, test } from './served-app.ts';

// WCAG 2.2: 1.4.4 (text to 200 %), 2.5.8 (24 CSS pixels; ours is 44 for what a thumb presses while it holds a probe).
test.use({ actionTimeout: 20_000 });

const sizes = [
  { width: 320, height: 640 },
  { width: 390, height: 844 },
  { width: 844, height: 390 },
  { width: 768, height: 1024 },
] as const;

/** Everything that can be pressed and is smaller than 44 by 44 CSS pixels, by name. */
const small = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('button, a[href], summary, select, input:not(.display-input)')]
      .filter((element) => element.checkVisibility() && !element.closest('p:not(.row), .unseen'))
      .map((element) => ({
        element,
        box: (element.closest('label') ?? element).getBoundingClientRect(),
      }))
      .filter(({ box }) => box.width > 0 && (box.width < 43.5 || box.height < 43.5))
      .map(
        ({ element, box }) =>
          `${element.textContent || element.getAttribute('aria-label')}: ${Math.round(box.width)} x ${Math.round(box.height)}`,
      ),
  );

/** What runs out of its own box within the screen: nothing may be cut off or scroll inside. */
const inner = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('.asking-see, .asking-enter, .asking-why')]
      .filter(
        (element) => element.checkVisibility() && element.scrollHeight > element.clientHeight + 1,
      )
      .map((element) => `${element.className}: ${element.scrollHeight - element.clientHeight} px`),
  );

const setType = (page: Page, share: number) =>
  page.evaluate((percent) => {
    document.documentElement.style.fontSize = `${percent}%`;
  }, 100 * share);

for (const share of [1, 2])
  test(
    `while a reading is asked nothing scrolls, type at ${100 * share} %, and every key is as large as a thumb`,
    share === 1 ? {} : { tag: '@long' },
    async ({ app, page }) => {
      test.setTimeout(120_000);
      await page.goto(app.address);
      await startHunt(page, {
        wiring: /three single coils.*two tones/i,
        title: 'Large type',
        open: true,
      });
      await button(page, 'Not tried yet').click();
      await readCautions(page);
      const found: string[] = [];
      const look = async (where: string) => {
        for (const size of sizes) {
          await page.setViewportSize(size);
          await setType(page, share);
          const tabs = page.locator('.panes button');
          const panes = share === 2 ? 3 : 1;
          // Drawing and keys take turns once the type is large: of the three tabs none shows where it is not.
          await expect(
            tabs.filter({ visible: true }),
            `${size.width} x ${size.height}`,
          ).toHaveCount(share === 2 ? 3 : 0);
          for (let pane = 0; pane < panes; pane++) {
            if (panes > 1) await tabs.nth(pane).click();
            const at = `${where}, ${size.width} x ${size.height}, pane ${pane}`;
            // The picture takes its room a moment after the screen has another size.
            await expect.poll(() => overflow(page), at).toEqual([0, 0]);
            found.push(...(await small(page)).map((key) => `${at}: ${key}`));
            if (share === 2) found.push(...(await inner(page)).map((box) => `${at}: ${box}`));
          }
        }
        await page.setViewportSize({ width: 390, height: 844 });
        await setType(page, 1);
      };
      await onScreen(page, 'asking');
      await look('first');
      expect(found).toEqual([]);
      await type(page, '8.9k');
      await onScreen(page, 'changed');
      await button(page, 'Go on').click();
      await onScreen(page, 'asking');
      await look('second');
      expect(found).toEqual([]);
    },
  );

// WCAG 2.2, 1.4.10 (320 CSS pixels wide without scrolling across) with 1.4.4 on top of it.
test('tables of figures fit 320 pixels with type at 200 %, and say in each cell what it is', async ({
  app,
  page,
}) => {
  const job = jobCalled('large', 'Large type', {
    readings: [atJack('r1', '2026-03-01T10:05:00Z', 92_000)],
  });
  await bringIn(page, app.address, exportJob(job));
  await page.setViewportSize({ width: 320, height: 640 });
  const wide: string[] = [];
  for (const [view, cell] of [
    ['card', 'below'],
    ['record', '92'],
    ['trial', 'dB'],
    ['drawing', null],
  ] as const) {
    await page.goto(`${app.address}#/job/large/${view}`);
    await onScreen(page, view);
    await setType(page, 2);
    if (cell) {
      const here = page.locator('td[data-column]', { hasText: cell }).first();
      await expect(here).toHaveCSS('display', 'block');
      const label = await here.evaluate((td) => getComputedStyle(td, '::before').content);
      expect(label, view).toBe(`"${await here.getAttribute('data-column')}"`);
    }
    const [, across] = await overflow(page);
    if (across > 0) wide.push(`${view}: scrolls ${across} across`);
  }
  expect(wide).toEqual([]);
});
