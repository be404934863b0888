// `npm run fuzz -- --runs 100000` puts so many hostile values through every door and writes docs/fuzz.md.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { DoorFigures } from '../tests/fuzz/under-fire.ts';
import { root } from './folders.ts';

const { values } = parseArgs({ options: { runs: { type: 'string', default: '100000' } } });
const runs = Number(values.runs);
if (!(Number.isInteger(runs) && runs > 0)) {
  process.stderr.write(`fuzz: --runs takes a whole number above 0, got "${values.runs}"\n`);
  process.exit(2);
}
const kept = join(root, 'reports', 'fuzz.jsonl');
mkdirSync(join(root, 'reports'), { recursive: true });
rmSync(kept, { force: true });
const { status } = spawnSync('vitest', ['run', 'tests/fuzz'], {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, LUGWISE_FUZZ: String(runs), LUGWISE_FUZZ_FIGURES: kept },
});
if (status !== 0) process.exit(status ?? 1);
const doors = readFileSync(kept, 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as DoorFigures)
  .sort((a, b) => (a.door < b.door ? -1 : 1));
const file = join(root, 'docs', 'fuzz.md');
writeFileSync(file, document(doors));
process.stdout.write(`${file}\n`);

function document(lines: readonly DoorFigures[]): string {
  const total = lines.reduce((sum, one) => sum + one.runs, 0);
  const worst = Math.max(...lines.map(({ worstMs }) => worstMs));
  return `# Hostile input

Printed by \`npm run fuzz -- --runs ${runs}\`. What is thrown at each door is in \`tests/fuzz\`; \`npm test\` throws less of it.
A run fails on an error thrown, on a record that was taken and is not whole, on a sentence with broken words in it, on
a figure that is no number, and where it takes a second of processor time; an answer of the engine, which works beside
the page, may take five.

${total.toLocaleString('en')} runs, none failed, the longest ${worst} ms.

| door | runs | longest, ms |
| --- | ---: | ---: |
${lines.map(({ door, runs: count, worstMs }) => `| ${door} | ${count.toLocaleString('en')} | ${worstMs} |`).join('\n')}
`;
}
