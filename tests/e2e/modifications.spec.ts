import type { Page } from '@playwright/test';
import { button, readCautions } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

const group = (page: Page, title: string) => page.getByRole('group', { name: title, exact: true });

/** Seconds for one touch of somebody who reads what they tick: found, read, touched (our own allowance, no source). */
const SECONDS_A_TOUCH = 4;

/** Counts touches from here on; a choice from a list is two, one to open it and one to choose. */
async function countTouches(page: Page): Promise<() => Promise<number>> {
  await page.addInitScript(() => {
    const count = (by: number) =>
      sessionStorage.setItem('touches', `${Number(sessionStorage.getItem('touches')) + by}`);
    addEventListener('click', ({ isTrusted }) => isTrusted && count(1), true);
    addEventListener(
      'change',
      ({ target }) => target instanceof HTMLSelectElement && count(2),
      true,
    );
  });
  return () => page.evaluate(() => Number(sessionStorage.getItem('touches')));
}

/** From the first screen to the list of what was changed. */
async function openChanges(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByText('What was changed on it?').click();
}

test('a guitar with two splits, a phase switch and a treble bleed is told in taps, and its hunt begins', async ({
  page,
  app,
}) => {
  const touches = await countTouches(page);
  await openChanges(page, app.address);
  const split = group(page, 'Coil split');
  await split.getByLabel('Neck pickup').click();
  await split.getByLabel('Switched by').selectOption({ label: 'push-pull on the neck tone' });
  await split.getByLabel('Bridge pickup').click();
  await split
    .getByLabel('Switched by')
    .nth(1)
    .selectOption({ label: 'push-pull on the bridge tone' });
  await group(page, 'Phase of a pickup reversed').getByLabel('Neck pickup').click();
  await group(page, 'Treble bleed').getByLabel('Bridge volume').click();
  const title =
    'wo humbuckers, 3-position toggle, two volumes and two tones, with a treble bleed on the bridge volume, a phase switch on the neck pickup, a split of the neck pickup, a split of the bridge pickup';
  await expect(page.getByText(`T${title}.`)).toBeVisible();
  await page.getByLabel('Your name for the guitar').fill('Changed guitar');
  await button(page, 'Start').click();
  await page.locator('[data-screen=symptom]').waitFor();
  const touched = await touches();
  expect(touched).toBeGreaterThan(8);
  expect(touched * SECONDS_A_TOUCH).toBeLessThan(120);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  expect(circuit.title).toBe(`t${title}`);
  expect(
    circuit.parts.flatMap((part) =>
      part.kind === 'switch' ? [`${part.style} ${part.carrier ?? ''}`] : [],
    ),
  ).toEqual(['toggle ', 'mini-toggle ', 'push-pull neckTone', 'push-pull bridgeTone']);
});

test('what does not go together is not taken, and says why', async ({ page, app }) => {
  await openChanges(page, app.address);
  await group(page, 'Coil split').getByLabel('Neck pickup').click();
  const partial = group(page, 'Partial split');
  await partial.getByLabel('Neck pickup').click();
  await expect(partial.getByRole('alert')).toHaveText(
    'The split switch of the neck pickup is there already.',
  );
  await expect(partial.getByLabel('Neck pickup')).not.toBeChecked();
  await expect(group(page, 'Coil split').getByLabel('Neck pickup')).toBeChecked();
  // Taken off again, the other one fits.
  await group(page, 'Coil split').getByLabel('Neck pickup').click();
  await partial.getByLabel('Neck pickup').click();
  await expect(partial.getByLabel('Neck pickup')).toBeChecked();
});

test('another starting wiring starts unchanged, and what can never go there cannot be ticked', async ({
  page,
  app,
}) => {
  await openChanges(page, app.address);
  await group(page, 'Kill button').getByLabel('Output jack').click();
  await expect(page.getByText('1 ticked')).toBeVisible();
  await page.getByLabel(/two wide single coils.*two tones/i).check();
  await page.getByText('What was changed on it?').click();
  await expect(page.getByText('nothing', { exact: true })).toBeVisible();
  const phase = group(page, 'Phase of a pickup reversed');
  await expect(phase.getByLabel('Neck pickup')).toBeDisabled();
  await expect(phase).toContainText('give that metal a ground wire of its own first');
});

test('a left-handed guitar is told in one tap, whatever wiring is chosen after it', async ({
  page,
  app,
}) => {
  await page.goto(app.address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByLabel(/It is left-handed/).check();
  await page.getByLabel(/three single coils.*two tones/i).check();
  await expect(page.getByText(/, with left-handed pots\.$/)).toBeVisible();
  await button(page, 'Start').click();
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const pots = circuit.parts.filter((part) => part.kind === 'pot');
  expect(pots).toHaveLength(3);
  expect(pots.every(({ leftHanded }) => leftHanded)).toBe(true);
  // The controls lie mirrored: the cable first, the selector last.
  const controls = page.getByRole('list', { name: 'Controls as they must stand' });
  await expect(controls.getByRole('listitem').first()).toContainText('cable');
  await expect(controls.getByRole('listitem').last()).toContainText('selector');
});
