// `npm run report -- FILE...` writes docs/trust.md and its plots, and its head into README.md, from campaigns kept with --out;
// `npm run report -- --flow closing FILE...` writes docs/closing.md, and its head into README.md, from closing checks kept with --add.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { keptIn } from '../tests/campaign/closing-figures.ts';
import { closingDocument, closingHeadline } from '../tests/campaign/closing-report.ts';
import { calibrationPlot, readingsPlot } from '../tests/campaign/plots.ts';
import { type KeptCampaign, trustDocument, trustHeadline } from '../tests/campaign/trust.ts';
import { root } from './folders.ts';

const { values, positionals: files } = parseArgs({
  options: { flow: { type: 'string', default: 'hunt' } },
  allowPositionals: true,
});
if (values.flow !== 'hunt' && values.flow !== 'closing')
  fail(`there is no report of the flow "${values.flow}"; expected hunt or closing`);
if (files.length === 0) fail('name the files that campaigns were kept in with --out or --add');

if (values.flow === 'closing') {
  const results = files.flatMap(keptIn);
  const page = join(root, 'docs', 'closing.md');
  writeFileSync(page, closingDocument(results));
  intoReadme('closing figures', closingHeadline(results));
  process.stdout.write(`${page}\n`);
  process.exit(0);
}
const kept = files.map((file) => JSON.parse(readFileSync(file, 'utf8')) as KeptCampaign);
const folder = join(root, 'docs', 'trust');
mkdirSync(folder, { recursive: true });
// Hunts with wrong entries have a table of their own; the plots are of careful ones.
const hunts = kept.filter(({ figures }) => figures.wrongEntries === 0).flatMap((one) => one.hunts);
writeFileSync(join(folder, 'calibration.svg'), calibrationPlot(hunts));
writeFileSync(join(folder, 'readings.svg'), readingsPlot(hunts));
writeFileSync(join(root, 'docs', 'trust.md'), trustDocument(kept));
intoReadme('hunt figures', trustHeadline(kept));
process.stdout.write(`${join(root, 'docs', 'trust.md')}\n`);

/** Puts a table between its two marks in README.md. */
function intoReadme(name: string, table: string): void {
  const readme = join(root, 'README.md');
  const [before, , after] = readFileSync(readme, 'utf8').split(
    new RegExp(`^<!-- ${name}.*-->$`, 'm'),
  );
  if (after === undefined) fail(`README.md has no place for the ${name} between its two marks`);
  const mark = `<!-- ${name}: written by npm run report -->`;
  writeFileSync(readme, `${before}${mark}\n\n${table}\n${mark}${after}`);
}

function fail(sentence: string): never {
  process.stderr.write(`report: ${sentence}\n`);
  process.exit(2);
}
