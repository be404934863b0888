import { expect, test } from './served-app.ts';

for (const basePath of ['/', '/bench/lugwise/']) {
  test.describe(`served at ${basePath}`, () => {
    test.use({ basePath });

    test('opens again with the server gone', async ({ app, page, complaints }) => {
      await page.goto(app.address);
      await expect(page.getByRole('heading').first()).toBeVisible();
      await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
      const headingOnline = await page.getByRole('heading').first().textContent();
      expect(complaints).toEqual([]);

      await app.stopServer();
      await expect(fetch(app.address)).rejects.toThrow();
      await page.reload();
      await expect(page.getByRole('heading').first()).toHaveText(headingOnline ?? '');

      // A page never opened before, from a link kept elsewhere.
      const other = await page.context().newPage();
      await other.goto(`${app.address}#/somewhere`);
      await expect(other.getByRole('heading').first()).toBeVisible();
    });

    test('every file of the app is on the phone after the first opening', async ({ app, page }) => {
      await page.goto(app.address);
      await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
      await app.stopServer();
      const missing = await page.evaluate(async (files) => {
        const kept = (file: string) =>
          fetch(`./${file}`).then(
            (answer) => answer.ok,
            () => false,
          );
        const answers = await Promise.all(files.map(kept));
        return files.filter((_, index) => !answers[index]);
      }, app.files);
      expect(app.files).toContain('index.html');
      expect(missing).toEqual([]);
    });
  });
}

test('a phone with no secure origin is told that the app stays online only', async ({
  app,
  page,
}) => {
  await page.addInitScript(() => {
    Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
  });
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'unavailable');
  await expect(page.getByRole('heading').first()).toBeVisible();
});
