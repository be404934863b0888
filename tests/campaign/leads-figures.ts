import type { SortResult } from './leads.ts';
import type { Optimum } from './leads-optimum.ts';
import { wilson } from './wilson.ts';

const round = (value: number): number => Math.round(value * 1e4) / 1e4;
const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : round(values.reduce((sum, value) => sum + value, 0) / values.length);

/** What `npm run campaign -- --flow leads` prints. Shares and means are over all pickups drawn unless a name says otherwise. */
export function leadFigures(results: readonly SortResult[], optima: readonly Optimum[]) {
  const share = (list: readonly SortResult[], which: (one: SortResult) => boolean) =>
    mean(list.map((one) => (which(one) ? 1 : 0)));
  const steps = results.flatMap(({ stepMs }) => stepMs).sort((x, y) => x - y);
  const times = (which: (one: SortResult) => boolean) => results.filter(which).length;
  const isRight = ({ right }: SortResult) => right;
  const isConfidentlyWrong = ({ right, state }: SortResult) => !right && state === 'settled';
  const byLeads = (count: number) => results.filter(({ leads }) => leads === count);
  return {
    flow: 'leads' as const,
    count: results.length,
    /** The likeliest assignment is the right one when no reading is asked any more. */
    rightFirst: share(results, isRight),
    right: times(isRight),
    rightInterval95: wilson(times(isRight), results.length),
    rightFirstWithoutFault: share(
      results.filter(({ trouble }) => trouble === 'none'),
      ({ right }) => right,
    ),
    confidentlyWrong: share(results, isConfidentlyWrong),
    confidentlyWrongTimes: times(isConfidentlyWrong),
    confidentlyWrongInterval95: wilson(times(isConfidentlyWrong), results.length),
    settled: share(results, ({ state }) => state === 'settled'),
    /** With wrong taps, wrong entries and faults: repeats are in it, which the optimum below does not need. */
    meanReadings: mean(results.map(({ readings }) => readings)),
    meanReadingsByLeads: Object.fromEntries(
      [2, 3, 4, 5, 6].map((count) => [count, mean(byLeads(count).map(({ readings }) => readings))]),
    ),
    /** Nothing broken, nothing read wrong, by number of leads: the best policy, ours, and the ratio. */
    optimumMeanReadings: Object.fromEntries(
      optima.map(({ leads, optimum }) => [leads, round(optimum)]),
    ),
    noiselessMeanReadings: Object.fromEntries(
      optima.map(({ leads, ours }) => [leads, round(ours)]),
    ),
    noiselessOverOptimum: Object.fromEntries(
      optima.map(({ leads, ours, optimum }) => [leads, round(ours / optimum)]),
    ),
    stepMsP50: Math.round(steps[Math.floor(steps.length * 0.5)] ?? 0),
    stepMsP95: Math.round(steps[Math.floor(steps.length * 0.95)] ?? 0),
  };
}
