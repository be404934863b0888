import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';

const ensure = fileURLToPath(new URL('../../scripts/ensure.mjs', import.meta.url));

// The path is one folder of stand-ins, so that nothing is installed on the machine that runs this.
describe('what a bare machine is given before the tests', () => {
  let bin: string;
  beforeEach(() => {
    bin = mkdtempSync(join(tmpdir(), 'bin-'));
  });
  afterEach(() => rmSync(bin, { recursive: true }));

  const standIn = (command: string, script: string) =>
    writeFileSync(join(bin, command), `#!/bin/sh\n${script}\n`, { mode: 0o755 });
  const run = () =>
    spawnSync(process.execPath, [ensure, '--tools'], { env: { PATH: bin }, encoding: 'utf8' });
  const calls = () => readFileSync(join(bin, 'calls'), 'utf8').trim().split('\n');

  it('gets the missing programs from Debian, after a look at the newest lists', () => {
    standIn('ngspice', '');
    standIn('apt-get', `echo "$*" >> "${join(bin, 'calls')}"`);
    standIn('sudo', 'shift; exec "$@"');
    expect(run()).toMatchObject({ status: 0, stderr: '' });
    expect(calls()).toEqual([
      '-qq update',
      '-qq install -y --no-install-recommends chromium fonts-liberation',
    ]);
  });

  it('asks for nothing when all is there', () => {
    standIn('chromium', '');
    standIn('ngspice', '');
    expect(run()).toMatchObject({ status: 0, stdout: '', stderr: '' });
  });

  it('names what is missing where it cannot install it', () => {
    expect(run()).toMatchObject({
      status: 1,
      stderr:
        'Missing: chromium (for the end-to-end tests) and ngspice (for the outside checks of the solver). Install it, then run this again.\n',
    });
  });

  it('says what could not be installed', () => {
    standIn('chromium', '');
    standIn('apt-get', 'exit 100');
    standIn('sudo', 'shift; exec "$@"');
    expect(run()).toMatchObject({
      status: 1,
      stderr:
        'apt-get could not install: ngspice (for the outside checks of the solver). Install it, then run this again.\n',
    });
  });
});
