import type { Page } from '@playwright/test';
import { fittedBleed } from '../../src/circuit/catalog/modifications/fitted-bleed.ts';
import { button, hear, onScreen, overflow, startHunt } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

async function openTrial(page: Page): Promise<void> {
  await page.locator('.strip-job').click();
  await onScreen(page, 'record');
  await page.getByRole('link', { name: 'Try a value' }).click();
  await onScreen(page, 'trial');
  await page.locator('svg.chart').waitFor();
}

test('a treble bleed is tried, compared, and made the intended wiring; the readings stay', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(90_000);
  await page.goto(app.address);
  await startHunt(page, {
    wiring: /^one single coil, one volume and one tone/i,
    title: 'Bright at half',
  });
  await hear(page, 'the guitar', 'Normal');
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  await openTrial(page);

  // At half volume the treble goes; a bleed keeps it.
  const treble = () =>
    page.locator('tr', { hasText: 'At 4 kHz' }).first().locator('td').allTextContents();
  const decibels = (text: string | undefined) =>
    Number((text ?? '').replace('−', '-').replace(/[^-\d.]/g, ''));
  const volume = page.getByRole('slider', { name: /volume/i });
  await volume.fill('5');
  await expect.poll(async () => decibels((await treble())[0])).toBeLessThan(-15);
  await page.getByLabel('Kind').selectOption('parallel');
  await page.getByLabel('Capacitance').fill('0.001u');
  await page.getByLabel('Resistance').fill('2x75k in series');
  await expect
    .poll(async () => decibels((await treble())[1]) - decibels((await treble())[0]))
    .toBeGreaterThan(6);

  // What cannot be bought is answered with what can, and a value that is none in words.
  await page.getByLabel('Resistance').fill('4600');
  await expect(button(page, /4\.7 kΩ/)).toBeVisible();
  await page.getByLabel('Resistance').fill('much');
  await expect(page.locator('.field-fault')).toContainText('"much"');
  await expect(button(page, 'Make it the intended wiring')).toBeDisabled();
  await page.getByLabel('Resistance').fill('150k');

  // The meter will see the resistor across the volume.
  const readings = page.locator('table', { hasText: 'Then' }).first();
  await expect(readings).toContainText('kΩ');
  await expect(readings).toContainText('not there');

  // A sweep is a family of curves with their figures.
  await page.getByLabel('Show the sweep of').selectOption({ label: 'volume' });
  await expect(page.locator('svg.chart text', { hasText: /^4$/ })).toBeVisible();
  expect((await overflow(page))[1]).toBe(0);

  const before = await storedJob(page);
  await button(page, 'Make it the intended wiring').click();
  await onScreen(page, 'record');
  await expect
    .poll(async () => {
      const { circuit } = await storedJob(page);
      const pot = circuit.parts.find((part) => part.kind === 'pot' && part.role === 'volume');
      const { make, capacitor, resistor } = fittedBleed(circuit, pot?.id ?? '');
      return [make, capacitor?.farads.nominal, resistor?.ohms.nominal];
    })
    .toEqual(['parallel', 1e-9, 150e3]);
  expect((await storedJob(page)).readings).toEqual(before.readings);
  expect(before.readings).toHaveLength(1);

  // The reading card shows the values that were made the intended ones.
  await page.getByRole('link', { name: 'Reading card' }).click();
  await onScreen(page, 'card');
  await button(page, /Capacitors and resistors, inside/).click();
  const line = (name: RegExp) => page.locator('.card tr', { hasText: name });
  await expect(line(/treble bleed capacitor/i)).toContainText(/1\.0+\snF/);
  await expect(line(/treble bleed resistor/i)).toContainText(/150\skΩ/);
  expect(complaints).toEqual([]);
});

test('a knob that is dragged redraws, and a cable is heard', async ({ app, page, complaints }) => {
  await page.goto(app.address);
  await startHunt(page, { wiring: /three single coils.*two tones/i, title: 'Three' });
  await openTrial(page);
  const path = () => page.locator('svg.chart path').last().getAttribute('d');
  const volume = page.getByRole('slider', { name: 'volume' });
  const seen = new Set<string | null>([await path()]);
  for (const figure of ['9', '8', '7', '6', '5']) {
    await volume.fill(figure);
    await expect.poll(async () => seen.has(await path())).toBe(false);
    seen.add(await path());
  }
  await volume.fill('10');
  await page.getByLabel('What to try').selectOption('cable');
  await page.getByRole('slider', { name: 'Metres of cable' }).fill('12');
  const resonance = page.locator('tr', { hasText: 'Resonance' }).first().locator('td');
  await expect(resonance.nth(1)).not.toHaveText((await resonance.nth(0).textContent()) ?? '');
  await expect(button(page, 'Make it the intended wiring')).toBeDisabled();
  // What sounds together, position by position.
  await page.getByRole('link', { name: 'Back' }).click();
  await onScreen(page, 'record');
  const table = page.locator('table', { hasText: 'what sounds together' });
  await expect(table).toContainText('2 coils add');
  await expect(table).toContainText('cancels');
  expect(complaints).toEqual([]);
});
