import { mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { startBrowser } from './mortal-browser.ts';
import { serveNotebookAlone } from './notebook-alone.ts';
import { atJack, jobCalled } from './notebook-data.ts';
import { expect, test } from './served-app.ts';

/** So many readings do not fit into one block of the browser's log. */
const MANY = 400;

/** Where the log would end had the browser been killed between the two parts of its last record that has two: blocks of 32 kB (LevelDB, log_format.md). */
function betweenParts(log: Buffer): number {
  const [BLOCK, HEAD, FIRST] = [32_768, 7, 2];
  let found = -1;
  for (let at = 0; at + HEAD <= log.length; ) {
    const left = BLOCK - (at % BLOCK);
    const [size, kind] = [log.readUInt16LE(at + 4), log[at + 6]];
    if (left < HEAD || (size === 0 && kind === 0)) {
      at += left;
      continue;
    }
    at += HEAD + size;
    if (kind === FIRST) found = at;
  }
  return found;
}

function tear(profile: string): void {
  const databases = join(profile, 'Default', 'IndexedDB');
  const folder = join(databases, readdirSync(databases).find((one) => /leveldb$/.test(one))!);
  const logs = readdirSync(folder).filter((one) => one.endsWith('.log'));
  const log = join(folder, logs.sort().at(-1)!);
  const end = betweenParts(readFileSync(log));
  expect(end).toBeGreaterThan(0);
  truncateSync(log, end);
}

test('a browser that finds its database torn and throws it away has every reading that was stored since', {
  tag: '@long',
}, async () => {
  const profile = mkdtempSync(join(tmpdir(), 'profile-'));
  const readings = Array.from({ length: MANY }, (_, at) =>
    atJack(`r${at}`, new Date(Date.UTC(2026, 2, 1, 11, 0, at)).toISOString()),
  );
  const { address, stop } = await serveNotebookAlone(jobCalled('torn', 'Torn', { readings }));
  /** A browser from its start to its kill. */
  const live = async <T>(act: (page: Page, stored: Set<string>) => Promise<T>): Promise<T> => {
    const { browser, kill } = await startBrowser(profile);
    try {
      const context = browser.contexts()[0]!;
      const stored = new Set<string>();
      await context.exposeFunction('stored', (reading: string) => stored.add(reading));
      const page = await context.newPage();
      await page.goto(address);
      await page.waitForFunction('window.ready');
      return await act(page, stored);
    } finally {
      await kill();
    }
  };
  const storeSome = (tab: string) =>
    live(async (page, stored) => {
      // It never ends by itself.
      page.evaluate(`window.store('${tab}')`).catch(() => undefined);
      await expect.poll(() => stored.size).toBeGreaterThan(5);
      return stored;
    });
  try {
    await storeSome('a');
    tear(profile);
    // The browser passes over what is torn, and writes on behind it: the opening after this one finds it damaged.
    const stored = await storeSome('b');
    const found = new Set(await live((page) => page.evaluate<string[]>('window.list()')));
    expect([...stored].filter((one) => !found.has(one))).toEqual([]);
    expect(found.size).toBeGreaterThan(MANY);
  } finally {
    await stop();
    rmSync(profile, { recursive: true, force: true });
  }
});
