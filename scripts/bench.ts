import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { type SpeedFigures, speedDocument } from '../tests/bench/made/speed-document.ts';
import { root } from './folders.ts';

/**
 * npm run bench [-- --only NAME]: figures of speed and size as one JSON object. Each is a file of tests/bench that exports `run`, which
 * gives keys and values; the name of the file is what --only takes. With --report all of them are also written to docs/speed.md.
 */
const folder = join(root, 'tests/bench');
const names = readdirSync(folder)
  .filter((file) => file.endsWith('.ts'))
  .map((file) => file.slice(0, -3))
  .sort();
const { values } = parseArgs({
  options: { only: { type: 'string' }, report: { type: 'boolean', default: false } },
});
const { only, report } = values;
if (report && only !== undefined) {
  process.stderr.write('bench: --report takes all figures, so no --only beside it\n');
  process.exit(2);
}
if (only !== undefined && !names.includes(only)) {
  process.stderr.write(
    `bench: there is no figure "${only}"; expected one of ${names.join(', ')}\n`,
  );
  process.exit(2);
}
const figures: Record<string, unknown> = { node: process.version };
for (const name of only === undefined ? names : [only]) {
  const { run } = (await import(join(folder, `${name}.ts`))) as {
    run(): Record<string, unknown> | Promise<Record<string, unknown>>;
  };
  Object.assign(figures, await run());
}
process.stdout.write(`${JSON.stringify(figures, null, 2)}\n`);
if (report)
  writeFileSync(join(root, 'docs', 'speed.md'), speedDocument(figures as unknown as SpeedFigures));
