import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startingWirings } from '../../src/circuit/catalog/index.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { exportJob, type Job } from '../../src/notebook/index.ts';
import type { Reading } from '../../src/readings/reading.ts';

// The command as people and other programs run it: a process with a file, its output, its exit status.

const script = fileURLToPath(new URL('../../scripts/replay.ts', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'replay-'));
afterAll(() => rmSync(folder, { recursive: true }));

function replay(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    encoding: 'utf8',
    env: { ...process.env, NODE_NO_WARNINGS: '1' },
  });
  return { status, stdout, stderr };
}

function fileOf(text: string): string {
  const path = join(folder, 'job.json');
  writeFileSync(path, text);
  return path;
}

/** A guitar with a silent bridge pickup, as told at https://slowhand66.hatenablog.jp/entry/20140827/p1 (read in part): 430 k at the jack on bridge, 7 k on neck, volume full up. */
function silentBridge(): Job {
  const circuit = startingWirings.find(({ id }) => id === 'two-humbuckers-four-knobs')!.build();
  const setting = restingSetting(circuit);
  const reading = (id: string, position: string, value: number, at: string): Reading => ({
    id,
    ask: {
      kind: 'ohms',
      red: 'jack.tip',
      black: 'jack.sleeve',
      setting: { ...setting, positions: { ...setting.positions, selector: position } },
    },
    seen: { kind: 'ohms', ohms: ohms(value) },
    at,
    round: 0,
  });
  return {
    format: 'lugwise-job',
    version: 2,
    id: 'silent-bridge',
    title: 'Silent bridge pickup',
    guitar: { id: 'silent-bridge', title: 'Silent bridge pickup' },
    createdAt: '2026-03-01T18:00:00Z',
    changedAt: '2026-03-01T18:04:00Z',
    circuit,
    meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
    access: 'open',
    readings: [
      reading('r1', 'bridge', 430e3, '2026-03-01T18:03:00Z'),
      reading('r2', 'neck', 7e3, '2026-03-01T18:04:00Z'),
    ],
    refused: [],
    repairs: [],
  };
}

interface Printed {
  suspects: { repair: string; faults: { fault: string }[]; probability: number }[];
  readings: Record<string, unknown>[];
  next: Record<string, unknown> | null;
  verdict: string | null;
}

describe('replay of a job with two readings', () => {
  let status: number | null;
  let printed: Printed;
  beforeAll(() => {
    const run = replay(fileOf(exportJob(silentBridge())));
    ({ status } = run);
    expect(run.stderr).toBe('');
    printed = JSON.parse(run.stdout);
  }, 60_000);

  it('prints the keys that are promised, and ends with status 0', () => {
    expect(status).toBe(0);
    expect(Object.keys(printed)).toEqual(['suspects', 'readings', 'next', 'verdict']);
    for (const suspect of printed.suspects)
      expect(Object.keys(suspect)).toEqual(['repair', 'faults', 'probability']);
    expect(printed.readings.map(Object.keys)).toEqual(
      [1, 2].map(() => ['ask', 'expected', 'low', 'high', 'measured', 'fits']),
    );
    expect(Object.keys(printed.next ?? {})).toEqual([
      'ask',
      'kind',
      'red',
      'black',
      'setting',
      'worthBits',
      'effortSeconds',
    ]);
  });

  it('gives suspects largest first that sum to 1, healthy and something else among them', () => {
    const shares = printed.suspects.map(({ probability }) => probability);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    const repairs = printed.suspects.map(({ repair }) => repair);
    expect(repairs).toEqual(expect.arrayContaining(['healthy', 'something else']));
  });

  it('sets measured beside expected', () => {
    expect(printed.readings).toMatchObject([
      { measured: 430e3, fits: false },
      { measured: 7e3, fits: true },
    ]);
    for (const { low, high } of printed.readings)
      expect(low as number).toBeLessThan(high as number);
  });

  it('blames the path of the bridge pickup and not a pot, and asks on', () => {
    // The page ends with the bridge pickup open; 430 k is the volume pot seen past it.
    expect(printed.suspects[0]?.faults[0]?.fault).toMatch(/bridge/);
    expect(printed.suspects[0]?.repair).not.toMatch(/Volume|Tone/);
    expect(printed.verdict).toBeNull();
    expect(printed.next).toMatchObject({ worthBits: expect.any(Number) });
    expect(printed.next?.['worthBits'] as number).toBeGreaterThan(0);
  });
});

describe('replay of a bad file', () => {
  const damaged = JSON.parse(exportJob(silentBridge()));
  damaged.readings[1].seen.ohms = -5;
  const unknownLug = JSON.parse(exportJob(silentBridge()));
  unknownLug.readings[0].ask.red = 'jack.ring';

  it.each([
    [
      JSON.stringify(damaged),
      'readings[1].seen.ohms: expected a number of ohms from 0 to 1e12 or "open", got -5',
    ],
    [
      JSON.stringify(unknownLug),
      'readings[0].ask.red: there is no lug or lead end called jack.ring in this guitar',
    ],
    ['{"format": ', 'The file is not JSON: line 1, character 12.'],
    ['', 'The file is empty.'],
  ])('ends with status 2 and one line: %#', { timeout: 60_000 }, (text, sentence) => {
    const file = fileOf(text);
    expect(replay(file)).toEqual({ status: 2, stdout: '', stderr: `${file}: ${sentence}\n` });
  });

  it('says so when there is no file, or none is named', { timeout: 60_000 }, () => {
    const missing = join(folder, 'nowhere.json');
    expect(replay(missing).stderr).toBe(`${missing}: there is no such file\n`);
    expect(replay()).toMatchObject({
      status: 2,
      stderr: 'Usage: npm run replay -- FILE, one job file\n',
    });
  });
});
