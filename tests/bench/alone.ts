import type { Page } from 'playwright';
import { exportJob } from '../../src/notebook/exchange.ts';
import { bringIn, onScreen } from '../e2e/hunting.ts';
import { largeJob } from './made/large-job.ts';
import { rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

const FRAME = 1000 / 60;
/** The still page is watched for as long, before the worker has anything to do, milliseconds. */
const STILL = 5000;

/** What the page asked of the engine about the wiring, and the script that answers. */
interface Question {
  readonly script: string;
  readonly message: object;
}

interface Frames {
  readonly ms: number;
  readonly frames: number;
  readonly missed: number;
  readonly longest: number;
}

/**
 * Whether the engine's compile of a wiring of 80 lugs takes frames from the page: the start screen stands still, and nothing is drawn
 * while the worker answers the question that opening this job asks. Beside it the same page with no worker at all, which tells what this
 * machine misses by itself.
 */
export async function run() {
  const { page, address, slowDown, longTasks, close } = await slowPhone(keepQuestion);
  await bringIn(page, address, exportJob(largeJob()));
  await onScreen(page, 'asking');
  const question = await page.evaluate(() => (window as unknown as { kept: Question }).kept);
  await page.goto('about:blank');
  await page.goto(address);
  await page.getByText('Works offline').waitFor();
  // What the start screen fetches ahead is there.
  await page.waitForTimeout(5000);
  await slowDown();
  await longTasks();
  const still = await framesWhile(page, null);
  await longTasks();
  const compiling = await framesWhile(page, question);
  const tasks = await longTasks();
  await close();
  const figures = ({ ms, frames, missed, longest }: Frames) => ({
    ms: rounded(ms),
    frames,
    missedFrames: missed,
    longestFrameMs: rounded(longest),
  });
  return {
    compileAloneTasksAbove50: tasks.length,
    compileAloneMissedPer1000: rounded((1000 * compiling.missed) / compiling.frames),
    stillMissedPer1000: rounded((1000 * still.missed) / still.frames),
    alone: { throttle: THROTTLE, still: figures(still), compiling: figures(compiling) },
  };
}

/** Of a question on its way, what is looked at here. */
interface Sent {
  readonly call?: string;
  readonly wiring?: { readonly place: number; readonly circuit?: object };
}

/** Keeps the first question about a wiring; runs in the page before anything else. */
function keepQuestion(): void {
  const kept: { script?: string; message?: object } = {};
  const circuits: object[] = [];
  Object.assign(window, { kept });
  const Made = window.Worker;
  window.Worker = class extends Made {
    readonly #script: string;
    constructor(script: string | URL, options?: WorkerOptions) {
      super(script, options);
      this.#script = String(script);
    }
    override postMessage(message: Sent, ...more: never[]): void {
      const { wiring } = message;
      if (wiring?.circuit) circuits[wiring.place] = wiring.circuit;
      // The wiring may have gone along with an earlier question.
      const whole = wiring && {
        ...message,
        wiring: { ...wiring, circuit: circuits[wiring.place] },
      };
      if (message.call === 'assess' && whole && !kept.message)
        Object.assign(kept, { script: this.#script, message: structuredClone(whole) });
      super.postMessage(message, ...more);
    }
  };
}

/** Frames of the page until the worker has answered, or for a while where there is none. */
const framesWhile = (page: Page, question: Question | null): Promise<Frames> =>
  page.evaluate(
    ([question, still, frame]) =>
      new Promise<Frames>((done, failed) => {
        const times: number[] = [];
        let running = true;
        const watch = (now: number) => {
          times.push(now);
          if (running) requestAnimationFrame(watch);
        };
        requestAnimationFrame(watch);
        const end = () => {
          running = false;
          const waits = times.slice(1).map((time, at) => time - (times[at] as number));
          done({
            ms: waits.reduce((sum, wait) => sum + wait, 0),
            frames: waits.length,
            missed: waits.reduce((sum, wait) => sum + Math.max(0, Math.round(wait / frame) - 1), 0),
            longest: Math.max(0, ...waits),
          });
        };
        if (!question) {
          setTimeout(end, still);
          return;
        }
        const worker = new Worker(question.script, { type: 'module' });
        const { id } = question.message as { id: number };
        worker.onmessage = ({ data }: MessageEvent<{ id: number; ok: boolean }>) => {
          if (data.id !== id) return;
          worker.terminate();
          if (data.ok) end();
          else failed(new Error('The engine could not answer.'));
        };
        worker.postMessage(question.message);
      }),
    [question, STILL, FRAME] as const,
  );
