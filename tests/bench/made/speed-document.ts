import { cpus } from 'node:os';

/** What all figures of the bench together give, as far as the document shows them. */
export interface SpeedFigures {
  readonly node: string;
  readonly solveRatioToNgspice: number;
  readonly acRatioToNgspice: number;
  readonly stepMsP50: number;
  readonly stepMsP95: number;
  readonly stepAt4xMsP50: number;
  readonly stepAt4xMsP95: number;
  readonly hurriedStepAt4xMsP95: number;
  readonly firstPromptAt4xMs: number;
  readonly foreseenShare: number;
  readonly dragLongestTaskMs: number;
  readonly longestTaskMs: number;
  readonly openLongestTaskMs: number;
  readonly compileAloneMissedPer1000: number;
  readonly stillMissedPer1000: number;
  readonly compileAloneTasksAbove50: number;
  readonly compileExponent: number;
  readonly workerPeakMb: number;
  readonly firstLoadKbGzip: number;
  readonly allScriptsKbGzip: number;
  readonly coldStartOfflineMs: number;
  readonly compile: readonly {
    readonly lugs: number;
    readonly switchStates: number;
    readonly suspects: number;
    readonly publishMs: number;
    readonly withDoublesMs: number;
  }[];
  readonly memory: Readonly<Record<string, number>>;
  readonly load: { readonly largestKbGzip: readonly (readonly [string, number])[] };
  readonly open: {
    readonly screens: Readonly<
      Record<
        string,
        {
          readonly longestTaskMs: number;
          readonly tasksAbove50: number;
          readonly shownMs: number;
        }
      >
    >;
  };
}

const table = (heads: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [heads, heads.map((_, at) => (typeof rows[0]?.[at] === 'number' ? '---:' : '---')), ...rows]
    .map((cells) => `| ${cells.join(' | ')} |`)
    .join('\n');

/** docs/speed.md. */
export function speedDocument(figures: SpeedFigures): string {
  const headline: readonly (readonly [string, string, number])[] = [
    [
      '`solveRatioToNgspice`',
      'ohms of all pairs of lugs under all suspects: ngspice’s time by ours',
      figures.solveRatioToNgspice,
    ],
    [
      '`acRatioToNgspice`',
      'a knob’s sweep as curves of the whole guitar: ngspice’s time by ours',
      figures.acRatioToNgspice,
    ],
    [
      '`stepMsP50`',
      'from an entry to the next reading, the engine in Node, ms of processor time',
      figures.stepMsP50,
    ],
    ['`stepMsP95`', 'the same, 95 of 100 are below', figures.stepMsP95],
    [
      '`foreseenShare`',
      'share of those entries that the engine works out whole while the probes are set',
      figures.foreseenShare,
    ],
    [
      '`stepAt4xMsP50`',
      'from an entry to what it changed, and on to the next prompt, in Chromium with the page (and not the engine) at a quarter of the speed: 4 s for the probes, 0.25 s a key, 1 s to read what changed; ms by the clock',
      figures.stepAt4xMsP50,
    ],
    ['`stepAt4xMsP95`', 'the same, 95 of 100 are below', figures.stepAt4xMsP95],
    [
      '`hurriedStepAt4xMsP95`',
      'the same where every entry follows its prompt at once',
      figures.hurriedStepAt4xMsP95,
    ],
    [
      '`firstPromptAt4xMs`',
      'from the cautions read to the first prompt of a wiring never seen, ms by the clock',
      figures.firstPromptAt4xMs,
    ],
    [
      '`longestTaskMs`',
      'longest task on the main thread in those hunts, ms of processor time',
      figures.longestTaskMs,
    ],
    [
      '`dragLongestTaskMs`',
      'the same while a knob of the value trial is dragged with a sweep in the chart',
      figures.dragLongestTaskMs,
    ],
    [
      '`openLongestTaskMs`',
      'the same while a wiring of 80 lugs and 12 switch states is opened',
      figures.openLongestTaskMs,
    ],
    [
      '`compileAloneMissedPer1000`',
      'frames missed of 1000 while the worker compiles that wiring and nothing is drawn',
      figures.compileAloneMissedPer1000,
    ],
    ['`stillMissedPer1000`', 'the same with no worker at all', figures.stillMissedPer1000],
    [
      '`compileAloneTasksAbove50`',
      'tasks above 50 ms on the main thread meanwhile',
      figures.compileAloneTasksAbove50,
    ],
    [
      '`compileExponent`',
      'growth of the time of a first answer with the number of lugs',
      figures.compileExponent,
    ],
    ['`workerPeakMb`', 'most memory that the engine’s worker holds, MB', figures.workerPeakMb],
    [
      '`firstLoadKbGzip`',
      'script before the first screen can be used, kB',
      figures.firstLoadKbGzip,
    ],
    ['`allScriptsKbGzip`', 'all scripts there are, kB', figures.allScriptsKbGzip],
    [
      '`coldStartOfflineMs`',
      'from a navigation without a network to the first screen, ms by the clock',
      figures.coldStartOfflineMs,
    ],
  ];
  return `# Speed and size

Printed by \`npm run bench -- --report\` with Node ${figures.node} on ${cpus().length} cores.
Figures by the clock grow on a busy machine; ratios and processor time do less so.

${table(['key', 'what', 'figure'], headline)}

## Time of a first answer by the size of the wiring

From a wiring never seen to the first reading asked, all single faults weighed; and on to the answer after a first odd
reading, their pairs weighed too. Milliseconds of processor time, in the worker: the screen does not wait.

${table(
  ['lugs', 'switch states', 'single faults', 'first reading, ms', 'with pairs, ms'],
  figures.compile.map((row) => [
    row.lugs,
    row.switchStates,
    row.suspects,
    row.publishMs,
    row.withDoublesMs,
  ]),
)}

## Memory of the worker, at its most

${table(
  ['work', 'MB'],
  Object.entries(figures.memory).map(([work, megabytes]) => [work, megabytes]),
)}

## A wiring of 80 lugs opened, at a quarter of the speed

${table(
  ['screen', 'longest task, ms', 'tasks above 50 ms', 'until it stands, ms by the clock'],
  Object.entries(figures.open.screens).map(([screen, one]) => [
    screen,
    one.longestTaskMs,
    one.tasksAbove50,
    one.shownMs,
  ]),
)}

## The largest scripts

${table(['script', 'kB, gzipped'], figures.load.largestKbGzip)}
`;
}
