import { button, onScreen, readCautions, startHunt } from '../e2e/hunting.ts';
import { answer, askOn, storedJob } from '../e2e/player.ts';
import { simulate } from '../simulated/index.ts';
import { stepsInNode } from './made/hunt-in-node.ts';
import { percentile, rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

/**
 * From an entry to what comes next: in Node the engine alone, by processor time; in the built app at a quarter of this machine's speed as
 * the page itself sees it, by the clock, with the longest task on the main thread in the whole hunt.
 */
export async function run() {
  const inNode = stepsInNode();
  const { page, slowDown, longTasks, close } = await slowPhone();
  await page.evaluate(() => {
    const waits: number[] = [];
    Object.assign(window, { waits });
    let entered = 0;
    addEventListener(
      'click',
      ({ target }) => {
        const key = (target as Element).closest('.key-enter, .choices .large, .acts .main');
        if (key) entered = performance.now();
      },
      true,
    );
    // The next prompt is there once another title has the focus.
    addEventListener('focusin', ({ target }) => {
      if ((target as Element).tagName !== 'H1' || entered === 0) return;
      if (document.querySelector('[data-screen=waiting]')) return;
      waits.push(performance.now() - entered);
      entered = 0;
    });
  });
  await slowDown();
  await startHunt(page, {
    wiring: /two humbuckers, 3-position toggle, two volumes/i,
    title: 'Step',
  });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'bridgeSlug:winding' }], 'step');
  let readings = 0;
  for (; readings < 12; ) {
    const screen = await onScreen(page, 'asking', 'opening', 'changed', 'verdict', 'nothing-left');
    if (screen === 'verdict' || screen === 'nothing-left') break;
    if (screen === 'changed') await button(page, 'Go on').click();
    if (screen === 'opening') await button(page, 'It is open').click();
    if (screen === 'asking') {
      await answer(page, guitar.answer(await askOn(page)));
      readings += 1;
    }
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  const tasks = await longTasks();
  const waits = await page.evaluate(() => (window as unknown as { waits: number[] }).waits);
  await close();
  return {
    stepMsP50: rounded(percentile(inNode, 0.5)),
    stepMsP95: rounded(percentile(inNode, 0.95)),
    stepAt4xMsP50: rounded(percentile(waits, 0.5)),
    stepAt4xMsP95: rounded(percentile(waits, 0.95)),
    longestTaskMs: rounded(Math.max(0, ...tasks)),
    step: {
      stepsInNode: inNode.length,
      throttle: THROTTLE,
      readings,
      steps: waits.length,
      tasksAbove50: tasks.length,
    },
  };
}
