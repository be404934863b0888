import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { build } from 'vite';
import { root } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import type { Job } from '../../src/notebook/job.ts';
import { browserLaunch } from './browser.ts';
import { atJack, jobCalled } from './notebook-data.ts';
import { expect, test } from './served-app.ts';

/** So often the browser is killed; KILLS=100 for a longer run. */
const KILLS = Number(process.env['KILLS'] ?? 3);
/** Longest life of a browser after its first stored reading, milliseconds. */
const LIFE = 700;

/** The notebook alone, in a page that stores reading after reading and says when each is stored. */
const page = (job: Job): string => `
import { openNotebook } from './notebook.js';
const template = ${JSON.stringify(job)};
window.store = async (tab) => {
  const notebook = await openNotebook();
  if (notebook.place !== 'disk') throw notebook.trouble;
  let job = await notebook.read(template.id).catch(() => notebook.write(template));
  for (let count = 1; ; count++) {
    const at = new Date().toISOString();
    const reading = { ...template.readings[0], id: tab + count, at };
    job = await notebook.write({ ...job, readings: [...job.readings, reading], changedAt: at });
    await window.stored(at + tab + count);
  }
};
window.list = async () => {
  const notebook = await openNotebook();
  const job = await notebook.read(template.id);
  return job.readings.map(({ id, at }) => at + id);
};
window.ready = true;
`;

interface LivingBrowser {
  readonly browser: Browser;
  /** As a phone does that runs out of power: no process of it gets to say a word. */
  kill(): Promise<void>;
}

async function startBrowser(profile: string): Promise<LivingBrowser> {
  const { executablePath, args } = browserLaunch;
  const child = spawn(
    executablePath!,
    [...args!, '--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const address = await addressOf(child);
  const browser = await chromium.connectOverCDP(address);
  return {
    browser,
    async kill() {
      const gone = new Promise((resolve) => child.once('exit', resolve));
      process.kill(-child.pid!, 'SIGKILL');
      await gone;
      await browser.close();
    },
  };
}

const addressOf = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    child.stderr!.on('data', (piece: Buffer) => {
      said += piece.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address) resolve(address);
    });
    child.once('exit', () => reject(new Error(`The browser ended: ${said}`)));
  });

test('a browser that is killed while two tabs store readings has lost none that was said to be stored', {
  tag: '@long',
}, async () => {
  test.setTimeout(60_000 + KILLS * 20_000);
  const host = mkdtempSync(join(tmpdir(), 'host-'));
  const profile = mkdtempSync(join(tmpdir(), 'profile-'));
  const [reading] = [atJack('r', '2026-03-01T11:00:00Z')];
  const job = jobCalled('killed', 'Killed', { readings: [reading] });
  await build({
    configFile: false,
    logLevel: 'error',
    root,
    build: {
      outDir: host,
      minify: false,
      copyPublicDir: false,
      lib: {
        entry: join(root, 'src/notebook/index.ts'),
        formats: ['es'],
        fileName: () => 'notebook.js',
      },
    },
  });
  writeFileSync(join(host, 'page.js'), page(job));
  writeFileSync(join(host, 'index.html'), '<script type="module" src="page.js"></script>');
  const server = await startStaticServer({
    folder: host,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
  });
  const address = `http://localhost:${server.port}/`;
  const stored = new Set<string>();
  const counts: number[] = [];
  try {
    for (let kill = 0; kill <= KILLS; kill++) {
      const { browser, kill: end } = await startBrowser(profile);
      try {
        const context = browser.contexts()[0]!;
        await context.exposeFunction('stored', (reading: string) => stored.add(reading));
        const open = async () => {
          const tab = await context.newPage();
          await tab.goto(address);
          await tab.waitForFunction('window.ready');
          return tab;
        };
        if (kill > 0) {
          const first = await open();
          const found = new Set(await first.evaluate<string[]>('window.list()'));
          expect([...stored].filter((one) => !found.has(one))).toEqual([]);
        }
        if (kill === KILLS) break;
        const tabs = [await open(), await open()];
        const before = stored.size;
        // It never ends by itself.
        for (const [at, tab] of tabs.entries())
          tab.evaluate(`window.store('${'ab'[at]}${kill}-')`).catch(() => undefined);
        await expect.poll(() => stored.size).toBeGreaterThan(before);
        await new Promise((resolve) => setTimeout(resolve, Math.random() * LIFE));
        counts.push(stored.size - before);
      } finally {
        await end();
      }
    }
  } finally {
    await server.stop();
    for (const folder of [host, profile]) rmSync(folder, { recursive: true, force: true });
  }
  console.log(
    `${KILLS} kills, ${stored.size} readings said to be stored, none lost; each time ${counts.join(', ')}`,
  );
  expect(stored.size).toBeGreaterThan(KILLS);
});
