import { chromium } from 'playwright';
import { dist } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import { browserLaunch } from '../e2e/browser.ts';
import { button, onScreen, readCautions, startHunt } from '../e2e/hunting.ts';
import { answer, askOn, storedJob } from '../e2e/player.ts';
import { simulate } from '../simulated/index.ts';
import { percentile, rounded } from './made/percentile.ts';

/** How much slower than this machine the phone is taken to be. */
const THROTTLE = 4;

/**
 * A whole hunt in the built app at a quarter of this machine's speed: the longest task on the main thread, and the time from an entry to
 * what comes next, as the page itself sees both.
 */
export async function run() {
  const server = await startStaticServer({
    folder: dist,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
  });
  const browser = await chromium.launch(browserLaunch);
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.addInitScript(() => {
    const tasks: number[] = [];
    const waits: number[] = [];
    Object.assign(window, { tasks, waits });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask', buffered: true });
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
  await page.goto(`http://localhost:${server.port}/`);
  await page.getByText('Works offline').waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
  await page.evaluate(() => (window as unknown as { tasks: number[] }).tasks.splice(0));
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
  const { tasks, waits } = await page.evaluate(() => {
    const seen = window as unknown as { tasks: number[]; waits: number[] };
    return { tasks: seen.tasks, waits: seen.waits };
  });
  await browser.close();
  await server.stop();
  return {
    stepP95Ms: rounded(percentile(waits, 0.95)),
    longestTaskMs: rounded(Math.max(0, ...tasks)),
    step: {
      throttle: THROTTLE,
      readings,
      steps: waits.length,
      medianMs: rounded(percentile(waits, 0.5)),
      tasksAbove50: tasks.length,
    },
  };
}
