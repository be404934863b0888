import { erf } from 'mathjs';
import { aligned } from './aligned.ts';
import type { ClosingResult } from './closing.ts';
import { closingByWiring, closingFigures } from './closing-figures.ts';
import { type Share, shareOf } from './share.ts';

const percent = (share: number | null) => (share === null ? '-' : `${(share * 100).toFixed(1)} %`);
const plain = (value: number | null) => (value === null ? '-' : value.toFixed(1));

/** Chance that one of so many independent standard normals lies beyond four deviations. */
const byChance = (readings: number): number => 1 - erf(4 / Math.SQRT2) ** readings;

/** How far the guitars were put together, and whether a wiring is a starting one or was modified at random. */
const STAGES = [
  ['open', 'Cavity open'],
  ['closed', 'Guitar closed, the jack alone'],
  ['mat', 'Harness on the mat, before it is fitted'],
] as const;
const isModified = ({ wiring }: ClosingResult): boolean => wiring.includes(' + ');

interface Part {
  readonly title: string;
  readonly results: readonly ClosingResult[];
}

function partsOf(results: readonly ClosingResult[]): readonly Part[] {
  // A campaign that was run twice says nothing new.
  const once = [
    ...new Map(
      results.map((one) => [`${one.wiring} ${one.stage} ${one.seed} ${one.trouble}`, one]),
    ).values(),
  ];
  return STAGES.flatMap(([stage, title]) =>
    [false, true].map((modified) => ({
      title: `${title}: ${modified ? 'wirings modified at random' : 'starting wirings'}`,
      results: once.filter((one) => one.stage === stage && isModified(one) === modified),
    })),
  ).filter((part) => part.results.length > 0);
}

const failedOf = (results: readonly ClosingResult[], trouble: ClosingResult['trouble']): Share =>
  shareOf(results.filter((one) => one.trouble === trouble).map(({ state }) => state === 'failed'));

const line = (what: string, target: string, { of, count, from, to }: Share): string =>
  `| ${what} | ${target} | ${count} of ${of} | ${percent(from)} to ${percent(to)} |`;

/** docs/closing.md: figures beside targets, wiring by wiring, and every check that ended otherwise than it should. */
export function closingDocument(results: readonly ClosingResult[]): string {
  return `# How far to trust a closing check

Whole closing checks on guitars that a general circuit simulator plays (ngspice), not by the solver that makes the expectations: part
values lie anywhere within their tolerances, the meter has errors, taps and words are heard wrong now and then. Written by
\`npm run report -- --flow closing FILE...\` from what campaigns kept; nothing here is typed by hand. Shares stand with their 95 % interval
(Wilson 1927).

A check *fails* when one of its readings is off for good. A healthy guitar whose check fails is a false alarm; of two faults it is enough
that one is shown, for the hunt that follows begins again after each repair. A check that reads twenty-five figures and cries wolf at four
deviations does so on ${(100 * byChance(25)).toFixed(2)} % of healthy guitars by chance, if every reading is as independent of the others as
it is reckoned to be.
${partsOf(results).map(section).join('')}`;
}

function section({ title, results }: Part): string {
  const figures = closingFigures(results);
  const wrong = results.filter(
    ({ trouble, state }) => state !== (trouble === 'healthy' ? 'passed' : 'failed'),
  );
  return `
## ${title}

${figures.count} checks on ${figures.wirings} wirings.

| what | target | measured | interval |
|---|---|---|---|
${line('healthy guitar called faulty', 'at most 0.5 %', failedOf(results, 'healthy'))}
${line('one fault that the list claims, caught', '99 %', failedOf(results, 'single'))}
${line('one of two such faults caught', '-', failedOf(results, 'double'))}

Mean readings in a list: ${plain(figures.meanPlanReadings)}; no list that shows the same has fewer than ${plain(figures.lowerBoundReadings)} (lower bound of a linear
programme). By our estimate a list takes ${plain(figures.meanMinutes)} minutes at the bench; its head, ${plain(figures.meanFirstReadings)} readings in ${plain(figures.meanFirstMinutes)} minutes,
shows ${percent(figures.meanFirstShare)} of what goes wrong, weighed by how often it does. Readings taken on healthy guitars, repeats included:
${plain(figures.meanReadingsHealthy)}; until a fault was shown: ${plain(figures.meanReadingsUntilCaught)}.

${wrong.length === 0 ? 'No check ended otherwise than it should.' : `Checks that ended otherwise than they should:\n\n${wrong.map(missed).join('\n')}`}

${table(results)}
`;
}

const missed = ({ wiring, trouble, seed, faults, state, taken, failed }: ClosingResult): string =>
  `- ${wiring}, seed ${seed}, ${trouble}: ${faults.join('; ') || 'nothing wrong'}. After ${taken} readings: ${state === 'checking' ? 'not through' : state}${failed.length > 0 ? ` (${failed.join('; ')})` : ''}`;

function table(results: readonly ClosingResult[]): string {
  const rows = closingByWiring(results).map(
    (one) =>
      `| ${one.wiring} | ${one.readings} | ${one.atLeast} | ${one.minutes.toFixed(1)} | ${one.firstReadings} | ${one.alarmsHealthy} | ${one.caughtSingle} | ${one.caughtDouble} |`,
  );
  return `| wiring | readings | lower bound | minutes | head of the list | false alarms | one fault caught | one of two caught |
|---|---|---|---|---|---|---|---|
${rows.join('\n')}`;
}

/** The head of it for README.md: a column for each stage that was measured, starting wirings and modified ones together. */
export function closingHeadline(results: readonly ClosingResult[]): string {
  const stages = STAGES.map(([stage, title]) => ({
    title,
    kept: partsOf(results.filter((one) => one.stage === stage)).flatMap((part) => part.results),
  })).filter(({ kept }) => kept.length > 0);
  const outOf = ({ of, count }: Share) => `${count} of ${of}`;
  const row = (what: string, cell: (kept: readonly ClosingResult[]) => string) => [
    what,
    ...stages.map(({ kept }) => cell(kept)),
  ];
  const figure = (cell: (figures: ReturnType<typeof closingFigures>) => string) =>
    stages.map(({ kept }) => cell(closingFigures(kept)));
  return aligned([
    // Up to its comma a title says which stage it is.
    ['closing check', ...stages.map(({ title }) => title.toLowerCase().replace(/,.*/, ''))],
    ['wirings', ...figure(({ wirings }) => `${wirings}`)],
    row('healthy guitars called faulty', (kept) => outOf(failedOf(kept, 'healthy'))),
    row('one fault that the list claims, caught', (kept) => outOf(failedOf(kept, 'single'))),
    row('one of two such faults caught', (kept) => outOf(failedOf(kept, 'double'))),
    [
      'readings in a list, mean over the wirings / fewest there can be',
      ...figure((one) => `${plain(one.meanPlanReadings)} / ${plain(one.lowerBoundReadings)}`),
    ],
    [
      'minutes for all of it / for its head',
      ...figure((one) => `${plain(one.meanMinutes)} / ${plain(one.meanFirstMinutes)}`),
    ],
    [
      'share of what goes wrong that its head shows',
      ...figure((one) => percent(one.meanFirstShare)),
    ],
  ]);
}
