// `npm run report -- FILE...` writes docs/trust.md and its plots from campaigns that were kept with --out.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { calibrationPlot, readingsPlot } from '../tests/campaign/plots.ts';
import { type KeptCampaign, trustDocument } from '../tests/campaign/trust.ts';
import { root } from './folders.ts';

const files = process.argv.slice(2);
if (files.length === 0) {
  process.stderr.write('report: name the files that campaigns were kept in with --out\n');
  process.exit(2);
}
const kept = files.map((file) => JSON.parse(readFileSync(file, 'utf8')) as KeptCampaign);
const folder = join(root, 'docs', 'trust');
mkdirSync(folder, { recursive: true });
const hunts = kept.flatMap((one) => one.hunts);
writeFileSync(join(folder, 'calibration.svg'), calibrationPlot(hunts));
writeFileSync(join(folder, 'readings.svg'), readingsPlot(hunts));
writeFileSync(join(root, 'docs', 'trust.md'), trustDocument(kept));
process.stdout.write(`${join(root, 'docs', 'trust.md')}\n`);
