import type { Page } from '@playwright/test';
import { simulate } from '../simulated/index.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { answer, askOn, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** What moves or would move on this screen, by its class: by its computed style, before and after it too, or because it runs. */
const moving = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const lasts = (times: string) => times.split(',').some((time) => Number.parseFloat(time) > 0);
    const styled = [...document.querySelectorAll('*')].flatMap((element) =>
      [undefined, '::before', '::after'].flatMap((part) => {
        const style = getComputedStyle(element, part);
        const moves =
          lasts(style.transitionDuration) ||
          (style.animationName !== 'none' && lasts(style.animationDuration));
        return moves ? [`${element.getAttribute('class') ?? element.tagName}${part ?? ''}`] : [];
      }),
    );
    return [...styled, ...document.getAnimations().map((one) => `runs: ${one.constructor.name}`)];
  });

test('nothing moves on asking, result and verdict where less motion is asked for', async ({
  app,
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto(app.address);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Still', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'still');
  const found: Record<string, readonly string[]> = {};
  const would: Record<string, number> = {};
  for (let steps = 0; steps < 24; steps += 1) {
    const screen = await onScreen(page, 'asking', 'changed', 'verdict');
    found[screen] = await moving(page);
    if (screen === 'asking' || screen === 'changed') {
      // The same screen does move where nobody asks for less.
      await page.emulateMedia({ reducedMotion: 'no-preference' });
      would[screen] = (await moving(page)).length;
      await page.emulateMedia({ reducedMotion: 'reduce' });
    }
    if (screen === 'verdict') break;
    if (screen === 'changed') await button(page, 'Go on').click();
    else await answer(page, guitar.answer(await askOn(page)));
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  expect(found).toEqual({ asking: [], changed: [], verdict: [] });
  expect(would['asking']).toBeGreaterThan(0);
  expect(would['changed']).toBeGreaterThan(0);
});
