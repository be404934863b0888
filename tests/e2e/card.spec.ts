import type { Page } from '@playwright/test';
import { button, onScreen, overflow, readCautions, type } from './hunting.ts';
import { pagesOf } from './paper.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** From the first screen to the reading card of a wiring. */
async function openCard(page: Page, address: string, wiring: RegExp): Promise<void> {
  await page.goto(address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByLabel(wiring).check();
  await page.getByLabel('Your name for the guitar').fill('Card guitar');
  await button(page, 'Reading card').click();
  await onScreen(page, 'card');
  await page.locator('.card-table').first().waitFor();
}

const figure = (page: Page, row: string, column = 0) =>
  page
    .locator('tr', { has: page.locator('th .says', { hasText: new RegExp(`^${row}$`, 'i') }) })
    .locator('.card-figure')
    .nth(column);

test('a card stands before any hunt, takes a reading from a row, and begins a hunt from another', async ({
  page,
  app,
  complaints,
}) => {
  await openCard(page, app.address, /two humbuckers, 3-position toggle, two volumes/i);
  await expect(page.locator('h1')).toHaveText('What it should read');
  await expect(figure(page, 'Bridge')).toContainText('8.08 kΩ');
  await expect(figure(page, 'Bridge')).toContainText('7.17 to 9.1 kΩ');
  await expect(figure(page, 'Bridge', 1)).toContainText('some meters beep');

  await figure(page, 'Bridge').click();
  await button(page, 'Enter what it reads').click();
  await onScreen(page, 'cautions');
  await readCautions(page);
  await onScreen(page, 'asking');
  await type(page, '8.2k');
  // It fits: the card comes back, narrower.
  await onScreen(page, 'card');
  await expect(figure(page, 'Bridge')).toContainText('8.20 kΩ');
  await expect(figure(page, 'Bridge').getByText('fits')).toBeAttached();
  await expect(page.getByText('1 reading that fits')).toBeVisible();
  await expect(figure(page, 'Bridge')).not.toContainText('7.17 to 9.1 kΩ');

  await button(page, /Grounds/).click();
  const strings = figure(page, 'strings and bridge');
  await expect(strings).toContainText('beeps');
  await strings.click();
  await button(page, 'It reads something else').click();
  await onScreen(page, 'asking');
  await type(page, 'OL');
  await onScreen(page, 'changed');
  await expect(page.locator('[data-screen=changed]')).toContainText('does not fit');
  await button(page, 'Go on').click();
  await onScreen(page, 'asking', 'opening', 'verdict');
  const { readings } = await storedJob(page);
  expect(readings.map(({ ask, seen }) => [ask.kind, 'ohms' in seen ? seen.ohms : null])).toEqual([
    ['ohms', 8200],
    ['ohms', 'open'],
  ]);

  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'Reading card' }).click();
  await expect(page.getByRole('alert')).toContainText('does not fit this wiring as intended');
  await expect(figure(page, 'Bridge')).toContainText('7.17 to 9.1 kΩ');
  expect(complaints).toEqual([]);
});

test('values measured out of circuit narrow the card, and a wrong one is told by its sentence', async ({
  page,
  app,
  complaints,
}) => {
  await openCard(page, app.address, /two humbuckers, 3-position toggle, two volumes/i);
  await expect(figure(page, 'Bridge')).toContainText('7.17 to 9.1 kΩ');
  const neck = (await figure(page, 'Neck').locator('.note').first().textContent()) as string;
  expect(neck).toMatch(/^6\.6\d\sto\s8\.4\d\skΩ$/);
  const pot = () =>
    page.locator('.value-row', { has: page.locator('legend', { hasText: /^bridge volume$/i }) });
  const coil = (of: string) =>
    page.locator('.value-row', {
      has: page.locator('legend', { hasText: new RegExp(`bridge.*${of}`, 'i') }),
    });

  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'Values and meter' }).click();
  await onScreen(page, 'values');
  await pot().getByLabel('Measured').fill('470');
  await coil('slug').getByLabel('Measured').fill('four');
  await button(page, 'Keep these').click();
  // Nothing is lost, and each wrong figure says what is wrong with it.
  await expect(coil('slug').locator('.field-fault')).toContainText('four');
  await expect(pot().getByLabel('Measured')).toHaveValue('470');
  await pot().getByLabel('Measured').fill('470k');
  await coil('slug').getByLabel('Measured').fill('4.25k');
  await coil('screw').getByLabel('Measured').fill('4.15k');
  await button(page, 'Keep these').click();
  await expect
    .poll(async () => {
      const { circuit } = await storedJob(page);
      return circuit.parts.flatMap((part) =>
        'ohms' in part && part.ohms.measured !== undefined ? [[part.id, part.ohms.measured]] : [],
      );
    })
    .toEqual([
      ['bridgeScrew', 4150],
      ['bridgeSlug', 4250],
      ['bridgeVolume', 470e3],
    ]);

  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'Reading card' }).click();
  await onScreen(page, 'card');
  // 4.25 k and 4.15 k in series beside 470 k: 8.25 k (by hand), in a band of less than half the width.
  await expect(figure(page, 'Bridge')).not.toContainText('7.17 to 9.1 kΩ');
  const band = await figure(page, 'Bridge').locator('.note').first().textContent();
  const [low = 0, high = 0] = [...(band ?? '').matchAll(/\d+\.\d+/g)].map(Number);
  const byHand = 1 / (1 / 8.4 + 1 / 470);
  expect(low).toBeLessThan(byHand);
  expect(high).toBeGreaterThan(byHand);
  expect(high - low).toBeLessThan((9.09 - 7.18) / 2);
  // The neck pickup was not measured: its band is as wide as before.
  await expect(figure(page, 'Neck').locator('.note').first()).toHaveText(neck);
  expect(complaints).toEqual([]);
});

test('a card fits the width of phones and tablets', { tag: '@long' }, async ({ page, app }) => {
  await openCard(page, app.address, /three single coils.*two tones/i);
  for (const title of [
    /Turning a knob/,
    /Pickups, inside/,
    /Pots, inside/,
    /Switches, inside/,
    /Grounds/,
  ])
    await button(page, title).click();
  await figure(page, 'Bridge and middle').click();
  for (const width of [320, 390, 768]) {
    await page.setViewportSize({ width, height: 800 });
    expect((await overflow(page))[1]).toBe(0);
  }
});

test('a card is printed on one page, folded parts and all', async ({ page, app }) => {
  await openCard(page, app.address, /two humbuckers, 3-position toggle, two volumes/i);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText(/^strings and bridge$/i)).toBeVisible();
  await expect(button(page, 'Print')).toBeHidden();
  const paper = await page.pdf({ preferCSSPageSize: true });
  expect(pagesOf(paper)).toBe(1);
});
