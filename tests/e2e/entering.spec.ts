import type { Page } from '@playwright/test';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const fourKnobs = {
  wiring: /two humbuckers, 3-position toggle, two volumes/i,
  title: 'Sums',
  open: true,
};
const field = (page: Page, part: string, name: string) =>
  page.getByRole('group', { name: part, exact: true }).getByLabel(name);

test('sums are worked out for values and readings, with the server gone', async ({ app, page }) => {
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
  await app.stopServer();
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.locator('summary', { hasText: 'Values of its parts' }).click();
  await field(page, 'neck volume', 'Measured').fill('2x220k in series');
  await field(page, 'bridge volume', 'Measured').fill('1 M || 1.1 M');
  await field(page, 'neck tone capacitor', 'Printed').fill('10n + 12n');
  await field(page, 'bridge tone', 'Measured').fill('500k +');
  await button(page, 'Start').click();
  await expect(page.getByRole('alert')).toContainText('bridge tone: ');
  await field(page, 'bridge tone', 'Measured').fill('');
  await button(page, 'Start').click();
  await onScreen(page, 'symptom');
  const { circuit } = await storedJob(page);
  const part = (id: string) => circuit.parts.find((one) => one.id === id);
  expect(part('neckVolume')).toMatchObject({ ohms: { measured: 440e3 } });
  // The product of the two over their sum.
  expect(part('bridgeVolume')).toMatchObject({
    ohms: { measured: expect.closeTo(1.1e6 / 2.1, 1) },
  });
  expect(part('neckCap')).toMatchObject({ farads: { nominal: expect.closeTo(22e-9, 15) } });
  expect(part('bridgeTone')).not.toMatchObject({ ohms: { measured: expect.anything() } });

  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await page.getByLabel('Reading in ohm').fill('8k + 120 ohm');
  await page.keyboard.press('Enter');
  await onScreen(page, 'changed');
  expect((await storedJob(page)).readings[0]?.seen).toEqual({ kind: 'ohms', ohms: 8120 });
});

test('a volume knob that changes nothing is stored as it was heard', async ({ app, page }) => {
  await page.goto(app.address);
  await startHunt(page, fourKnobs);
  await button(page, /Do the knobs work/).click();
  const row = page.locator('.place', { hasText: 'bridge volume' });
  await row.locator('.place-head').click();
  await row.locator('.chip', { hasText: 'No change' }).click();
  await row.locator('.place-head', { hasText: 'no change' }).waitFor();
  await page
    .locator('.place', { hasText: 'bridge tone' })
    .locator('.chip', { hasText: 'As it should' })
    .click();
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  const { readings } = await storedJob(page);
  expect(readings.map(({ ask, seen }) => [ask.setting.knobs, ask.setting.positions, seen])).toEqual(
    [
      [
        expect.objectContaining({ bridgeVolume: 0, bridgeTone: 10 }),
        { selector: 'bridge' },
        { kind: 'listen', heard: 'normal' },
      ],
      [
        expect.objectContaining({ bridgeVolume: 10, bridgeTone: 0 }),
        { selector: 'bridge' },
        { kind: 'listen', heard: 'normal' },
      ],
    ],
  );
  await readCautions(page);
  await page.locator('.strip-job').click();
  await expect(page.getByRole('table', { name: 'Readings' })).toContainText('bridge volume at 0');
});

test('a reading taken in another tab is worked out here, and a typed figure stays', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Two tabs', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const first = await page.locator('.asking-words').textContent();
  const other = await page.context().newPage();
  await other.goto(page.url());
  await onScreen(other, 'asking');
  await type(other, '8.9k');
  await onScreen(other, 'changed');
  await expect(page.locator('.asking-words')).not.toHaveText(first ?? '');
  await page.getByLabel('Reading in ohm').fill('4');
  await button(other, 'Undo').click();
  await onScreen(other, 'asking');
  await expect(page.locator('.display-shown')).toHaveText('4 Ω');
  await page.getByLabel('Reading in ohm').fill('OL');
  await page.keyboard.press('Enter');
  await onScreen(page, 'changed');
  expect((await storedJob(page)).readings.map(({ seen }) => seen)).toEqual([
    { kind: 'ohms', ohms: 'open' },
  ]);
});
