// Draws the PNG icons of public/ from icon.svg, for phones that take no SVG. Run it when the drawing
// changes: npm run icons
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright';
import { browserLaunch } from '../tests/e2e/browser.ts';
import { root } from './folders.ts';

const sizes = [180, 192, 512];
const folder = join(root, 'public');
const drawing = readFileSync(join(folder, 'icon.svg'), 'utf8');

const browser = await chromium.launch(browserLaunch);
for (const size of sizes) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block}</style>${drawing}`);
  await page.screenshot({ path: join(folder, `icon-${size}.png`) });
}
await browser.close();
