import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { root } from '../../scripts/folders.ts';
import type { EngineWork } from './made/engine-work.ts';
import { rounded } from './made/percentile.ts';

const WORK: readonly EngineWork[] = ['hunt', 'large wiring', 'card', 'closing'];
/**
 * Megabytes of objects that live longer than a moment within which each of it must run: a worker that needs more ends with an error, and
 * the bench with it. A phone gives a page some hundreds.
 */
const LIMIT = 160;
/** Milliseconds between two looks. */
const EVERY = 5;

/**
 * The most memory that the engine's worker holds while it works, in megabytes: JavaScript objects and array buffers, what is not yet
 * collected too. Without a limit the collector lets twice as much lie about before it looks. Each work has a worker of its own, as a person who opens the app for it.
 */
export async function run() {
  const peaks: Record<string, number> = {};
  for (const work of WORK) peaks[work] = rounded((await peakBytes(work)) / 1e6);
  return {
    workerPeakMb: Math.max(...Object.values(peaks)),
    workerLimitMb: LIMIT,
    memory: peaks,
  };
}

async function peakBytes(work: EngineWork): Promise<number> {
  const worker = new Worker(join(root, 'tests/bench/made/engine-work.ts'), {
    workerData: work,
    resourceLimits: { maxOldGenerationSizeMb: LIMIT },
  });
  let [peak, ended] = [0, false];
  const end = new Promise<void>((resolve, reject) => {
    worker.once('error', reject);
    worker.once('exit', () => {
      ended = true;
      resolve();
    });
  });
  const look = async (): Promise<void> => {
    while (!ended) {
      // Interrupts the worker in its work; a worker that has just ended cannot be asked.
      const heap = await worker.getHeapStatistics().catch(() => null);
      if (heap) peak = Math.max(peak, heap.used_heap_size + heap.external_memory);
      await wait(EVERY);
    }
  };
  await Promise.all([end, look()]);
  return peak;
}
