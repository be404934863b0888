import type { Page } from '@playwright/test';
import { assess } from '../../src/diagnosis/assess.ts';
import { evidenceOf } from '../../src/flows/index.ts';
import { simulate } from '../simulated/index.ts';
import {
  button,
  enterAtJack,
  hear,
  onScreen,
  overflow,
  readCautions,
  startHunt,
  type,
} from './hunting.ts';
import { playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

// Field case K15 (a public repair thread, told in generic terms): two pickups of about 7 kohm, selector,
// 500 kohm volume; the bridge pickup is silent, the jack reads 430 kohm with the bridge selected and
// 7 kohm with the neck selected, volume full. Resolved there: the bridge pickup itself was open.
test.use({ actionTimeout: 20_000 });

const silentBridge = {
  wiring: /two two-conductor pickups/i,
  title: 'Silent bridge',
  open: true,
};

test('a silent bridge pickup: from two readings at the jack to its coil, and offline after a crash', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
  await startHunt(page, silentBridge);
  await hear(page, 'Bridge', 'Silent');
  await hear(page, 'Neck', 'Normal');
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  await readCautions(page);

  await enterAtJack(page, 'bridge', '430k');
  await button(page, 'Go on').click();
  await onScreen(page, 'asking', 'opening');
  await enterAtJack(page, 'neck', '7k');

  // The open path of the bridge pickup leads, and no pot is among the suspects shown.
  const suspects = page.locator('.suspect-title');
  await expect(suspects.first()).toContainText('bridge pickup');
  expect((await suspects.allTextContents()).join(' ')).not.toMatch(/\bpot\b/i);

  await button(page, 'Go on').click();
  let screen = await onScreen(page, 'asking', 'opening');
  if (screen === 'opening') {
    await button(page, 'It is open').click();
    screen = await onScreen(page, 'asking');
  }
  // Asked on the pickup's own path: at its leads, or at lug B of the selector, where they end.
  await expect(page.locator('.asking-words')).toContainText(/bridge pickup|lug B of the selector/);
  await expect.poll(() => overflow(page)).toEqual([0, 0]);

  // The pickup alone, its lead unsoldered: no continuity.
  await button(page, 'My own reading').click();
  await onScreen(page, 'own-reading');
  await page.locator('summary').click();
  const lead = /the bridge pickup's lead/;
  await choose(page, 'Unsoldered end', /bridge pickup's lead on lug B/);
  await page.getByLabel('Two other points').check();
  await choose(page, 'Red probe, R', /bridge pickup's lead, just off lug B/);
  await choose(page, 'Black probe, B', /bridge pickup's lead, just off the case/);
  await button(page, 'Enter it').click();
  await onScreen(page, 'asking');
  await expect(page.locator('.asking-words')).toContainText(lead);
  await type(page, 'OL');

  // At most one reading more, to make sure before the pickup comes out.
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'bridgeCoil:winding' }], 'K15');
  expect(await playUntilAnswered(page, guitar, 2)).toBe('verdict');
  const verdict = await page.getByRole('heading', { level: 1 }).textContent();
  expect(verdict).toMatch(/bridge pickup is open inside/);
  await expect(page.locator('.screen-verdict')).toContainText('430 kΩ');
  await button(page, 'How to mend it').click();
  await onScreen(page, 'repairing');
  await expect(page.locator('.screen-repairing')).toContainText(/coil: bridge pickup/i);
  expect(complaints).toEqual([]);

  // The tab is killed; the phone is offline.
  const context = page.context();
  await page.close({ runBeforeUnload: false });
  await app.stopServer();
  const again = await context.newPage();
  await again.goto(app.address);
  await again.getByRole('link', { name: /silent bridge .*readings?/i }).click();
  await onScreen(again, 'verdict');
  await expect(again.getByRole('heading', { level: 1 })).toHaveText(verdict ?? '');
});

test('a reading of which the k was left out is asked about, and undo takes it back', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, silentBridge);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const words = await page.locator('.asking-words').textContent();
  await type(page, '4.3');
  await onScreen(page, 'doubtful');
  await button(page, /^4.3 kΩ/).click();
  await onScreen(page, 'changed');
  await button(page, 'Undo').click();
  await onScreen(page, 'asking');
  await expect(page.locator('.asking-words')).toHaveText(words ?? '');
  await button(page, 'Put back').click();
  await onScreen(page, 'asking', 'opening');
  await expect(page.locator('.asking-words')).not.toHaveText(words ?? '');
});

test('nothing scrolls while a reading is asked, upright, in landscape or on a small phone', async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  await startHunt(page, {
    wiring: /two humbuckers, 3-position toggle, two volumes/i,
    title: 'Long words',
    open: true,
  });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'bridgeSlug:winding' }], 'scroll');
  const asked: string[] = [];
  await playUntilAnswered(page, guitar, 20, async (screen) => {
    if (screen !== 'asking') return;
    asked.push((await page.locator('.asking').getAttribute('data-kind')) ?? '');
    // The picture comes a moment after the words, and has its size a moment after that.
    await expect.poll(() => overflow(page)).toEqual([0, 0]);
    for (const [width, height] of [
      [844, 390],
      [320, 640],
    ] as const) {
      await page.setViewportSize({ width, height });
      await expect.poll(() => overflow(page)).toEqual([0, 0]);
      // The drawing is what the eyes need: it never shrinks to a stamp.
      const high = async () => (await page.locator('.asking-drawing').boundingBox())?.height;
      await expect.poll(high).toBeGreaterThan(120);
    }
    await page.setViewportSize({ width: 390, height: 844 });
  });
  expect(asked.length).toBeGreaterThan(1);
});

test('a tab killed between two readings goes on with the next one', { tag: '@long' }, async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, silentBridge);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await type(page, 'OL');
  await onScreen(page, 'changed');
  const context = page.context();
  const stored = await storedJob(page);
  await page.close({ runBeforeUnload: false });
  const again = await context.newPage();
  await again.goto(app.address);
  await again.getByRole('link', { name: /silent bridge .*readings?/i }).click();
  await onScreen(again, 'asking');
  expect((await storedJob(again)).readings).toEqual(stored.readings);
  const asked = assess(evidenceOf(stored)).next[0]?.askText ?? '';
  await expect(again.locator('.asking-words')).toContainText(asked.split(', B on ')[1] ?? asked);
});

async function choose(page: Page, label: string, words: RegExp): Promise<void> {
  const field = page.getByLabel(label);
  const option = field.locator('option').filter({ hasText: words }).first();
  await field.selectOption((await option.getAttribute('value')) ?? '');
}
