import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test as base } from '@playwright/test';
import { dist } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';

interface ServedApp {
  /** Address of the app's first page. */
  readonly address: string;
  /** Every file of the app but the service worker, by its path from the first page. */
  readonly files: string[];
  /** Puts a version on the host whose page has this title, as a release would. */
  publish(title: string): void;
  /** Ends the server and all its connections: from here on the phone is alone. */
  stopServer(): Promise<void>;
}

interface Fixtures {
  /** Path under which the app is served; begins and ends with a slash. */
  readonly basePath: string;
  /** The built app on a host of its own, so that a test may change it and stop it. */
  readonly app: ServedApp;
  /** What the page complained of: errors thrown, and what the content security policy refused. */
  readonly complaints: readonly string[];
}

export const test = base.extend<Fixtures>({
  basePath: ['/', { option: true }],

  app: async ({ basePath }, use) => {
    if (!existsSync(join(dist, 'index.html'))) {
      throw new Error('There is no dist/: run npm run build.');
    }
    const folder = mkdtempSync(join(tmpdir(), 'host-'));
    cpSync(dist, folder, { recursive: true });
    const server = await startStaticServer({ folder, basePath, host: '127.0.0.1', port: 0 });
    let running = true;
    const stopServer = async () => {
      if (running) await server.stop();
      running = false;
    };
    await use({
      address: `http://localhost:${server.port}${basePath}`,
      files: filesOf(folder),
      publish: (title) => publish(folder, title),
      stopServer,
    });
    await stopServer();
    rmSync(folder, { recursive: true });
  },

  complaints: async ({ page }, use) => {
    const complaints: string[] = [];
    page.on('pageerror', (error) => complaints.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(message.text());
    });
    await use(complaints);
  },
});

export { expect } from '@playwright/test';

function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file !== 'sw.js' && statSync(join(folder, file)).isFile(),
  );
}

/** Changes the page, and in the service worker the revision that stands for the page's content. */
function publish(folder: string, title: string): void {
  rewrite(join(folder, 'index.html'), /<title>.*?<\/title>/, `<title>${title}</title>`);
  const revision = /\{([^{}]*)url:"index\.html"([^{}]*)\}/;
  rewrite(join(folder, 'sw.js'), revision, `{url:"index.html",revision:"${title}"}`);
}

function rewrite(file: string, pattern: RegExp, replacement: string): void {
  const text = readFileSync(file, 'utf8');
  if (!pattern.test(text)) throw new Error(`${file} has nothing like ${pattern}.`);
  writeFileSync(file, text.replace(pattern, replacement));
}
