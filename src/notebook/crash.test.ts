import { IDBObjectStore } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { freshDevice, putDeviceAway, tab, throwing, withReading } from './device.fixture.ts';
import { emptyJob, moment } from './job.fixture.ts';
import type { Job } from './job.ts';
import type { Notebook } from './notebook.ts';

/** Courses that are tried; CRASH_RUNS=2000 for a longer run. */
const RUNS = Number(process.env['CRASH_RUNS'] ?? 40);

/**
 * What befalls one of two tabs: it stores a reading; its page is killed in the middle of storing one, at the request of the
 * given number, and opened anew; the phone is full while it stores one; it takes up what the other tab did.
 */
type Event = { readonly tab: 0 | 1 } & (
  | { readonly what: 'store' | 'full' | 'look' }
  | { readonly what: 'kill'; readonly at: number }
);

const event: fc.Arbitrary<Event> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ tab: fc.constantFrom(0, 1), what: fc.constant('store') }) },
  fc.record({ tab: fc.constantFrom(0, 1), what: fc.constantFrom('full', 'look') }),
  fc.record({ tab: fc.constantFrom(0, 1), what: fc.constant('kill'), at: fc.nat(2) }),
) as fc.Arbitrary<Event>;

beforeEach(freshDevice);
afterEach(putDeviceAway);

/**
 * The browser dies while the next write is under way, which takes two requests, a get and a put: at one of them, or after both
 * and before its transaction came to its end.
 */
function dieAt(request: number): () => void {
  let left = request;
  const dying = (method: 'get' | 'put') => {
    const original = IDBObjectStore.prototype[method];
    return vi.spyOn(IDBObjectStore.prototype, method).mockImplementation(function (
      this: IDBObjectStore,
      ...args: unknown[]
    ) {
      const sent = (original as (...all: unknown[]) => IDBRequest).apply(this, args);
      const { transaction } = this;
      if (left === 0) transaction.abort();
      if (left === 1 && method === 'put')
        sent.addEventListener('success', () => transaction.abort());
      left -= 1;
      return sent;
    } as never);
  };
  const spies = [dying('get'), dying('put')];
  return () => {
    for (const spy of spies) spy.mockRestore();
  };
}

async function play(events: readonly Event[]): Promise<void> {
  freshDevice();
  const tabs: [Notebook, Notebook] = [await tab(), await tab()];
  await tabs[0].write(emptyJob());
  const jobs: [Job, Job] = [await tabs[0].read('job-1'), await tabs[1].read('job-1')];
  const said = new Set<string>();
  for (const [minute, one] of events.entries()) {
    const which = one.tab;
    if (one.what === 'look') {
      jobs[which] = await tabs[which].read('job-1');
      continue;
    }
    const next = withReading(jobs[which], minute + 1);
    const restore =
      one.what === 'full'
        ? vi
            .spyOn(IDBObjectStore.prototype, 'put')
            .mockImplementation(throwing('QuotaExceededError')).mockRestore
        : one.what === 'kill'
          ? dieAt(one.at)
          : () => undefined;
    const stored = await tabs[which].write(next).catch(() => null);
    restore();
    if (stored) said.add(moment(minute + 1));
    // After a failure the page goes on with what it has; a dead one begins anew.
    jobs[which] = stored ?? next;
    if (one.what !== 'kill') continue;
    tabs[which].close();
    tabs[which] = await tab();
    jobs[which] = await tabs[which].read('job-1');
  }
  const kept = new Set((await (await tab()).read('job-1')).readings.map(({ at }) => at));
  expect([...said].filter((at) => !kept.has(at))).toEqual([]);
  for (const one of tabs) one.close();
}

it('whatever befalls two tabs, no reading is lost that was said to be stored', async () => {
  await fc.assert(fc.asyncProperty(fc.array(event, { minLength: 1, maxLength: 12 }), play), {
    numRuns: RUNS,
  });
}, 600_000);
