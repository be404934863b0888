import type { Page } from '@playwright/test';
import { Dice, simulate } from '../simulated/index.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { answer, askOn, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

/** How often the tab is killed; LUGWISE_KILLS=200 for the long run. */
const KILLS = Number(process.env['LUGWISE_KILLS'] ?? 3);
const oneKnob = {
  wiring: /one humbucker, one volume/i,
  title: 'Killed',
  open: true,
};

/** Ends the page at once, whatever it is doing (Chrome DevTools Protocol, Page.crash). */
async function kill(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  devtools.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

const idsIn = async (page: Page) => (await storedJob(page)).readings.map(({ id }) => id);

test(`a tab killed at ${KILLS} moments drawn at random loses nothing that the screen went on from`, async ({
  app,
  page,
}) => {
  test.setTimeout(60_000 + KILLS * 20_000);
  const dice = new Dice('kill');
  await page.goto(app.address);
  await startHunt(page, oneKnob);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'kill');
  const address = page.url();
  let tab = page;
  let kept: readonly string[] = [];
  for (let killed = 0; killed < KILLS; killed += 1) {
    for (let act = Math.floor(dice.between(0, 3)); act > 0; act -= 1) {
      const screen = await onScreen(tab, 'asking', 'changed', 'verdict', 'nothing-left');
      if (screen === 'asking') await answer(tab, guitar.answer(await askOn(tab)));
      else if (screen === 'changed') await button(tab, 'Go on').click();
      else await button(tab, 'Undo').click();
      await onScreen(tab, 'asking', 'changed', 'verdict', 'nothing-left');
      kept = await idsIn(tab);
    }
    // Into the middle of an act, or of what follows from it.
    const screen = await onScreen(tab, 'asking', 'changed', 'verdict', 'nothing-left');
    if (screen === 'asking') {
      const seen = guitar.answer(await askOn(tab));
      answer(tab, seen).catch(() => undefined);
      await tab.waitForTimeout(dice.between(0, 400));
    }
    await kill(tab);
    tab = await page.context().newPage();
    await tab.goto(address);
    await onScreen(tab, 'asking', 'verdict', 'nothing-left');
    expect(await idsIn(tab)).toEqual(expect.arrayContaining([...kept]));
    kept = await idsIn(tab);
  }
  expect(kept.length).toBeGreaterThan(0);
});

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
