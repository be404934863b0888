import { chromium, type Page } from 'playwright';
import { dist } from '../../../scripts/folders.ts';
import { startStaticServer } from '../../../scripts/static-server.ts';
import { browserLaunch } from '../../e2e/browser.ts';

/** How much slower than this machine the phone is taken to be. */
export const THROTTLE = 4;

export interface SlowPhone {
  readonly page: Page;
  readonly address: string;
  /** From here on the page runs at a quarter of this machine's speed, and its tasks are measured. */
  slowDown(): Promise<void>;
  /**
   * Milliseconds of processor time of each task above 50 on the main thread since the last call: by the clock, a busy machine would be
   * measured with it. Longer than so is what the Long Tasks API (W3C) tells of.
   */
  longTasks(): Promise<readonly number[]>;
  close(): Promise<void>;
}

/** The last build, opened and kept offline, in a browser of a phone's size; `before` runs in the page before anything of its own. */
export async function slowPhone(before?: () => void): Promise<SlowPhone> {
  const server = await startStaticServer({
    folder: dist,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
  });
  const browser = await chromium.launch(browserLaunch);
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  if (before) await page.addInitScript(before);
  const address = `http://localhost:${server.port}/`;
  await page.goto(address);
  await page.getByText('Works offline').waitFor();
  return {
    page,
    address,
    async slowDown() {
      const session = await page.context().newCDPSession(page);
      await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
      await browser.startTracing(page, { categories });
    },
    async longTasks() {
      const trace = await browser.stopTracing();
      await browser.startTracing(page, { categories });
      return longTasksIn(trace);
    },
    async close() {
      await browser.close();
      await server.stop();
    },
  };
}

const LONG = 50;
const categories = [
  'toplevel',
  'devtools.timeline',
  'disabled-by-default-devtools.timeline',
  'v8',
  '__metadata',
];
/** What a page does by itself: script, style, layout, paint, collection of what is no longer used. */
const OWN =
  /^(FunctionCall|EvaluateScript|v8\.evaluateModule|v8\.compile.*|EventDispatch|TimerFire|FireAnimationFrame|Layout|UpdateLayoutTree|PrePaint|Paint|Layerize|ParseHTML|MinorGC|MajorGC|RunMicrotasks)$/;

/** One event of a trace (Trace Event Format): a complete one, `X`, has its processor time in `tdur`, in microseconds. */
interface TraceEvent {
  readonly ph: string;
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** Start and length by the clock, microseconds. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string; readonly data?: { readonly url?: string } };
}

/** Script that is in no file: a command of this bench, which looks at the page or presses something in it. */
const isCommand = ({ name, args }: TraceEvent): boolean =>
  (name === 'FunctionCall' || name === 'EvaluateScript') && !args?.data?.url;

/** Main threads that a trace has named so far: a short one names none. */
const mains = new Set<string>();

function longTasksIn(trace: Buffer): readonly number[] {
  const { traceEvents } = JSON.parse(trace.toString()) as { readonly traceEvents: TraceEvent[] };
  for (const { name, args, pid, tid } of traceEvents)
    if (name === 'thread_name' && args?.name === 'CrRendererMain') mains.add(`${pid} ${tid}`);
  if (mains.size === 0) throw new Error('The trace names no main thread.');
  const onMain = traceEvents.filter(({ ph, pid, tid }) => ph === 'X' && mains.has(`${pid} ${tid}`));
  const own = onMain.filter((one) => OWN.test(one.name) && !isCommand(one));
  return (
    onMain
      .filter(({ name, tdur = 0 }) => name === 'RunTask' && tdur > LONG * 1000)
      // A task that a command of this bench fills, to look at the page, is none of the page's.
      .filter(({ ts, dur = 0, pid, tid, tdur = 0 }) =>
        own.some(
          (one) =>
            one.pid === pid &&
            one.tid === tid &&
            one.ts >= ts &&
            one.ts <= ts + dur &&
            (one.tdur ?? 0) > 0.2 * tdur,
        ),
      )
      .map(({ tdur = 0 }) => tdur / 1000)
  );
}
