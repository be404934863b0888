import type { HuntResult } from './hunt.ts';

export interface HuntFigures {
  readonly flow: 'hunt';
  readonly count: number;
  /** Share of single faults, drawn by prior, whose repair leads when the hunt ends. */
  readonly rightFirst: number | null;
  /** The same among guitars on which something was heard to be wrong, and how large a share these are. */
  readonly rightFirstNoticed: number | null;
  readonly noticed: number | null;
  readonly meanReadingsNoticed: number | null;
  readonly rightFirstUniform: number | null;
  /** Share of double faults of which one of the two repairs leads. */
  readonly rightFirstDouble: number | null;
  readonly meanReadings: number | null;
  readonly meanReadingsUniform: number | null;
  readonly meanReadingsHealthy: number | null;
  /** Share of healthy guitars that get a verdict naming a repair. */
  readonly falseAlarm: number | null;
  /** Share of guitars with something not modelled of which it is said that nothing modelled fits, and share that get a repair named with 95 % or more. */
  readonly outsideFlagged: number | null;
  readonly outsideFlaggedPath: number | null;
  readonly outsideFlaggedLead: number | null;
  readonly outsideFlaggedLeads: number | null;
  readonly outsideFlaggedPathAndLead: number | null;
  readonly outsideMisnamed: number | null;
  /** Mean gap between stated probability and share right, over ten bins, weighted by their counts. */
  readonly calibrationError: number | null;
  /** What that gap would be on average over so few hunts if every stated probability held exactly. */
  readonly calibrationNoise?: number | null;
  readonly fixedOrderMeanReadings: number | null;
  readonly fixedOrderRightFirst: number | null;
  readonly stepMsP50: number;
  readonly stepMsP95: number;
}

const isPath = ({ strange }: HuntResult): boolean => strange === 'path';
const isLead = ({ strange }: HuntResult): boolean => strange === 'lead';
const isBoth = ({ strange }: HuntResult): boolean => strange === 'path and lead';
const isLeads = ({ strange }: HuntResult): boolean => strange === 'leads';
const mean = (values: readonly number[]): number | null =>
  values.length === 0 ? null : round(values.reduce((sum, value) => sum + value, 0) / values.length);
const share = (list: readonly HuntResult[], which: (one: HuntResult) => boolean): number | null =>
  mean(list.map((one) => (which(one) ? 1 : 0)));
const round = (value: number): number => Math.round(value * 1e4) / 1e4;

export function figuresOf(results: readonly HuntResult[]): HuntFigures {
  const ours = results.filter((one) => one.order === 'ours');
  const of = (kind: HuntResult['kind']) => ours.filter((one) => one.kind === kind);
  const noticed = of('single-by-prior').filter((one) => one.noticed);
  const fixed = results.filter((one) => one.order === 'fixed');
  const steps = ours.flatMap((one) => one.stepMs).sort((x, y) => x - y);
  return {
    flow: 'hunt',
    count: ours.length,
    rightFirst: share(of('single-by-prior'), (one) => one.right),
    rightFirstNoticed: share(noticed, (one) => one.right),
    noticed: share(of('single-by-prior'), (one) => one.noticed),
    meanReadingsNoticed: mean(noticed.map((one) => one.readings)),
    rightFirstUniform: share(of('single-evenly'), (one) => one.right),
    rightFirstDouble: share(of('double'), (one) => one.right),
    meanReadings: mean(of('single-by-prior').map((one) => one.readings)),
    meanReadingsUniform: mean(of('single-evenly').map((one) => one.readings)),
    meanReadingsHealthy: mean(of('healthy').map((one) => one.readings)),
    falseAlarm: share(of('healthy'), (one) => one.verdict === 'repair'),
    outsideFlagged: share(of('outside'), (one) => one.flagged === true),
    outsideFlaggedPath: share(of('outside').filter(isPath), (one) => one.flagged === true),
    outsideFlaggedLead: share(of('outside').filter(isLead), (one) => one.flagged === true),
    outsideFlaggedLeads: share(of('outside').filter(isLeads), (one) => one.flagged === true),
    outsideFlaggedPathAndLead: share(of('outside').filter(isBoth), (one) => one.flagged === true),
    outsideMisnamed: share(
      of('outside'),
      (one) => one.verdict === 'repair' && one.probability >= 0.95 && one.flagged !== true,
    ),
    calibrationError: calibrationError(of('single-by-prior')),
    calibrationNoise: calibrationNoise(of('single-by-prior')),
    fixedOrderMeanReadings: mean(fixed.map((one) => one.readings)),
    fixedOrderRightFirst: share(fixed, (one) => one.right),
    stepMsP50: Math.round(steps[Math.floor(steps.length * 0.5)] ?? 0),
    stepMsP95: Math.round(steps[Math.floor(steps.length * 0.95)] ?? 0),
  };
}

type Stated = { readonly probability: number; readonly right: boolean };

const binsOf = <T extends Pick<Stated, 'probability'>>(list: readonly T[]): readonly T[][] =>
  Array.from({ length: 10 }, (_, bin) =>
    list.filter(({ probability }) => Math.min(9, Math.floor(probability * 10)) === bin),
  );

export function calibrationError(list: readonly Stated[]): number | null {
  if (list.length === 0) return null;
  let gap = 0;
  for (const inside of binsOf(list)) {
    const stated = inside.reduce((sum, { probability }) => sum + probability, 0);
    const right = inside.filter((one) => one.right).length;
    gap += Math.abs(stated - right);
  }
  return round(gap / list.length);
}

/** Exact: in each bin the chance of every count of hunts that are right (Poisson binomial distribution, textbook). */
export function calibrationNoise(list: readonly Pick<Stated, 'probability'>[]): number | null {
  if (list.length === 0) return null;
  let gap = 0;
  for (const inside of binsOf(list)) {
    let counts = [1];
    for (const { probability } of inside)
      counts = Array.from(
        { length: counts.length + 1 },
        (_, right) =>
          (counts[right] ?? 0) * (1 - probability) + (counts[right - 1] ?? 0) * probability,
      );
    const stated = inside.reduce((sum, { probability }) => sum + probability, 0);
    counts.forEach((chance, right) => {
      gap += chance * Math.abs(stated - right);
    });
  }
  return round(gap / list.length);
}

/** Nothing was heard to be wrong, and the hunt left the rest to the closing check: not right, and not wrong about any part. */
export const isLeftToClosing = ({ right, noticed, verdict }: HuntResult): boolean =>
  !right && !noticed && verdict === 'not-ruled-out';

/** How each rule did on the guitars drawn by prior, which all of them hunted on. */
export function byRule(results: readonly HuntResult[]): Readonly<
  Record<
    string,
    {
      readonly rightFirst: number | null;
      readonly meanReadings: number | null;
      readonly meanMinutes: number | null;
    }
  >
> {
  const orders = [...new Set(results.map(({ order }) => order))];
  return Object.fromEntries(
    orders.map((order) => {
      const own = results.filter((one) => one.order === order && one.kind === 'single-by-prior');
      return [
        order,
        {
          rightFirst: share(own, (one) => one.right),
          meanReadings: mean(own.map((one) => one.readings)),
          meanMinutes: mean(own.map((one) => one.seconds / 60)),
        },
      ];
    }),
  );
}
