import { readFileSync } from 'node:fs';
import type { ClosingResult } from './closing.ts';
import { shareOf } from './share.ts';

const round = (value: number): number => Math.round(value * 1e4) / 1e4;
const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : round(values.reduce((sum, value) => sum + value, 0) / values.length);
/** One list for each wiring: lists for other meters differ by a reading or two. */
const lists = (results: readonly ClosingResult[]) => [
  ...new Map(results.map((one) => [one.wiring, one])).values(),
];

/** What campaigns with --add have left in a file: a line of JSON each. */
export const keptIn = (file: string): readonly ClosingResult[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as ClosingResult);

/** What `npm run campaign -- --flow closing` prints. Shares are of the guitars with that trouble, each with its 95 % interval. */
export function closingFigures(results: readonly ClosingResult[]) {
  const of = (trouble: ClosingResult['trouble']) =>
    results.filter((one) => one.trouble === trouble);
  const failed = (trouble: ClosingResult['trouble']) =>
    shareOf(of(trouble).map(({ state }) => state === 'failed'));
  const [healthy, single, double] = [failed('healthy'), failed('single'), failed('double')];
  const plans = lists(results);
  return {
    flow: 'closing' as const,
    count: results.length,
    healthy: healthy.of,
    /** Share of healthy guitars of which a reading failed for good. */
    falseAlarm: healthy.share,
    falseAlarmInterval: [healthy.from, healthy.to],
    singles: single.of,
    /** Share of single faults that the list claims, evenly over these, of which a reading failed. */
    caughtSingle: single.share,
    caughtSingleInterval: [single.from, single.to],
    doubles: double.of,
    caughtDouble: double.share,
    caughtDoubleInterval: [double.from, double.to],
    wirings: plans.length,
    /** By wiring: readings in the list, each as often as it is taken, and the fewest any such list needs. */
    meanPlanReadings: mean(plans.map(({ planReadings }) => planReadings)),
    lowerBoundReadings: mean(plans.map(({ lowerBoundReadings }) => lowerBoundReadings)),
    /** Minutes that the list takes at the bench by our estimate, and of these for its head; readings and share of what goes wrong of that. */
    meanMinutes: mean(plans.map(({ minutes }) => minutes)),
    meanFirstReadings: mean(plans.map(({ firstReadings }) => firstReadings)),
    meanFirstMinutes: mean(plans.map(({ firstMinutes }) => firstMinutes)),
    meanFirstShare: mean(plans.map(({ firstShare }) => firstShare)),
    /** Readings taken on healthy guitars, repeats included. */
    meanReadingsHealthy: mean(of('healthy').map(({ taken }) => taken)),
    /** Looked at every eight lines. */
    meanReadingsUntilCaught: mean(
      [...of('single'), ...of('double')]
        .filter(({ state }) => state === 'failed')
        .map(({ taken }) => taken),
    ),
  };
}

/** The same by wiring, as rows of a table. */
export function closingByWiring(results: readonly ClosingResult[]) {
  const part = (wiring: string, trouble: ClosingResult['trouble']) => {
    const { of, count } = shareOf(
      results
        .filter((one) => one.wiring === wiring && one.trouble === trouble)
        .map(({ state }) => state === 'failed'),
    );
    return `${count} of ${of}`;
  };
  return lists(results).map((one) => ({
    wiring: one.wiring,
    readings: one.planReadings,
    atLeast: one.lowerBoundReadings,
    minutes: round(one.minutes),
    firstReadings: one.firstReadings,
    firstMinutes: round(one.firstMinutes),
    alarmsHealthy: part(one.wiring, 'healthy'),
    caughtSingle: part(one.wiring, 'single'),
    caughtDouble: part(one.wiring, 'double'),
  }));
}
