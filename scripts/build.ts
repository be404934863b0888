// Builds dist/: the app by Vite, then the service worker that keeps every file of it on the phone.
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { generateSW } from 'workbox-build';
import { dist, root } from './folders.ts';
import { licenceTexts, licensedPackages, readLock } from './licences.ts';

const serviceWorker = 'sw.js';

/** @throws Error when a built file would not be kept for offline use */
export async function buildApp(): Promise<void> {
  await build({ root, logLevel: 'warn' });
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
    // Names under assets/ carry a hash of their content already.
    dontCacheBustURLsMatching: /\/assets\//,
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

if (process.argv[1] === import.meta.filename) await buildApp();
