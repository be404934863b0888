import { appendFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { startingWirings } from '../src/circuit/catalog/index.ts';
import type { ClosingOptions, ClosingResult, Trouble } from '../tests/campaign/closing.ts';
import { closingByWiring, closingFigures, keptIn } from '../tests/campaign/closing-figures.ts';
import { byRule, figuresOf } from '../tests/campaign/figures.ts';
import type { HuntOptions, HuntResult, Kind } from '../tests/campaign/hunt.ts';
import { drawnCase, type OverOptimum, overOptimum } from '../tests/campaign/hunt-optimum.ts';
import { sortOne } from '../tests/campaign/leads.ts';
import { leadFigures } from '../tests/campaign/leads-figures.ts';
import { optimumFor } from '../tests/campaign/leads-optimum.ts';
import { modified } from '../tests/campaign/modified.ts';
import { RULES, ruleOf } from '../tests/campaign/rules.ts';
import { Dice } from '../tests/simulated/index.ts';

/**
 * npm run campaign -- --seed N --count N [--wrong-entries SHARE] [--access open|closed] [--no-symptoms] [--modified N] [--misses] [--kind KIND] [--out FILE]
 * npm run campaign -- --flow leads --seed N --count N [--first N] [--misses]: pickups from number --first on, so that short runs of one
 * seed add up (the optimum is printed by the first of them); sorts the leads of pickups played by a circuit simulator, with 7 % wrong
 * taps and 3 % wrong entries, and prints the fewest readings that any policy needs beside what ours needs.
 * npm run campaign -- --flow closing --seed N --count N [--stage closed|open|mat] [--modified N] [--healthy] [--add FILE] [--misses]: whole closing checks, on the
 * starting wirings in turn (with --modified on N randomly modified ones): of every ten guitars four are healthy, four have a fault
 * that the list claims to show, two have two of them; with --healthy all are healthy. --add FILE keeps results as lines of JSON, each
 * as soon as it is there, and prints figures over all that the file holds: a long campaign can be run in parts and stopped at any time.
 * Hunts on guitars played by a circuit simulator; prints one JSON object. Of every sixty guitars twenty have one fault drawn
 * by prior, fifteen one drawn evenly, ten have two faults, ten are healthy and five have something that is not modelled; with --kind all
 * are of that kind. Fingers touch
 * both probes in --fingers of the readings (5 % unless said). The fixed order runs on the guitars drawn by prior; with --rules every
 * other rule does too, one figure each, and small cases are
 * searched for the best policy there is. With --modified the guitars have N randomly modified wirings, which the engine was not made with. With --out
 * the hunts are written to a file, for `npm run report`.
 */
const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    count: { type: 'string', default: '100' },
    first: { type: 'string', default: '0' },
    flow: { type: 'string', default: 'hunt' },
    'wrong-entries': { type: 'string', default: '0' },
    stage: { type: 'string', default: 'open' },
    modified: { type: 'string', default: '0' },
    fingers: { type: 'string', default: '0.05' },
    rules: { type: 'boolean', default: false },
    out: { type: 'string' },
    add: { type: 'string' },
    healthy: { type: 'boolean', default: false },
    access: { type: 'string', default: 'open' },
    'no-symptoms': { type: 'boolean', default: false },
    misses: { type: 'boolean', default: false },
    kind: { type: 'string' },
  },
});
const KINDS: readonly Kind[] = [
  'single-by-prior',
  'single-evenly',
  'single-by-prior',
  'double',
  'single-evenly',
  'single-by-prior',
  'healthy',
  'single-evenly',
  'single-by-prior',
  'double',
  'outside',
  'healthy',
];
const [seed, count, wrongEntries, fingers] = [
  Number(values.seed),
  Number(values.count),
  Number(values['wrong-entries']),
  Number(values.fingers),
];
if (
  !Number.isInteger(seed) ||
  !Number.isInteger(count) ||
  count < 1 ||
  !(wrongEntries >= 0 && wrongEntries <= 1) ||
  !(fingers >= 0 && fingers <= 1)
)
  fail('--seed and --count take whole numbers, --wrong-entries and --fingers a share from 0 to 1');
if (values.flow !== 'hunt' && values.flow !== 'leads' && values.flow !== 'closing')
  fail(`there is no flow "${values.flow}" to measure; expected hunt, leads or closing`);
if (values.stage !== 'closed' && values.stage !== 'open' && values.stage !== 'mat')
  fail(`--stage takes closed, open or mat, got "${values.stage}"`);
const modifiedCount = Number(values.modified);
if (!Number.isInteger(modifiedCount) || modifiedCount < 0)
  fail('--modified takes a whole number of wirings');
if (values.kind !== undefined && !KINDS.includes(values.kind as Kind))
  fail(`--kind takes one of ${[...new Set(KINDS)].join(', ')}; got "${values.kind}"`);
if (values.access !== 'open' && values.access !== 'closed')
  fail(`--access takes open or closed, got "${values.access}"`);

if (values.flow === 'leads') {
  const first = Number(values.first);
  if (!Number.isInteger(first) || first < 0) fail('--first takes a whole number of pickups');
  const sorted = Array.from({ length: count }, (_, at) => {
    const one = sortOne(seed, first + at);
    if (values.misses && !one.right)
      process.stderr.write(`${JSON.stringify({ ...one, stepMs: undefined })}\n`);
    return one;
  });
  // It does not depend on the pickups drawn.
  const optima = first > 0 ? [] : ([3, 4, 5] as const).map(optimumFor);
  process.stdout.write(
    `${JSON.stringify({ seed, first, ...leadFigures(sorted, optima) }, null, 2)}\n`,
  );
  process.exit(0);
}

if (values.flow === 'closing') {
  /** How many kinds of meters the guitars of a wiring are read with. */
  const METERS = 2;
  const troubles: readonly Trouble[] = values.healthy
    ? ['healthy']
    : [
        'healthy',
        'single',
        'healthy',
        'single',
        'double',
        'healthy',
        'single',
        'healthy',
        'single',
        'double',
      ];
  const wirings =
    modifiedCount > 0
      ? Array.from({ length: modifiedCount }, (_, at) => modified(seed * 1000 + at))
      : startingWirings.map(({ id, build }) => ({ wiring: id, circuit: build() }));
  const checks = Array.from({ length: count }, (_, at): ClosingOptions => {
    const round = Math.floor(at / wirings.length);
    return {
      ...(wirings[at % wirings.length] as (typeof wirings)[number]),
      stage: values.stage as ClosingOptions['stage'],
      // Every wiring goes through all of them, whatever the number of wirings.
      trouble: troubles[((at % wirings.length) + round) % troubles.length] as Trouble,
      seed: seed * 100_000 + at,
      meter: `${seed} ${round % METERS}`,
    };
  });
  const groups = new Map<string, ClosingOptions[]>();
  for (const one of checks) {
    const name = `${one.wiring} ${one.meter}`;
    groups.set(name, [...(groups.get(name) ?? []), one]);
  }
  // Guitars that one list serves go to one worker: making it costs more than using it.
  const closed = (
    await all<readonly ClosingOptions[], readonly ClosingResult[]>(
      [...groups.values()],
      new URL('../tests/campaign/closing-worker.ts', import.meta.url),
      (results) => {
        if (values.add !== undefined) keep(values.add, results);
      },
    )
  ).flat();
  if (values.misses)
    for (const one of closed)
      if (one.state !== (one.trouble === 'healthy' ? 'passed' : 'failed'))
        process.stderr.write(`${JSON.stringify(one)}\n`);
  const kept = values.add === undefined ? closed : keptIn(values.add);
  process.stdout.write(
    `${JSON.stringify({ seed, stage: values.stage, ...closingFigures(kept), byWiring: closingByWiring(kept) }, null, 2)}\n`,
  );
  process.exit(0);
}

/** Small enough that the best policy is found by search. */
const SMALL_CASES = 200;
const common = {
  access: values.access as 'open' | 'closed',
  wrongEntries,
  fingers,
  symptoms: !values['no-symptoms'],
};
const jobs: HuntOptions[] = Array.from({ length: count }, (_, at) => {
  const kind = (values.kind ?? KINDS[Math.floor(at / 5) % KINDS.length]) as Kind;
  const own = modifiedCount > 0 && { modified: seed * 1000 + (at % modifiedCount) };
  const guitar = { ...common, ...own, seed: seed * 100_000 + at, kind };
  return kind === 'single-by-prior'
    ? [
        { ...guitar, order: 'ours' as const },
        { ...guitar, order: 'fixed' as const },
        ...(values.rules ? RULES : [])
          .filter((order) => order !== 'ours')
          .map((order) => ({ ...guitar, order })),
      ]
    : [{ ...guitar, order: 'ours' as const }];
}).flat();

const results = await all<HuntOptions, HuntResult>(
  jobs,
  new URL('../tests/campaign/worker.ts', import.meta.url),
);
if (values.misses)
  for (const one of results)
    if (one.order === 'ours' && !one.right)
      process.stderr.write(`${JSON.stringify({ ...one, stepMs: undefined })}\n`);
const figures = {
  seed,
  ...figuresOf(results),
  ...(values.rules && { rules: byRule(results), overOptimum: againstOptimum() }),
  wrongEntries,
  fingers,
  access: values.access,
  symptoms: common.symptoms,
  ...(modifiedCount > 0 && { modified: modifiedCount }),
  ...(values.kind !== undefined && { kind: values.kind }),
};
if (values.out !== undefined)
  writeFileSync(
    values.out,
    JSON.stringify({
      figures,
      hunts: results.map((one) => ({ ...one, story: one.right ? [] : one.story })),
    }),
  );
process.stdout.write(`${JSON.stringify(figures, null, 2)}\n`);

/** What each rule costs beside the best policy there is, on small cases without error. */
function againstOptimum(): Readonly<Record<string, OverOptimum>> {
  const cases = Array.from({ length: SMALL_CASES }, (_, at) => drawnCase(seed * 1000 + at));
  return Object.fromEntries(
    RULES.map((rule) => [rule, overOptimum(cases, ruleOf(rule, new Dice(`small ${seed}`)))]),
  );
}

/** Adds results to those of earlier runs, a line of JSON each. */
function keep(file: string, results: readonly ClosingResult[]): void {
  appendFileSync(file, results.map((one) => `${JSON.stringify(one)}\n`).join(''));
}

/** Every job by one worker or another, as many as the machine has cores; the first failure ends the campaign with its message. */
async function all<Job, Result>(
  list: readonly Job[],
  script: URL,
  done: (result: Result) => void = () => undefined,
): Promise<readonly Result[]> {
  const results: Result[] = [];
  let next = 0;
  await Promise.all(
    Array.from({ length: Math.min(availableParallelism(), list.length) }, async () => {
      const worker = new Worker(script);
      while (next < list.length) {
        const job = list[next] as Job;
        next += 1;
        const result = await answer<Job, Result>(worker, job);
        done(result);
        results.push(result);
      }
      await worker.terminate();
    }),
  );
  return results;
}

function answer<Job, Result>(worker: Worker, job: Job): Promise<Result> {
  return new Promise((resolve, reject) => {
    const done = (result: Result) => {
      worker.off('error', reject);
      resolve(result);
    };
    worker.once('message', done);
    worker.once('error', reject);
    worker.postMessage(job);
  });
}

function fail(sentence: string): never {
  process.stderr.write(`campaign: ${sentence}\n`);
  process.exit(2);
}
