// Takes a picture of every screen of a hunt at each size and theme, into tests/e2e/pictures/ (not kept):
//   npm run build && npm run ts -- tests/e2e/pictures.mts [part of a size's name]
// Says which screens scroll, so that a screen that asks a reading is seen to stay still.
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright';
import { dist, root } from '../../scripts/folders.ts';
import { startStaticServer } from '../../scripts/static-server.ts';
import type { SiteId } from '../../src/circuit/edit.ts';
import { simulate } from '../simulated/index.ts';
import { browserLaunch } from './browser.ts';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { playUntilAnswered, storedJob } from './player.ts';

const sizes = [
  { name: 'phone-light', width: 390, height: 844, dark: false, text: 1 },
  { name: 'phone-dark', width: 390, height: 844, dark: true, text: 1 },
  { name: 'small-light', width: 320, height: 640, dark: false, text: 1 },
  { name: 'small-dark', width: 320, height: 640, dark: true, text: 1 },
  { name: 'tablet-light', width: 768, height: 1024, dark: false, text: 1 },
  { name: 'tablet-dark', width: 768, height: 1024, dark: true, text: 1 },
  { name: 'landscape-light', width: 844, height: 390, dark: false, text: 1 },
  { name: 'large-text', width: 390, height: 844, dark: false, text: 2 },
].filter(({ name }) => name.includes(process.argv[2] ?? ''));

const wirings: readonly { words: RegExp; open: SiteId }[] = [
  { words: /two humbuckers, 3-position toggle, two volumes/i, open: 'bridgeSlug:winding' },
  { words: /three single coils.*two tones/i, open: 'middleCoil:winding' },
];

const server = await startStaticServer({
  folder: dist,
  basePath: '/',
  host: '127.0.0.1',
  port: 0,
});
const address = `http://localhost:${server.port}/`;
const browser = await chromium.launch(browserLaunch);
for (const size of sizes) {
  const folder = join(root, 'tests/e2e/pictures', size.name);
  mkdirSync(folder, { recursive: true });
  const context = await browser.newContext({
    viewport: { width: size.width, height: size.height },
    colorScheme: size.dark ? 'dark' : 'light',
    reducedMotion: 'reduce',
    hasTouch: true,
  });
  context.setDefaultTimeout(40_000);
  const page = await context.newPage();
  page.on('pageerror', (error) => console.log(`${size.name}: ${error.message}`));
  if (size.text !== 1)
    await page.addInitScript((text) => {
      addEventListener('DOMContentLoaded', () => {
        document.documentElement.style.fontSize = `${100 * text}%`;
      });
    }, size.text);
  let count = 0;
  const picture = async (name: string) => {
    count += 1;
    await page.waitForTimeout(50);
    const [down, across] = await page.evaluate(() => {
      const { scrollHeight, scrollWidth, clientHeight, clientWidth } = document.documentElement;
      return [scrollHeight - clientHeight, scrollWidth - clientWidth] as const;
    });
    if (down > 0 || across > 0)
      console.log(`${size.name} ${name}: scrolls ${down} px down, ${across} px across`);
    await page.screenshot({ path: join(folder, `${String(count).padStart(2, '0')}-${name}.png`) });
  };
  await hunt(page, picture);
  await practice(page, picture);
  await context.close();
  console.log(`${size.name}: ${count} pictures`);
}
await browser.close();
await server.stop();

async function hunt(page: Page, picture: (name: string) => Promise<void>): Promise<void> {
  await page.goto(address);
  await page.getByText('Works offline').waitFor();
  await picture('home-empty');
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await picture('new-job');
  await page.locator('summary', { hasText: 'Values of its parts' }).click();
  await page.locator('.value-row').first().scrollIntoViewIfNeeded();
  await picture('new-job-values');
  await page.getByRole('link', { name: 'Back' }).click();
  for (const [at, wiring] of wirings.entries()) {
    const open = at > 0;
    await startHunt(page, {
      wiring: wiring.words,
      title: 'The red one with a rather long name',
      open,
    });
    if (!open) await picture('symptom');
    await page.locator('.chip', { hasText: 'Normal' }).click();
    if (!open) {
      await picture('symptom-second');
      await button(page, /Do the knobs work/).click();
      await picture('symptom-knobs');
      await page.locator('.chip', { hasText: 'As it should' }).click();
      await picture('symptom-knob-second');
      await button(page, /Do the knobs work/).click();
    }
    await button(page, 'Go on').click();
    await onScreen(page, 'cautions');
    if (!open) await picture('cautions');
    await readCautions(page);
    await picture('asking-jack');
    const { circuit } = await storedJob(page);
    const guitar = simulate(circuit, [{ op: 'open', site: wiring.open }], 'pictures');
    if (!open) await asides(page, picture);
    for (let n = 1; n <= 9; n++) {
      const screen = await playUntilAnswered(page, guitar, 1).catch(() => 'asked');
      if (screen !== 'asked') break;
      await onScreen(page, 'changed');
      await picture(`changed-${n}`);
      await button(page, 'Go on').click();
      const now = await onScreen(page, 'asking', 'opening', 'verdict', 'nothing-left');
      await picture(`${now}-${n}`);
      if (now === 'opening') {
        await button(page, 'It is open').click();
        await onScreen(page, 'asking', 'verdict');
        await picture(`asking-open-${n}`);
      }
    }
    await picture('verdict-end');
    await page.locator('.strip-job').click();
    await picture('record');
    await page.getByRole('link', { name: 'Values and meter' }).click();
    await picture('values');
    await page.locator('.strip-job').click();
    await page.getByRole('link', { name: 'The wiring' }).click();
    await picture('drawing');
    await page.locator('.wiring .whole-target').last().press('Enter');
    await page.locator('.panel h2').waitFor();
    await picture('drawing-tapped');
    await page.getByRole('link', { name: 'Back to the hunt' }).click();
    if (await page.getByRole('button', { name: 'How to mend it' }).count()) {
      await button(page, 'How to mend it').click();
      await picture('repairing');
      if ((await page.getByRole('radio').count()) > 1) {
        await page.getByRole('radio').last().check();
        await picture('repairing-other');
      }
      await button(page, 'I did it').click();
      const after = await onScreen(page, 'asking', 'opening', 'verdict', 'nothing-left');
      await picture(`after-repair-${after}`);
    }
    await page.locator('.strip-job').click();
    await button(page, 'Close the job').click();
    await onScreen(page, 'closed');
    await picture('closed');
    if (!open) await button(page, 'Take it up again').click();
    await page.getByRole('link', { name: 'Home' }).first().click();
    await onScreen(page, 'home');
  }
  await picture('home-jobs');
  await page.getByRole('link', { name: /bring in a job/i }).click();
  await page.getByLabel('Or paste its text').fill('{"format": "other"}');
  await button(page, 'Look at the text').click();
  await page.locator('[role=alert]').waitFor();
  await picture('import-refused');
}

/** A made-up guitar, from the first screen to a first reading, and its end. */
async function practice(page: Page, picture: (name: string) => Promise<void>): Promise<void> {
  await page.goto(address);
  await button(page, /Practise on a made-up guitar/).click();
  await onScreen(page, 'symptom');
  await picture('practice-symptom');
  await button(page, 'Plug it in and play').click();
  await page.locator('.place-seen').first().waitFor();
  await picture('practice-played');
  await button(page, 'Go on').click();
  await button(page, 'The guitar is unplugged').click();
  await onScreen(page, 'asking');
  await picture('practice-asking');
  await page.locator('.practice-meter button').first().click();
  await page.locator('.practice-shown').waitFor();
  await picture('practice-shown');
  await button(page, 'Turn the drawing round').click();
  await picture('asking-turned');
  await button(page, 'Turn the drawing round').click();
  await page.locator('.strip-job').click();
  await button(page, 'Close the job').click();
  await onScreen(page, 'closed');
  await picture('practice-closed');
  await page.goto(`${address}#/bench`);
  await onScreen(page, 'bench');
  await picture('bench');
}

/** The screens beside the straight way. */
async function asides(page: Page, picture: (name: string) => Promise<void>): Promise<void> {
  await button(page, 'OL? Help').click();
  await picture('help');
  await button(page, 'Back to the reading').click();
  await button(page, 'Jumps about').click();
  await picture('jumping');
  await button(page, 'It is steady now').click();
  await button(page, '1').click();
  await button(page, 'Enter').click();
  await picture('asking-two-meanings');
  await button(page, 'Change what I typed').click();
  await button(page, 'delete').click();
  await button(page, 'My own reading').click();
  await picture('own-reading');
  await page.getByLabel('Two other points').check();
  await page.locator('summary').click();
  await picture('own-reading-inside');
  await button(page, 'Back').click();
  await onScreen(page, 'asking');
  await type(page, '4.1');
  await onScreen(page, 'doubtful');
  await picture('doubtful');
  await button(page, 'Type it again').click();
  for (let n = 0; n < 3; n++) await button(page, 'delete').click();
  const put = await page.evaluateHandle(() => IDBObjectStore.prototype.put);
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('No room.', 'QuotaExceededError');
    };
  });
  await type(page, '4.1k');
  await onScreen(page, 'storage-failed');
  await picture('storage-failed');
  await page.evaluate((before) => {
    IDBObjectStore.prototype.put = before;
  }, put);
  await button(page, 'Try again').click();
  await onScreen(page, 'changed');
  await button(page, 'Undo').click();
  await onScreen(page, 'asking');
  await picture('asking-after-undo');
}
