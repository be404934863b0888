import type { Reading } from '../../src/readings/reading.ts';
import { type Sorting, sortLeads } from '../../src/sorter/sort.ts';
import { Dice } from '../simulated/index.ts';
import { simulatePickup } from '../simulated/pickup.ts';
import { drawPickup } from './drawn-pickup.ts';

export interface SortResult {
  readonly kind: string;
  readonly trouble: string;
  readonly leads: number;
  readonly state: Sorting['state'];
  readonly right: boolean;
  readonly probability: number;
  readonly readings: number;
  /** Processor time of each step: what else the machine does is not in it. */
  readonly stepMs: readonly number[];
  readonly story: readonly string[];
}

const LIMIT = 30;

/** One pickup sorted from first to last reading. */
export function sortOne(seed: number, at: number): SortResult {
  const dice = new Dice(`leads ${seed} ${at}`);
  const drawn = drawPickup(at, dice);
  const pickup = simulatePickup(drawn.real, drawn.edits, `leads ${seed} ${at}`, {
    wrongTaps: 0.07,
    wrongEntries: 0.03,
  });
  const readings: Reading[] = [];
  const story: string[] = [];
  const stepMs: number[] = [];
  const step = (): Sorting => {
    const before = process.cpuUsage();
    const found = sortLeads({ seen: drawn.seen, meter: pickup.meter, readings, refused: [] });
    const { user, system } = process.cpuUsage(before);
    stepMs.push((user + system) / 1000);
    return found;
  };
  let sorting = step();
  while (sorting.state === 'asking' && readings.length < LIMIT) {
    const next = sorting.next[0];
    if (!next) break;
    const seen = pickup.answer(next.ask);
    readings.push({
      id: `r${readings.length}`,
      ask: next.ask,
      seen,
      at: '2026-01-01T00:00:00Z',
      round: 0,
    });
    story.push(`${next.askText} ${JSON.stringify(seen)}`);
    sorting = step();
  }
  const roles = sorting.leads.map(({ role }) => role);
  const right = roles.join() === drawn.roles.join();
  story.push(`said ${roles.join()}`, `is ${drawn.roles.join()}`);
  return {
    kind: drawn.kind,
    trouble: drawn.trouble,
    leads: drawn.seen.leads.length,
    state: sorting.state,
    right,
    probability: sorting.probability,
    readings: readings.length,
    stepMs,
    story,
  };
}
