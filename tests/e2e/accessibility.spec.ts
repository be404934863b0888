import AxeBuilder from '@axe-core/playwright';
import { expect, test } from './served-app.ts';

// WCAG 2.2, levels A and AA, as far as a program can tell (axe-core's rules).
for (const colorScheme of ['light', 'dark'] as const) {
  test(`the first screen can be read and worked by all, ${colorScheme}`, async ({ app, page }) => {
    await page.emulateMedia({ colorScheme });
    await page.goto(app.address);
    await expect(page.getByRole('heading').first()).toBeVisible();
    const { violations, passes } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, help }) => `${id}: ${help}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(0);
  });
}
