import type { Page } from '@playwright/test';
import { button, onScreen, overflow, readCautions, startHunt, type } from './hunting.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** Words of the asking screen over whose first line something else lies, or which lie beyond the window. */
const covered = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll(
        '.trouble span, .trouble .quiet, .strip-title, .strip .quiet, h1, .expected, .why, .ways-out .quiet, .key',
      ),
    ]
      .filter((element) => element.checkVisibility() && element.textContent)
      .filter((element) => {
        const text = document.createRange();
        text.selectNodeContents(element);
        const { left, top, width, height } = text.getClientRects()[0] as DOMRect;
        return [left + 2, left + width / 2, left + width - 2].some((across) => {
          const there = document.elementFromPoint(across, top + height / 2);
          return !there || !(element.contains(there) || there.contains(element));
        });
      })
      .map((element) => element.textContent ?? ''),
  );

test('a newer version and a disk that keeps nothing cover no word while a reading is asked for, and nothing scrolls', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
  app.publish('Newer');
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no', 'InvalidStateError');
    };
  });
  await page.reload();
  await expect(page.locator('html')).toHaveAttribute('data-update', 'waiting');
  const update = page.getByRole('complementary', { name: 'Update' });
  const storage = page.getByRole('complementary', { name: 'Storage' });
  await expect(update).toBeVisible();
  await expect(storage).toBeVisible();
  await startHunt(page, {
    wiring: /^two humbuckers, 3-position toggle, two volumes/i,
    title: 'Two bars',
    open: true,
  });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await onScreen(page, 'asking');
  // A version can wait until the hands are free; work that this page alone holds is said on.
  await expect(update).toBeHidden();
  await expect(storage).toBeVisible();
  await expect(button(page, 'Save all as a file')).toBeVisible();
  for (const size of [
    { width: 390, height: 844 },
    { width: 320, height: 640 },
    { width: 844, height: 390 },
  ]) {
    await page.setViewportSize(size);
    // The picture takes its room a moment after the screen has another size.
    await expect.poll(() => overflow(page), `${size.width}`).toEqual([0, 0]);
    await expect.poll(() => covered(page), `${size.width}`).toEqual([]);
  }
  await page.setViewportSize({ width: 390, height: 844 });
  await type(page, 'OL');
  await onScreen(page, 'changed');
  await expect(update).toBeVisible();
});
