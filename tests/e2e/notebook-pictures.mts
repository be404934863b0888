// Takes a picture of every screen of the notebook at each size and theme, into tests/e2e/pictures/notebook/ (not kept):
//   npm run build && npm run ts -- tests/e2e/notebook-pictures.mts [part of a size's name]
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { dist, root } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import type { Job } from '../../src/notebook/job.ts';
import { browserLaunch } from './browser.ts';
import { bringIn, button, lookAtFile, onScreen } from './hunting.ts';
import { atJack, cameraPicture, jobCalled, notebookOf, threeJobs } from './notebook-data.ts';

const sizes = [320, 390, 768].flatMap((width) =>
  (['light', 'dark'] as const).map((theme) => ({ name: `${width}-${theme}`, width, theme })),
);
const server = await startStaticServer({ folder: dist, basePath: '/', host: '127.0.0.1', port: 0 });
const address = `http://localhost:${server.port}/`;
const browser = await chromium.launch(browserLaunch);
for (const { name, width, theme } of sizes.filter((one) =>
  one.name.includes(process.argv[2] ?? ''),
)) {
  const folder = join(root, 'tests/e2e/pictures/notebook', name);
  mkdirSync(folder, { recursive: true });
  const context = await browser.newContext({
    viewport: { width, height: width === 768 ? 1024 : 844 },
    colorScheme: theme,
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  let count = 0;
  const picture = async (what: string, fullPage = true) => {
    count += 1;
    await page.waitForTimeout(100);
    await page.screenshot({ fullPage, path: join(folder, `${count}-${what}.png`) });
  };
  await bringIn(page, address, notebookOf(threeJobs()));
  await onScreen(page, 'home');
  await picture('home');
  await page.getByRole('searchbox').fill('remake');
  await picture('search');
  await page.goto(`${address}#/guitar/red`);
  await onScreen(page, 'guitar');
  await picture('guitar');
  await page.goto(`${address}#/guitar/red/new-job`);
  await onScreen(page, 'next-job');
  await picture('next-job');
  await page.goto(`${address}#/job/blue/record`);
  for (const size of [300, 400]) {
    await page.getByLabel('Add a photo').setInputFiles({
      name: 'a.jpg',
      mimeType: 'image/jpeg',
      buffer: await cameraPicture(page, 480, size),
    });
    await page
      .locator('.photos img')
      .nth(size / 100 - 3)
      .waitFor();
  }
  await page.getByText('Remove it').click();
  await page.getByText('Another name for it').click();
  await picture('record');
  await button(page, 'Remove The blue one').click();
  await onScreen(page, 'home');
  await picture('home-put-back');
  await page.goto(`${address}#/notebook`);
  await page.getByText('Put back').waitFor();
  await picture('notebook');
  const [spring] = threeJobs() as readonly [Job];
  const more = {
    ...spring,
    title: 'Red one',
    readings: [...spring.readings, atJack('r9', '2026-03-01T12:00:00Z')],
  };
  const torn = { ...jobCalled('torn', 'Torn'), access: 'ajar' as 'open' };
  const file = notebookOf([
    { ...more, changedAt: '2026-03-01T12:00:00Z' },
    jobCalled('new', 'A new one'),
    torn,
  ]);
  await page.goto(`${address}#/import`);
  await onScreen(page, 'import');
  await picture('import');
  await lookAtFile(page, address, file);
  await onScreen(page, 'import-preview');
  await picture('import-preview');
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Not in this window.', 'SecurityError');
    };
  });
  await page.goto(`${address}?private#/`);
  await page.getByText('stores nothing').waitFor();
  await picture('private', false);
  await context.close();
}
await browser.close();
await server.stop();
