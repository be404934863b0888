import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/**
 * WCAG 2.2, levels A and AA, as far as a program can tell (axe-core's rules), in the light; in the dark only colours differ, so
 * that their contrast alone is judged again.
 */
export async function expectReadable(page: Page): Promise<void> {
  const screen = await page.locator('[data-screen]').getAttribute('data-screen');
  const words = await page.locator('h1').textContent();
  await page.emulateMedia({ colorScheme: 'light' });
  const light = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await new AxeBuilder({ page }).withRules(['color-contrast']).analyze();
  const found = [light, dark].map(({ violations }) =>
    violations.map(({ id, nodes }) => `${screen}: ${id} at ${nodes.map((n) => n.target).join()}`),
  );
  expect(found).toEqual([[], []]);
  // Judged was the screen that was meant, and something on it.
  await expect(page.locator('h1')).toHaveText(words ?? '');
  expect(dark.passes.map(({ id }) => id)).toEqual(['color-contrast']);
}
