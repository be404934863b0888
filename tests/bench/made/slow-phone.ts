import { chromium, type Page } from 'playwright';
import { dist } from '../../../scripts/folders.ts';
import { startStaticServer } from '../../../scripts/static-server.ts';
import { browserLaunch } from '../../e2e/browser.ts';

/** How much slower than this machine the phone is taken to be. */
export const THROTTLE = 4;

export interface SlowPhone {
  readonly page: Page;
  readonly address: string;
  /** From here on the page runs at a quarter of this machine's speed. */
  slowDown(): Promise<void>;
  /** Milliseconds of each task above 50 on the main thread since the last call (Long Tasks API, W3C). */
  longTasks(): Promise<readonly number[]>;
  close(): Promise<void>;
}

/** The last build, opened and kept offline, in a browser of a phone's size. */
export async function slowPhone(): Promise<SlowPhone> {
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
    Object.assign(window, { tasks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) tasks.push(duration);
    }).observe({ type: 'longtask', buffered: true });
  });
  const address = `http://localhost:${server.port}/`;
  await page.goto(address);
  await page.getByText('Works offline').waitFor();
  return {
    page,
    address,
    async slowDown() {
      const session = await page.context().newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
    },
    // A task is told of once it is over: two frames later it is in the list.
    longTasks: () =>
      page.evaluate(async () => {
        for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame);
        return (window as unknown as { tasks: number[] }).tasks.splice(0);
      }),
    async close() {
      await browser.close();
      await server.stop();
    },
  };
}
