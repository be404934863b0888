import type { Layout } from '../circuit/netlist.ts';
import { effortOf } from '../diagnosis/effort.ts';
import type { Ask } from '../readings/reading.ts';

/** Seconds to set the meter to another function (common practice, no source). */
const METER = 4;

/** What the meter must be set to; the last two are done with an amplifier. */
const means = (ask: Ask): 'ohms' | 'millivolts' | 'amplifier' =>
  ask.kind === 'tap'
    ? 'millivolts'
    : ask.kind === 'listen' || ask.kind === 'touch'
      ? 'amplifier'
      : 'ohms';
const TURN = ['ohms', 'millivolts', 'amplifier'];

const step = (layout: Layout, from: Ask | null, to: Ask): number =>
  effortOf(layout, to, from) + (from && means(from) !== means(to) ? METER : 0);

/** Seconds for a list of asks in this order, from knobs up and no probe placed. */
export function secondsOf(layout: Layout, asks: readonly Ask[]): number {
  return asks.reduce((sum, ask, at) => sum + step(layout, asks[at - 1] ?? null, ask), 0);
}

/**
 * The asks in an order that moves controls and probes little: ohms, then taps, then what is heard; within each the nearest next, then
 * single asks moved to a better place until none is left (an open travelling-salesman path, by insertion).
 * @param before what was asked just before
 */
export function inOrder<T extends { readonly ask: Ask }>(
  layout: Layout,
  list: readonly T[],
  before?: T,
): readonly T[] {
  const known = new Map<Ask | null, Map<Ask, number>>();
  const cost = (from: T | undefined, to: T | undefined): number => {
    if (!to) return 0;
    const key = from?.ask ?? null;
    const row = known.get(key) ?? new Map<Ask, number>();
    known.set(key, row);
    const value = row.get(to.ask) ?? step(layout, key, to.ask);
    row.set(to.ask, value);
    return value;
  };
  let done: T[] = [];
  const last = () => done.at(-1) ?? before;
  for (const meter of TURN) {
    const left = list.filter(({ ask }) => means(ask) === meter);
    const block: T[] = [];
    while (left.length > 0) {
      const from = block.at(-1) ?? last();
      const next = left.reduce((x, y) => (cost(from, y) < cost(from, x) ? y : x));
      left.splice(left.indexOf(next), 1);
      block.push(next);
    }
    done = [...done, ...improved(block, last(), cost)];
  }
  return done;
}

/** Passes over the block; each moves asks to where they cost least. */
const PASSES = 4;

function improved<T>(
  block: readonly T[],
  before: T | undefined,
  cost: (from: T | undefined, to: T | undefined) => number,
): readonly T[] {
  const path = [...block];
  const at = (index: number): T | undefined => (index < 0 ? before : path[index]);
  for (let pass = 0; pass < PASSES; pass += 1) {
    let better = false;
    for (let from = 0; from < path.length; from += 1) {
      const one = path[from] as T;
      const saved =
        cost(at(from - 1), one) + cost(one, at(from + 1)) - cost(at(from - 1), at(from + 1));
      path.splice(from, 1);
      let [best, least] = [from, saved - 1e-9];
      for (let to = 0; to <= path.length; to += 1) {
        const added = cost(at(to - 1), one) + cost(one, at(to)) - cost(at(to - 1), at(to));
        if (added < least) [best, least] = [to, added];
      }
      path.splice(best, 0, one);
      better ||= best !== from;
    }
    if (!better) break;
  }
  return path;
}
