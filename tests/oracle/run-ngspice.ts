import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RawPlot, readRawFile } from './raw-file.ts';

// The exit code stays 0 when an analysis fails, so the words on stderr decide.
const failure = /error|singular matrix|Transient op|warning|no such|not found|can't find node/i;

/** Runs a deck whose control section writes `out.raw`, and returns the plots. Throws with the simulator's words if it complained. */
export function runNgspice(deck: string): RawPlot[] {
  const folder = mkdtempSync(join(tmpdir(), 'oracle-'));
  try {
    writeFileSync(join(folder, 'deck.cir'), deck);
    const run = spawnSync('ngspice', ['-n', '-b', 'deck.cir'], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 1 << 26,
    });
    if (run.error) throw run.error;
    const complaint = run.stderr.split('\n').find((line) => failure.test(line));
    if (complaint || run.status !== 0)
      throw new Error(`ngspice ended with ${run.status}: ${complaint ?? run.stderr.slice(0, 500)}`);
    return readRawFile(readFileSync(join(folder, 'out.raw')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
