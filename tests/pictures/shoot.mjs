/** Pictures of the drawings, for eyes: node tests/pictures/shoot.mjs OUT-FOLDER [group] [width] [theme] [scale]; WIRINGS names a file of further circuits, TURNED=yes lays the guitar the other way. */
import { mkdirSync, readFileSync } from 'node:fs';
import preact from '@preact/preset-vite';
import { chromium } from 'playwright';
import { createServer } from 'vite';

const [out = 'reports/pictures', group, onlyWidth, onlyTheme, scale = '1'] = process.argv.slice(2);
const groups = group
  ? [group]
  : ['pots', 'switches', 'places', 'pairs', 'kinds', 'controls', 'maps', 'looks', 'meters'];
mkdirSync(out, { recursive: true });
const root = new URL('../..', import.meta.url).pathname;
const server = await createServer({
  root,
  configFile: false,
  plugins: [preact()],
  logLevel: 'error',
  server: { port: 5199, hmr: false },
});
await server.listen();
const browser = await chromium.launch({
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-quic'],
});
for (const name of groups)
  for (const width of onlyWidth ? [Number(onlyWidth)] : [390, 320])
    for (const theme of onlyTheme ? [onlyTheme] : ['light', 'dark']) {
      const page = await browser.newPage({
        viewport: { width: width * (process.env['ONLY'] ? 1 : 4), height: 600 },
        deviceScaleFactor: Number(scale),
      });
      page.on('pageerror', (error) => console.error(name, error.message));
      page.on('console', (message) => message.type() === 'error' && console.error(message.text()));
      if (process.env['WIRINGS'])
        await page.addInitScript(
          `window.furtherWirings = ${readFileSync(process.env['WIRINGS'], 'utf8')}`,
        );
      await page.goto(
        `http://localhost:5199/tests/pictures/gallery.html?group=${name}&only=${process.env['ONLY'] ?? ''}&turned=${process.env['TURNED'] ?? ''}&width=${width}&theme=${theme}`,
      );
      await page.waitForSelector('figure');
      await page.screenshot({ path: `${out}/${name}-${width}-${theme}.png`, fullPage: true });
      await page.close();
    }
await browser.close();
await server.close();
