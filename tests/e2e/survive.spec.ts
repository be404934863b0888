import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { simulate } from '../simulated/index.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { startBrowser } from './mortal-browser.ts';
import { serveNotebookAlone } from './notebook-alone.ts';
import { atJack, jobCalled } from './notebook-data.ts';
import { answer, askOn, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

/** How often a whole browser is killed; LUGWISE_KILLS=200 for the long run. */
const KILLS = Number(process.env['LUGWISE_KILLS'] ?? 3);
/** Longest life of a browser after its first stored reading, milliseconds. */
const LIFE = 700;
const oneKnob = {
  wiring: /one humbucker, one volume/i,
  title: 'Killed',
  open: true,
};

const idsIn = async (page: Page) => (await storedJob(page)).readings.map(({ id }) => id);

test('a clock that is put back loses no reading and no order', async ({ app, page }) => {
  await page.goto(app.address);
  await startHunt(page, oneKnob);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'clock');
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'changed');
  const [first] = await idsIn(page);
  await page.clock.setSystemTime(new Date('2020-01-01T00:00:00Z'));
  await button(page, 'Go on').click();
  await onScreen(page, 'asking');
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'changed');
  await page.reload();
  await onScreen(page, 'asking', 'verdict');
  const after = await idsIn(page);
  expect(after).toHaveLength(2);
  expect(after[0]).toBe(first);
});

test('an engine that dies is started again, and works out the same from the readings', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, oneKnob);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'engine');
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'changed');
  const [engine] = page.workers();
  await engine?.evaluate(() => {
    setTimeout(() => {
      throw new Error('The engine dies here.');
    }, 0);
  });
  await button(page, 'Go on').click();
  await onScreen(page, 'asking');
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'changed');
  expect(await idsIn(page)).toHaveLength(2);
});

test('a browser that is killed while two tabs store readings has lost none that was said to be stored', {
  tag: '@long',
}, async () => {
  test.setTimeout(60_000 + KILLS * 20_000);
  const profile = mkdtempSync(join(tmpdir(), 'profile-'));
  const job = jobCalled('killed', 'Killed', { readings: [atJack('r', '2026-03-01T11:00:00Z')] });
  const { address, stop } = await serveNotebookAlone(job);
  const stored = new Set<string>();
  const counts: number[] = [];
  try {
    for (let kill = 0; kill <= KILLS; kill++) {
      const { browser, kill: end } = await startBrowser(profile);
      try {
        const context = browser.contexts()[0]!;
        await context.exposeFunction('stored', (reading: string) => stored.add(reading));
        const open = async () => {
          const tab = await context.newPage();
          await tab.goto(address);
          await tab.waitForFunction('window.ready');
          return tab;
        };
        if (kill > 0) {
          const first = await open();
          const list = first.evaluate<string[]>('window.list()').catch(async (error: unknown) => {
            const databases = await first.evaluate<string>(
              'indexedDB.databases().then(JSON.stringify)',
            );
            throw new Error(
              `after kill ${kill}, ${counts.join(', ')} stored; databases ${databases}`,
              { cause: error },
            );
          });
          const found = new Set(await list);
          expect([...stored].filter((one) => !found.has(one))).toEqual([]);
        }
        if (kill === KILLS) break;
        const tabs = [await open(), await open()];
        const before = stored.size;
        // It never ends by itself.
        for (const [at, tab] of tabs.entries())
          tab.evaluate(`window.store('${'ab'[at]}${kill}-')`).catch(() => undefined);
        await expect.poll(() => stored.size).toBeGreaterThan(before);
        await new Promise((resolve) => setTimeout(resolve, Math.random() * LIFE));
        counts.push(stored.size - before);
      } finally {
        await end();
      }
    }
  } finally {
    await stop();
    rmSync(profile, { recursive: true, force: true });
  }
  console.log(
    `${KILLS} kills, ${stored.size} readings said to be stored, none lost; each time ${counts.join(', ')}`,
  );
  expect(stored.size).toBeGreaterThan(KILLS);
});

test('a database that the browser threw away is filled again with every reading', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, oneKnob);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'thrown');
  await answer(page, guitar.answer(await askOn(page)));
  await onScreen(page, 'changed');
  const before = await idsIn(page);
  const job = page.url();
  // Chromium does so with a file that it finds damaged: from a page that holds no database open.
  await page.goto('about:blank');
  const other = await page.context().newPage();
  await other.goto(`${app.address}icon.svg`);
  await other.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const gone = indexedDB.deleteDatabase('lugwise');
        gone.onsuccess = resolve;
        gone.onerror = reject;
      }),
  );
  await page.goto(job);
  await onScreen(page, 'asking', 'verdict');
  expect(await idsIn(page)).toEqual(before);
  expect(before).toHaveLength(1);
});
