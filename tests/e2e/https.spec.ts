import { createHash, X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContextOptions, chromium, expect, test } from '@playwright/test';
import { type Certificate, certificateFor } from '../../scripts/certificate.ts';
import { dist } from '../../scripts/folders.ts';
import { type StaticServer, startStaticServer } from '../../scripts/static-server.ts';
import { browserLaunch } from './browser.ts';

// What README.md says of `npm start -- --https`: a phone that trusts the authority keeps the app; one
// whose owner only clicked the warning away does not, and the app says so.
let folder: string;
let certificate: Certificate;
let server: StaticServer;

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'certificate-'));
  certificate = certificateFor(['localhost'], folder);
  server = await startStaticServer({
    folder: dist,
    basePath: '/',
    host: '127.0.0.1',
    port: 0,
    certificate,
  });
});
test.afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true });
});

async function offlineStateSeenBy(flags: string[], context: BrowserContextOptions) {
  const args = [...(browserLaunch.args ?? []), ...flags];
  const browser = await chromium.launch({ ...browserLaunch, args });
  try {
    const page = await browser.newPage(context);
    await page.goto(`https://localhost:${server.port}/`);
    const html = page.locator('html');
    await expect(html).not.toHaveAttribute('data-offline', 'preparing');
    return await html.getAttribute('data-offline');
  } finally {
    await browser.close();
  }
}

test('a phone that trusts the certificate keeps the app', async () => {
  // Headless Chromium has no settings to install an authority in; it can be told one trusted key.
  const key = new X509Certificate(certificate.cert).publicKey.export({
    type: 'spki',
    format: 'der',
  });
  const trusted = createHash('sha256').update(key).digest('base64');
  const flags = [`--ignore-certificate-errors-spki-list=${trusted}`];
  expect(await offlineStateSeenBy(flags, {})).toBe('ready');
});

test('a phone whose owner clicked the warning away is told that it does not', async () => {
  expect(await offlineStateSeenBy([], { ignoreHTTPSErrors: true })).toBe('unavailable');
});
