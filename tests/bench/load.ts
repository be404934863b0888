import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';
import { dist, root } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import { browserLaunch } from '../e2e/browser.ts';
import { percentile, rounded } from './made/percentile.ts';

/** A page of the opened app whose server is gone, so often. */
const OPENINGS = 9;

/**
 * What the first screen needs of script, gzipped, and how long a cold start takes with no network: from the navigation until the first
 * screen can be used, with all scripts from the service worker's store.
 */
export async function run() {
  const server = await startStaticServer({
    folder: dist,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
  });
  const address = `http://localhost:${server.port}/`;
  const browser = await chromium.launch(browserLaunch);
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const first = await context.newPage();
  await first.goto(address);
  await first.getByText('Works offline').waitFor();
  await first.close();
  await server.stop();
  const times: number[] = [];
  for (let opening = 0; opening < OPENINGS; opening++) {
    const page = await context.newPage();
    await page.addInitScript(() => {
      new MutationObserver((_, observer) => {
        if (!document.querySelector('[data-screen=home] .door')) return;
        observer.disconnect();
        requestAnimationFrame(() => Object.assign(window, { usable: performance.now() }));
      }).observe(document, { subtree: true, childList: true });
    });
    await page.goto(address);
    times.push(
      await page
        .waitForFunction(() => (window as unknown as { usable?: number }).usable)
        .then(async (handle) => Number(await handle.jsonValue())),
    );
    await page.close();
  }
  await browser.close();
  // The list that the size gate measures: its paths are seen from the root.
  process.chdir(root);
  const [gate] = (await import(join(root, '.size-limit.mjs'))).default as [{ path: string[] }];
  const zipped = (file: string) => gzipSync(readFileSync(file)).length;
  const bytes = gate.path.reduce((sum, file) => sum + zipped(file), 0);
  const scripts = readdirSync(join(dist, 'assets'))
    .filter((file) => file.endsWith('.js'))
    .map((file) => ({
      name: file.replace(/-[\w-]{8}\.js$/, ''),
      bytes: zipped(join(dist, 'assets', file)),
    }))
    .sort((a, b) => b.bytes - a.bytes);
  return {
    firstLoadKbGzip: rounded(bytes / 1000),
    coldStartOfflineMs: rounded(percentile(times, 0.5)),
    allScriptsKbGzip: rounded(scripts.reduce((sum, one) => sum + one.bytes, 0) / 1000),
    load: {
      firstScripts: gate.path.length,
      scripts: scripts.length,
      largestKbGzip: scripts
        .slice(0, 8)
        .map(({ name, bytes: size }) => [name, rounded(size / 1000)] as const),
      openings: OPENINGS,
      slowestMs: rounded(Math.max(...times)),
    },
  };
}
