import type { Page } from '@playwright/test';
import { assess } from '../../src/diagnosis/assess.ts';
import { evidenceOf } from '../../src/flows/index.ts';
import { button, hear, onScreen, readCautions, startHunt } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const twoSingles = { wiring: /two single coils, 3-position/i, title: 'By ear' };

/** From what was told to the first reading that is asked: its kind, and its words on the screen. */
async function firstReading(page: Page) {
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  await readCautions(page);
  const asking = page.locator('.asking');
  await asking.waitFor();
  return {
    kind: await asking.getAttribute('data-kind'),
    words: (await page.locator('.asking-words').textContent()) ?? '',
    /** What the same readings lead to, worked out beside the app. */
    suspects: assess(evidenceOf(await storedJob(page))).suspects.map(({ repair }) => repair),
  };
}

test('a silent pickup: the jack is read with that pickup on', async ({ app, page, complaints }) => {
  await page.goto(app.address);
  await startHunt(page, twoSingles);
  await hear(page, 'Bridge', 'Silent');
  await hear(page, 'Neck', 'Normal');
  await hear(page, 'Both', 'Normal');
  const { kind, words, suspects } = await firstReading(page);
  expect(kind).toBe('ohms');
  expect(words).toMatch(/tip.*jack/i);
  const { next } = assess(evidenceOf(await storedJob(page)));
  expect(['bridge', 'both']).toContain(next[0]?.ask.setting.positions['selector']);
  expect(suspects[0]).toBe('coil:bridgeCoil');
  expect(complaints).toEqual([]);
});

test('a hollow middle position: a tap tells which pickup is against the other, ohms never would', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, twoSingles);
  await hear(page, 'Both', 'Thin');
  await hear(page, 'Neck', 'Normal');
  await hear(page, 'Bridge', 'Normal');
  const { kind, words, suspects } = await firstReading(page);
  expect(kind).toBe('tap');
  expect(words).toMatch(/steel on the (bridge|neck) pickup/i);
  expect(suspects[0]).toMatch(/^turn:(neckCoil or bridgeCoil|bridgeCoil or neckCoil)$/);
});

test('hum that falls when the strings are touched: not their ground, but something hot that is open or unshielded', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, twoSingles);
  for (const place of ['Bridge', 'Both', 'Neck']) await hear(page, place, 'Hum');
  await hear(page, 'when I touch the strings', 'Softer', 'The hum');
  const { kind, suspects } = await firstReading(page);
  expect(kind).toBe('ohms');
  expect(suspects.indexOf('remake:stringGround')).not.toBe(0);
  const ground = suspects.indexOf('remake:stringGround');
  expect(ground === -1 || ground > 3).toBe(true);
});

test('hum that rises when the strings are touched: metal that should be ground is read against the sleeve', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, twoSingles);
  for (const place of ['Bridge', 'Both', 'Neck']) await hear(page, place, 'Hum');
  await hear(page, 'when I touch the strings', 'Louder', 'The hum');
  const { kind, words, suspects } = await firstReading(page);
  expect(kind).toBe('ohms');
  expect(words).toMatch(/(control plate|strings|cover)/i);
  expect(words).toMatch(/sleeve/i);
  expect(['swap:jack.tip~jack.sleeve', 'remake:jackGround']).toContain(suspects[0]);
});

test('dull at half volume with a treble bleed: the volume is turned while the jack is read', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByLabel(/^one single coil, one volume and one tone/i).check();
  await page.getByText('What was changed on it?').click();
  await page.getByRole('group', { name: 'Treble bleed', exact: true }).getByLabel('Volume').click();
  await page.getByLabel('Your name for the guitar').fill('Dull at half');
  await button(page, 'Start').click();
  await page.locator('[data-screen=symptom]').waitFor();
  await hear(page, 'the guitar', 'Normal');
  await hear(page, 'volume at 5', 'Dull', 'At half volume');
  const { words, kind, suspects } = await firstReading(page);
  expect(['turn', 'ohms', 'farads']).toContain(kind);
  expect(words).toMatch(/volume|bleed/i);
  expect(suspects.slice(0, 5)).toContain('capacitor:volumeBleed');
});

test('a key that takes the focus lies clear of the acts at the lower edge', async ({
  app,
  page,
}) => {
  // WCAG 2.2, 2.4.11: where the page goes on under the acts, what has the focus is not hidden by them.
  await page.setViewportSize({ width: 320, height: 480 });
  await page.goto(app.address);
  await startHunt(page, twoSingles);
  await page.getByRole('button', { name: 'Measure the hum' }).waitFor();
  await page.locator('h1').focus();
  const under: number[] = [];
  for (let keys = 0; keys < 12; keys += 1) {
    await page.keyboard.press('Tab');
    under.push(
      await page.evaluate(() => {
        const bar = document.querySelector('.acts')?.getBoundingClientRect();
        const key = document.activeElement?.closest('.place, .places')
          ? document.activeElement.getBoundingClientRect()
          : null;
        return bar && key ? key.bottom - bar.top : Number.NaN;
      }),
    );
  }
  const judged = under.filter((depth) => !Number.isNaN(depth));
  expect(judged.length).toBeGreaterThan(8);
  expect(Math.max(...judged)).toBeLessThanOrEqual(0);
});
