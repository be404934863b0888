// `npm test`: every check of the project in one run, each by name and time, in the order in which a
// mistake is found soonest. `npm test -- types unit` runs those alone. All chosen stages run, also
// after one that failed; the last line counts the tests of the unit and the end-to-end stage.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { root } from './folders.ts';
import { endToEndTally, faultsOf, sum, type Tally, unitTally } from './tally.ts';

interface Stage {
  readonly name: string;
  readonly commands: readonly (readonly string[])[];
  /** A stage that this one's input comes from; when that failed, this one cannot run. */
  readonly after?: string;
  readonly tally?: (reports: string) => Tally;
}

const vitest = [
  ...['vitest', 'run', '--allowOnly=false'],
  ...['--reporter=default', '--reporter=json', '--outputFile.json=reports/unit.json'],
];

const stages: readonly Stage[] = [
  { name: 'lint', commands: [['biome', 'check', '--error-on-warnings', '.']] },
  {
    name: 'types',
    commands: [
      ['tsc', '-p', '.'],
      ['tsc', '-p', 'tsconfig.app.json'],
    ],
  },
  { name: 'architecture', commands: [['node', 'scripts/architecture.ts']] },
  { name: 'dead-code', commands: [['knip']] },
  { name: 'unit', commands: [vitest], tally: unitTally },
  { name: 'build', commands: [['node', 'scripts/build.ts']] },
  { name: 'size', commands: [['size-limit']], after: 'build' },
  { name: 'end-to-end', commands: [['playwright', 'test']], after: 'build', tally: endToEndTally },
];

/** A stage that hangs is ended, so that the run still says what it knows. */
const stageLimitInMinutes = 15;

const reports = join(root, 'reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports);

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !stages.some((stage) => stage.name === name));
if (unknown.length > 0) {
  const names = stages.map(({ name }) => name).join(', ');
  throw new RangeError(`No such stage: ${unknown.join(', ')}. The stages are: ${names}.`);
}

const started = Date.now();
const results = new Map<string, { readonly faults: readonly string[]; readonly tally?: Tally }>();
const timings: string[] = [];
for (const stage of stages) {
  if (wanted.length > 0 && !wanted.includes(stage.name)) continue;
  const stageStarted = Date.now();
  console.log(`\n=== ${stage.name}`);
  const result = runStage(stage);
  results.set(stage.name, result);
  for (const fault of result.faults) console.error(`${stage.name}: ${fault}`);
  const outcome = result.faults.length === 0 ? 'passed' : 'FAILED';
  const line = `${stage.name.padEnd(13)} ${outcome} in ${seconds(stageStarted)}`;
  timings.push(line);
  console.log(`--- ${line}`);
}

console.log(`\n${timings.join('\n')}\n${'all'.padEnd(13)} ${seconds(started)}\n`);
const total = sum([...results.values()].flatMap(({ tally }) => tally ?? []));
const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = [...results.values()].some(({ faults }) => faults.length > 0) ? 1 : 0;

function runStage(stage: Stage): { faults: string[]; tally?: Tally } {
  if (stage.after && (results.get(stage.after)?.faults.length ?? 0) > 0) {
    return { faults: [`not run: ${stage.after} failed`] };
  }
  const faults = stage.commands.flatMap(runCommand);
  if (!stage.tally) return { faults };
  const tally = stage.tally(reports);
  return { faults: [...faults, ...faultsOf(tally)], tally };
}

function runCommand(words: readonly string[]): string[] {
  const [command = '', ...args] = words;
  const { status, signal, error } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    timeout: stageLimitInMinutes * 60_000,
    env: {
      ...process.env,
      PATH: [join(root, 'node_modules/.bin'), process.env['PATH']].join(delimiter),
    },
  });
  if (status === 0) return [];
  return [`${words.join(' ')} ended with ${error?.message ?? signal ?? `exit code ${status}`}`];
}

function seconds(since: number): string {
  return `${((Date.now() - since) / 1000).toFixed(1)} s`;
}
