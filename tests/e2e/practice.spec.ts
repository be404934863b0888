import type { Page } from '@playwright/test';
import { button, onScreen } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect as expectSoon, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });
// The engine makes the guitar up while it gets to know its wiring: on a busy machine that takes a while.
const expect = expectSoon.configure({ timeout: 20_000 });

// The guitar is made up from a new id: with ids that count up it is the same in every run.
test.beforeEach(({ page }) =>
  page.addInitScript(() => {
    let made = 0;
    crypto.randomUUID = () => {
      made += 1;
      return `00000000-0000-4000-8000-${String(made).padStart(12, '0')}`;
    };
  }),
);

/** Answers one question as a beginner does: acts, then takes the number over, or presses the key that was named. */
async function takeReading(page: Page): Promise<void> {
  const meter = page.locator('.practice-meter');
  await meter.getByRole('button').first().click();
  const shown = meter.locator('.practice-shown');
  await shown.waitFor();
  const takeOver = meter.getByRole('button', { name: 'Use it' });
  if ((await takeOver.count()) > 0) return takeOver.click();
  const word = ((await shown.textContent()) ?? '').split(':')[0] as string;
  await page.locator('.choices .large', { hasText: word }).first().click();
}

test('a practice guitar: one touch at home, its fault found and mended, without a network', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready');
  await app.stopServer();
  await page.reload();
  await button(page, /Practise on a made-up guitar/).click();
  await onScreen(page, 'symptom');
  await button(page, 'Plug it in and play').click();
  await expect(page.locator('.place-seen').first()).toBeVisible();
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  await button(page, 'The guitar is unplugged').click();

  const found = page.locator('.practice-end[data-found]');
  for (let taken = 0; taken < 25; ) {
    const screen = await onScreen(page, 'asking', 'changed', 'doubtful', 'verdict', 'repairing');
    // Whether it was found the engine says a moment after the verdict.
    if (screen === 'verdict') await page.locator('.practice-end').waitFor();
    if (screen === 'verdict' && (await found.count()) > 0) break;
    if (screen === 'changed') await button(page, 'Go on').click();
    if (screen === 'doubtful') await button(page, /as I typed it/).click();
    if (screen === 'verdict') {
      // What is hidden is told on asking only.
      await expect(page.getByText(/^Hidden in this guitar/)).toBeHidden();
      await button(page, 'How to mend it').click();
    }
    if (screen === 'repairing') await button(page, 'I did it').click();
    if (screen === 'asking') {
      await takeReading(page);
      taken += 1;
    }
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  await expect(found).toHaveAttribute('data-found', 'true');
  await expect(found).toContainText('You found it');
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await expect(found).toContainText('Hidden in this guitar');

  // Kept apart: no job for a closing check, no file, and a heading of its own at home.
  await page.getByRole('link', { name: 'See the record' }).click();
  await onScreen(page, 'record');
  await expect(page.getByText('it is not saved as a file')).toBeVisible();
  await expect(button(page, 'Save as a file')).toHaveCount(0);
  const home = app.address;
  await page.goto(`${home}#/check`);
  await expect(page.getByText('No guitar is on the bench yet.')).toBeVisible();
  await page.goto(`${home}#/`);
  await expect(page.getByText('No guitar yet.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Practice', exact: true })).toBeVisible();
  expect((await storedJob(page)).practice).toBeDefined();
  expect(complaints).toEqual([]);
});

test('a figure may be typed as it stands in the display, and the meter flickers when it is read again', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await button(page, /Practise on a made-up guitar/).click();
  await onScreen(page, 'symptom');
  await button(page, 'Not tried yet').click();
  await button(page, 'The guitar is unplugged').click();
  await onScreen(page, 'asking');
  await expect(page.locator('.screen')).toHaveAttribute('data-kind', 'ohms');
  await button(page, 'Touch the probes').click();
  const shown = (await page.locator('.practice-shown').textContent()) ?? '';
  await button(page, 'Again').click();
  const typed = shown === 'OL' ? shown : shown.replace(/ |Ω/g, '');
  await page.locator('.display-input').fill(typed);
  await button(page, 'Enter').click();
  await onScreen(page, 'changed', 'doubtful');
});

test('from the first opening to a first reading in five touches, and without a manual', async ({
  app,
  page,
}) => {
  await page.addInitScript(() => {
    Object.assign(window, { touches: 0 });
    addEventListener('click', () => {
      (window as unknown as { touches: number }).touches += 1;
    });
  });
  await page.goto(app.address);
  const touches = () => page.evaluate(() => (window as unknown as { touches: number }).touches);
  await button(page, /Practise on a made-up guitar/).click();
  await button(page, 'Not tried yet').click();
  await button(page, 'The guitar is unplugged').click();
  await onScreen(page, 'asking');
  expect(await touches()).toBe(3);
  await button(page, 'Touch the probes').click();
  await button(page, 'Use it').click();
  await onScreen(page, 'changed', 'doubtful');
  expect(await touches()).toBe(5);
});

test('how to have the app at hand is told after a finished hunt, once, and never before', async ({
  app,
  page,
}) => {
  await page.goto(app.address);
  await page.evaluate(() => {
    const offer = new Event('beforeinstallprompt', { cancelable: true });
    Object.assign(offer, {
      prompt: async () => Object.assign(window, { asked: true }),
    });
    window.dispatchEvent(offer);
    if (!offer.defaultPrevented) throw new Error('The browser would ask at once.');
  });
  const hint = page.locator('.install-hint');
  await button(page, /Practise on a made-up guitar/).click();
  await onScreen(page, 'symptom');
  await expect(hint).toHaveCount(0);
  await page.locator('.strip-job').click();
  await onScreen(page, 'record');
  await expect(hint).toHaveCount(0);
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await expect(hint).toBeVisible();
  await button(page, 'Add to home screen').click();
  expect(await page.evaluate(() => (window as unknown as { asked: boolean }).asked)).toBe(true);
  await expect(hint).toHaveCount(0);
  await button(page, 'Take it up again').click();
  await onScreen(page, 'symptom');
  await page.locator('.strip-job').click();
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await expect(hint).toHaveCount(0);
});

test('one who gives up is told what was hidden', async ({ app, page }) => {
  await page.goto(app.address);
  await button(page, /Practise on a made-up guitar/).click();
  await onScreen(page, 'symptom');
  await page.locator('.strip-job').click();
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await expect(page.locator('.practice-end')).toContainText('Not found this time');
  await expect(page.locator('.practice-end')).toContainText('What mends it');
});
