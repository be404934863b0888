import type { Page } from '@playwright/test';
import { assess } from '../../src/diagnosis/assess.ts';
import { evidenceOf } from '../../src/flows/index.ts';
import { type SimulatedGuitar, simulate } from '../simulated/index.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { answer, playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const assessed = async (page: Page) => assess(evidenceOf(await storedJob(page)));

/** From the start to where the app would have the guitar opened; every reading before that is worth asking. */
async function playClosed(page: Page, address: string): Promise<SimulatedGuitar> {
  await page.goto(address);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Closed' });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'closed');
  for (let taken = 0; taken < 10; taken++) {
    const screen = await onScreen(page, 'asking', 'opening', 'verdict', 'nothing-left');
    const { next } = await assessed(page);
    if (screen !== 'asking') return guitar;
    expect(next[0]?.worthBits).toBeGreaterThanOrEqual(0.15);
    await answer(page, guitar.answer(next[0]!.ask));
    await onScreen(page, 'changed');
    await button(page, 'Go on').click();
  }
  throw new Error('Ten readings from outside, and each was worth its trouble.');
}

test('a closed guitar is to be opened when a reading from outside tells little', async ({
  app,
  page,
}) => {
  test.setTimeout(120_000);
  const guitar = await playClosed(page, app.address);
  await onScreen(page, 'opening');
  await expect(page.locator('.screen-opening')).toContainText('left outside tell little');
  await expect(page.locator('.screen-opening')).toContainText('Keep the guitar unplugged');
  await button(page, 'It is open').click();
  await onScreen(page, 'asking', 'verdict');
  expect((await storedJob(page)).access).toBe('open');
  expect(await playUntilAnswered(page, guitar)).toBe('verdict');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('output jack');
});

test('a guitar kept closed: what cannot be told apart is listed, each with its own steps', async ({
  app,
  page,
}) => {
  test.setTimeout(120_000);
  const guitar = await playClosed(page, app.address);
  await button(page, 'Keep it closed').click();
  await onScreen(page, 'asking');
  // It can still be opened, and is not asked for at every reading.
  await expect(page.locator('.open-offer')).toBeVisible();
  for (let taken = 0; (await onScreen(page, 'asking', 'verdict')) === 'asking'; taken++) {
    expect(taken).toBeLessThan(10);
    await answer(page, guitar.answer((await assessed(page)).next[0]!.ask));
    await onScreen(page, 'changed');
    await button(page, 'Go on').click();
    await page.locator('[data-screen=changed]').waitFor({ state: 'detached' });
  }
  const { verdict } = await assessed(page);
  expect(verdict?.kind).toBe('cannot-tell-apart');
  await expect(button(page, /The guitar is open now/)).toBeVisible();
  await button(page, 'How to mend it').click();
  const options = verdict!.options;
  expect(options.length).toBeGreaterThan(1);
  for (const { title, steps, proof } of options) {
    await page.getByRole('radio', { name: title }).check();
    await expect(page.locator('.steps li')).toHaveText([...steps]);
    await expect(page.locator('.screen-repairing')).toContainText(proof);
  }
  await page.getByRole('radio').nth(1).check();
  await button(page, 'I did it').click();
  await onScreen(page, 'asking', 'opening');
  expect((await storedJob(page)).repairs).toMatchObject(
    [options[1]!].map(({ repair }) => ({ repair })),
  );
});
