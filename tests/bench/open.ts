import { switchSettings } from '../../src/circuit/setting.ts';
import { exportJob } from '../../src/notebook/exchange.ts';
import { bringIn, onScreen } from '../e2e/hunting.ts';
import { LUGS, largeJob } from './made/large-job.ts';
import { rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

/** Each screen of the job by its address, and the screen that is waited for. */
const SCREENS = [
  ['hunt', 'asking'],
  ['drawing', 'drawing'],
  ['card', 'card'],
  ['record', 'record'],
] as const;

/**
 * A wiring of 80 lugs and 12 switch states opened in the built app at a quarter of this machine's speed, one odd reading entered, so that
 * pairs of faults are weighed: the longest task on the main thread on each screen of the job, from the touch until the screen stands still.
 */
export async function run() {
  const job = largeJob();
  const { page, address, slowDown, longTasks, close } = await slowPhone();
  await bringIn(page, address, exportJob(job));
  await onScreen(page, 'asking');
  await page.goto(`${address}#/`);
  await onScreen(page, 'home');
  await slowDown();
  await longTasks();
  const screens: Record<string, { longestTaskMs: number; tasksAbove50: number; shownMs: number }> =
    {};
  for (const [view, screen] of SCREENS) {
    const started = Date.now();
    await page.evaluate((view) => {
      location.hash = `#/job/large${view === 'hunt' ? '' : `/${view}`}`;
    }, view);
    await page.locator(`[data-screen=${screen}]`).waitFor({ timeout: 120_000 });
    const shownMs = Date.now() - started;
    await page.waitForTimeout(3000);
    const tasks = await longTasks();
    screens[view] = {
      longestTaskMs: rounded(Math.max(0, ...tasks)),
      tasksAbove50: tasks.length,
      shownMs,
    };
  }
  await close();
  return {
    openLongestTaskMs: Math.max(...Object.values(screens).map((one) => one.longestTaskMs)),
    open: {
      lugs: LUGS,
      switchStates: switchSettings(job.circuit).length,
      throttle: THROTTLE,
      screens,
    },
  };
}
