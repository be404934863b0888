import type { Page } from '@playwright/test';
import { button, onScreen, overflow, readCautions, startHunt, type } from './hunting.ts';
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
          const panes = (await tabs.first().isVisible()) ? await tabs.count() : 1;
          expect(panes, `${size.width} x ${size.height}`).toBe(share === 2 ? 3 : 1);
          for (let pane = 0; pane < panes; pane++) {
            if (panes > 1) await tabs.nth(pane).click();
            const at = `${where}, ${size.width} x ${size.height}, pane ${pane}`;
            const [down, across] = await overflow(page);
            if (down > 0 || across > 0) found.push(`${at}: scrolls ${down} down, ${across} across`);
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
