import type { Page } from 'playwright';
import { button, onScreen, startHunt } from '../e2e/hunting.ts';
import { percentile, rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

/** Places of the pointer from one end of the slider to the other, one a frame of 60 a second. */
const PLACES = 60;
const FRAME = 1000 / 60;
const DRAGS = 4;

/**
 * A knob dragged to and fro on the value trial at a quarter of this machine's speed, with the other knob's sweep in the chart: tasks above
 * 50 ms on the main thread, time from frame to frame, and how much of its own time the main thread spends for each new curve. On a
 * machine that has other work, tasks take longer than their work does; the time for a curve suffers less.
 */
export async function run() {
  const { page, slowDown, longTasks, close } = await slowPhone();
  await startHunt(page, { wiring: /three single coils.*two tones/i, title: 'Drag' });
  await onScreen(page, 'symptom');
  await button(page, 'Not tried yet').click();
  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'Try a value' }).click();
  await page.locator('svg.chart').waitFor();
  await page.getByLabel('Kind').selectOption('parallel');
  await page.getByLabel('Show the sweep of').selectOption({ index: 2 });
  await page.locator('.screen-trial details').first().waitFor();
  await slowDown();
  await watchFrames(page);
  const metrics = await metricsOf(page);
  const slider = page.getByRole('slider', { name: 'volume' });
  await slider.scrollIntoViewIfNeeded();
  const box = await slider.boundingBox();
  if (!box) throw new Error('The slider is not on the screen.');
  const y = box.y + box.height / 2;
  const at = (share: number) => box.x + 10 + share * (box.width - 20);
  await page.mouse.move(at(1), y);
  await longTasks();
  await page.mouse.down();
  const before = await metrics();
  for (let drag = 0; drag < DRAGS; drag++)
    for (let place = 0; place <= PLACES; place++) {
      const share = place / PLACES;
      const began = performance.now();
      await page.mouse.move(at(drag % 2 ? share : 1 - share), y);
      await new Promise((done) =>
        setTimeout(done, Math.max(0, FRAME - (performance.now() - began))),
      );
    }
  await page.mouse.up();
  const after = await metrics();
  const tasks = await longTasks();
  const { frames, curves } = await page.evaluate(
    () => (window as unknown as { watched: { frames: number[]; curves: number } }).watched,
  );
  await close();
  const each = (name: string) =>
    rounded((1000 * ((after[name] ?? 0) - (before[name] ?? 0))) / curves);
  return {
    dragTasksAbove50: tasks.length,
    dragLongestTaskMs: rounded(Math.max(0, ...tasks)),
    drag: {
      throttle: THROTTLE,
      drags: DRAGS,
      frames: frames.length,
      frameMedianMs: rounded(percentile(frames, 0.5)),
      frameP95Ms: rounded(percentile(frames, 0.95)),
      curves,
      scriptMsPerCurve: each('ScriptDuration'),
      layoutMsPerCurve: rounded(each('LayoutDuration') + each('RecalcStyleDuration')),
      taskMsPerCurve: each('TaskDuration'),
    },
  };
}

/** Seconds that the main thread has spent so far, by kind, on its own clock. */
async function metricsOf(page: Page): Promise<() => Promise<Readonly<Record<string, number>>>> {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await session.send('Performance.getMetrics');
    return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  };
}

const watchFrames = (page: Page) =>
  page.evaluate(() => {
    const watched = { frames: [] as number[], curves: 0 };
    Object.assign(window, { watched });
    let last = performance.now();
    let shown = '';
    const frame = (now: number) => {
      watched.frames.push(now - last);
      last = now;
      const path = [...document.querySelectorAll('svg.chart path')].at(-1)?.getAttribute('d') ?? '';
      if (path !== shown) watched.curves += 1;
      shown = path;
      requestAnimationFrame(frame);
    };
    requestAnimationFrame(frame);
  });
