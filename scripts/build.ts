// Builds dist/: the app by Vite, then the service worker that keeps every file of it on the phone.
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { generateSW } from 'workbox-build';
import { dist, root } from './folders.ts';
import { licenceTexts, licensedPackages, readLock } from './licences.ts';

const serviceWorker = 'sw.js';

/** @throws Error when a built file would not be kept for offline use */
export async function buildApp(): Promise<void> {
  await build({ root, logLevel: 'warn' });
  shareLanguage('nl');
  // Who hands the built folder on hands the licences on with it.
  writeFileSync(join(dist, 'licences.txt'), licenceTexts(licensedPackages(readLock())));
  const { count, size, warnings } = await generateSW({
    globDirectory: dist,
    globPatterns: ['**/*'],
    globIgnores: [serviceWorker],
    swDest: `${dist}/${serviceWorker}`,
    // A new version waits until the person agrees to it: nobody loses a screen in mid-measurement.
    skipWaiting: false,
    clientsClaim: true,
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
    sourcemap: false,
    navigateFallback: 'index.html',
    // Names under assets/ carry a hash of their content already, but for the worker: it is changed after it was named.
    dontCacheBustURLsMatching: /\/assets\/(?!host-)/,
    maximumFileSizeToCacheInBytes: 8 * 1024 * 1024,
  });
  const built = readdirSync(dist, { recursive: true, withFileTypes: true }).filter(
    (entry) => entry.isFile() && entry.name !== serviceWorker,
  ).length;
  if (warnings.length > 0 || count !== built || count === 0) {
    throw new Error(
      `Only ${count} of ${built} built files are kept for offline use. ${warnings.join(' ')}`,
    );
  }
  console.log(`Built ${count} files, ${Math.round(size / 1024)} kB, all kept for offline use.`);
}

/**
 * Page and worker are bundled apart, each with the messages of a language in a script of its own: the worker takes the page's. That holds
 * because messages import nothing but each other, so that they are the same wherever they are spoken.
 * @throws Error where they are not
 */
function shareLanguage(language: string): void {
  const assets = join(dist, 'assets');
  const scripts = readdirSync(assets).filter((file) => file.endsWith('.js'));
  const text = (file: string) => readFileSync(join(assets, file), 'utf8');
  const copies = scripts.filter((file) => file.startsWith(`${language}-`));
  const host = scripts.find((file) => /^host-/.test(file));
  const own = host && copies.find((copy) => text(host).includes(copy));
  const shared = copies.find((copy) => copy !== own);
  if (!host || !own || !shared || copies.length !== 2)
    throw new Error(`Messages of "${language}" for the page and for the worker were expected.`);
  const bound = copies.filter((copy) => /(^|[;}])import\b/.test(text(copy)));
  if (bound.length > 0)
    throw new Error(`The messages in ${bound.join()} import something: they cannot be shared.`);
  writeFileSync(join(assets, host), text(host).replaceAll(own, shared));
  rmSync(join(assets, own));
}

if (process.argv[1] === import.meta.filename) await buildApp();
