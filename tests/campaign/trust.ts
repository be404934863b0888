import { aligned } from './aligned.ts';
import { byRule, figuresOf, type HuntFigures, isLeftToClosing } from './figures.ts';
import type { HuntResult } from './hunt.ts';
import type { OverOptimum } from './hunt-optimum.ts';
import { wilson } from './wilson.ts';

/** What a campaign printed, and its hunts. */
export interface KeptCampaign {
  readonly figures: HuntFigures & {
    readonly seed: number;
    readonly wrongEntries: number;
    readonly fingers: number;
    readonly access: string;
    readonly kind?: string;
    /** How many wirings, modified at random, took the place of those the engine was made with. */
    readonly modified?: number;
    readonly rules?: ReturnType<typeof byRule>;
    readonly overOptimum?: Readonly<Record<string, OverOptimum>>;
  };
  readonly hunts: readonly HuntResult[];
}

const percent = (share: number | null) => (share === null ? '-' : `${(share * 100).toFixed(1)} %`);
const plain = (value: number | null | undefined) => (value == null ? '-' : value.toFixed(1));

interface Line {
  readonly what: string;
  readonly target: string;
  readonly kinds: readonly HuntResult['kind'][];
  readonly among?: (one: HuntResult) => boolean;
  readonly counts: (one: HuntResult) => boolean;
}

const lines = (slips: boolean): readonly Line[] => [
  {
    what: 'right repair named first, one fault drawn by prior',
    target: slips ? '97 %' : '99 %',
    kinds: ['single-by-prior'],
    counts: ({ right }) => right,
  },
  {
    what: 'the same, one fault drawn evenly',
    target: slips ? '97 %' : '99 %',
    kinds: ['single-evenly'],
    counts: ({ right }) => right,
  },
  {
    what: 'one of two faults named first',
    target: slips ? '88 %' : '92 %',
    kinds: ['double'],
    counts: ({ right }) => right,
  },
  {
    what: 'healthy guitar called faulty',
    target: 'at most 0.5 %',
    kinds: ['healthy'],
    counts: ({ verdict }) => verdict === 'repair',
  },
  {
    what: 'a path that nobody drew, and said to be one',
    target: '90 %',
    kinds: ['outside'],
    among: ({ strange }) => strange === 'path',
    counts: ({ flagged }) => flagged === true,
  },
  {
    what: 'a lead on a lug of another part, and said to be that lead or outside what is drawn',
    target: '90 %',
    kinds: ['outside'],
    among: ({ strange }) => strange === 'lead',
    counts: ({ flagged }) => flagged === true,
  },
  {
    what: 'two leads in each other’s place, and said to be one of them or outside what is drawn',
    target: '90 %',
    kinds: ['outside'],
    among: ({ strange }) => strange === 'leads',
    counts: ({ flagged }) => flagged === true,
  },
  {
    what: 'such a path and such a lead together, and said to be one of them or outside what is drawn',
    target: '90 %',
    kinds: ['outside'],
    among: ({ strange }) => strange === 'path and lead',
    counts: ({ flagged }) => flagged === true,
  },
  {
    what: 'any of these, and something else named with 95 % or more',
    target: 'at most 2 %',
    kinds: ['outside'],
    counts: ({ verdict, probability, flagged }) =>
      verdict === 'repair' && probability >= 0.95 && flagged !== true,
  },
];

/** docs/trust.md: figures beside targets, and every hunt that ended wrong. */
export function trustDocument(kept: readonly KeptCampaign[]): string {
  return `# How far to trust it

Hunts on guitars that a general circuit simulator plays (ngspice), not by the solver that makes the expectations. Written by
\`npm run report\` from what the commands below printed; nothing here is typed by hand. Shares stand with their 95 % interval.

![Stated probability against share right](trust/calibration.svg)

![Readings until the verdict](trust/readings.svg)
${pooled(kept).map(campaign).join('')}`;
}

/** Campaigns of one kind that differ in their seeds are one. */
interface Pool {
  readonly seeds: readonly number[];
  readonly first: KeptCampaign['figures'];
  readonly figures: HuntFigures;
  readonly hunts: readonly HuntResult[];
  /** Those of campaigns whose guitars were hunted by each rule. */
  readonly byEachRule: readonly HuntResult[];
  readonly overOptimum?: Readonly<Record<string, OverOptimum>>;
}

function pooled(kept: readonly KeptCampaign[]): readonly Pool[] {
  const pools = new Map<string, KeptCampaign[]>();
  for (const one of kept) {
    const { wrongEntries, fingers, access, kind = '', modified = 0 } = one.figures;
    const name = `${access} ${wrongEntries} ${fingers} ${kind} ${modified > 0}`;
    pools.set(name, [...(pools.get(name) ?? []), one]);
  }
  return [...pools.values()].map((list): Pool => {
    const hunts = list.flatMap((one) => one.hunts);
    const overOptimum = list.find(({ figures }) => figures.overOptimum)?.figures.overOptimum;
    return {
      seeds: list.map(({ figures }) => figures.seed),
      first: (list[0] as KeptCampaign).figures,
      figures: figuresOf(hunts),
      hunts,
      byEachRule: list.flatMap((one) => (one.figures.rules ? one.hunts : [])),
      ...(overOptimum ? { overOptimum } : {}),
    };
  });
}

/** The head of it for README.md: hunts with the guitar open and nothing entered wrong, and the share right with wrong entries beside it. */
export function trustHeadline(kept: readonly KeptCampaign[]): string {
  const pools = pooled(kept).filter(({ first }) => first.access === 'open' && !first.kind);
  const plainPool = pools.find(({ first }) => first.wrongEntries === 0 && !first.modified);
  if (!plainPool) throw new Error('no campaign on open guitars without wrong entries was given');
  const { figures, hunts } = plainPool;
  const ours = hunts.filter(({ order }) => order === 'ours');
  const of = (
    kinds: readonly HuntResult['kind'][],
    counts: (one: HuntResult) => boolean,
    list = ours,
  ) => {
    const own = list.filter(({ kind }) => kinds.includes(kind));
    return `${own.filter(counts).length} of ${own.length}`;
  };
  const isRight = ({ right }: HuntResult) => right;
  const noticed = ours.filter((one) => one.noticed);
  const rows: [string, string][] = [
    ['right repair leads, one fault, drawn by how likely it is', of(['single-by-prior'], isRight)],
    ['the same, where something is heard to be wrong', of(['single-by-prior'], isRight, noticed)],
    ['the same, drawn evenly over all modelled faults', of(['single-evenly'], isRight)],
    ['one of two faults leads', of(['double'], isRight)],
    ...pools
      .filter((pool) => pool !== plainPool)
      .map((pool): [string, string] => [
        `right ${beside(pool.first)} (one fault / two)`,
        [['single-by-prior', 'single-evenly'] as const, ['double'] as const]
          .map((kinds) =>
            of(
              kinds,
              isRight,
              pool.hunts.filter(({ order }) => order === 'ours'),
            ),
          )
          .join(' / '),
      ]),
    [
      'readings until the verdict, mean (likely faults / evenly drawn / healthy)',
      `${plain(figures.meanReadings)} / ${plain(figures.meanReadingsUniform)} / ${plain(figures.meanReadingsHealthy)}`,
    ],
    ['readings, where something is heard to be wrong', plain(figures.meanReadingsNoticed)],
    [
      'the same belief fed in a fixed order from the jack inward',
      `${plain(figures.fixedOrderMeanReadings)} readings, ${Math.round((figures.fixedOrderRightFirst ?? 0) * 100)} % right`,
    ],
    ['healthy guitars called faulty', of(['healthy'], ({ verdict }) => verdict === 'repair')],
    [
      'a path or a lead where nobody drew one: found as such / named as another fault',
      `${of(['outside'], ({ flagged }) => flagged === true)} / ${of(['outside'], ({ verdict, probability, flagged }) => verdict === 'repair' && probability >= 0.95 && flagged !== true)}`,
    ],
    ['gap between stated and true probability', figures.calibrationError?.toFixed(3) ?? '-'],
  ];
  return aligned([['what', 'figure'], ...rows]);
}

/** What sets a pool apart. */
const beside = ({ wrongEntries, modified }: KeptCampaign['figures']): string =>
  [
    ...(wrongEntries > 0 ? [`with ${wrongEntries * 100} % wrong entries`] : []),
    ...(modified ? ['on wirings modified at random, which nobody had drawn'] : []),
  ].join(' ');

function campaign({ seeds, first, figures, hunts, byEachRule, overOptimum }: Pool): string {
  const ours = hunts.filter(({ order }) => order === 'ours');
  const rows = lines(first.wrongEntries > 0).flatMap(({ what, target, kinds, among, counts }) => {
    const own = ours.filter((one) => kinds.includes(one.kind) && (among?.(one) ?? true));
    if (own.length === 0) return [];
    const hits = own.filter(counts).length;
    const [low, high] = wilson(hits, own.length);
    return [
      `| ${what} | ${target} | ${hits} of ${own.length} | ${percent(low)} to ${percent(high)} |`,
    ];
  });
  const ruled = byEachRule.filter(
    ({ kind, order }) => kind === 'single-by-prior' && order === 'ours',
  );
  const rules = Object.entries(byRule(byEachRule)).map(
    ([rule, { rightFirst, meanReadings, meanMinutes }]) =>
      `| ${rule} | ${percent(rightFirst)} | ${plain(meanReadings)} | ${plain(meanMinutes)} |`,
  );
  const over = Object.entries(overOptimum ?? {}).map(
    ([rule, { cases, mean, worst }]) =>
      `| ${rule} | ${cases} | ${mean.toFixed(3)} | ${worst.toFixed(2)} |`,
  );
  const wrong = ours.filter(({ right }) => !right);
  const left = wrong.filter(isLeftToClosing);
  return `
## ${seeds.length > 1 ? 'Seeds' : 'Seed'} ${seeds.join(', ')}: ${figures.count} guitars, ${first.access}, ${first.wrongEntries * 100} % wrong entries, fingers on both probes in ${first.fingers * 100} % of readings${first.modified ? ', starting wirings with one to three modifications drawn at random: held out, nobody had drawn them' : ''}

| what | target | measured | interval |
|---|---|---|---|
${rows.join('\n')}

Mean readings until the verdict: ${plain(figures.meanReadings)} (by prior), ${plain(figures.meanReadingsUniform)} (evenly), ${plain(figures.meanReadingsHealthy)} (healthy); the same belief fed in a
fixed order: ${plain(figures.fixedOrderMeanReadings)}. Gap between stated and true probability: ${figures.calibrationError?.toFixed(3) ?? '-'} (target 0.02; over so few
hunts it would be ${figures.calibrationNoise?.toFixed(3) ?? '-'} on average if every stated probability held exactly). Of the ${wrong.length} hunts that are
not counted as right, in ${left.length} nothing was heard to be wrong and the hunt ended with the closing check.
${
  rules.length < 3
    ? ''
    : `
Rules for the next reading, on the same ${ruled.length} guitars (one fault by prior):

| rule | right first | mean readings | mean minutes of effort |
|---|---|---|---|
${rules.join('\n')}
`
}
${
  over.length === 0
    ? ''
    : `
The same rules on small cases that are searched for the best policy there is (nine suspects of one guitar, eighteen readings without
error, seconds of effort as in the app; target 1.05 on average and 1.3 at worst):

| rule | cases | cost over the best, mean | worst |
|---|---|---|---|
${over.join('\n')}
`
}
${listed(
  'Hunts that ended wrong:',
  'No hunt ended wrong.',
  wrong.filter((one) => !isLeftToClosing(one)),
)}
${listed('Nothing heard, and left to the closing check; counted as not right:', '', left)}`;
}

const listed = (head: string, none: string, hunts: readonly HuntResult[]): string =>
  hunts.length === 0 ? none : `${head}\n\n${hunts.map(missed).join('\n')}\n`;

const missed = ({
  wiring,
  kind,
  faults,
  verdict,
  first,
  probability,
  readings,
}: HuntResult): string =>
  `- ${wiring}, ${kind}: \`${faults.join('` and `') || 'healthy'}\`; after ${readings} readings ${verdict}, \`${first}\` ${Math.round(probability * 100)} %`;
