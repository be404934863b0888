import { crc32, deflateSync } from 'node:zlib';
import { exportJob } from '../../src/notebook/exchange.ts';
import { simulate } from '../simulated/index.ts';
import { bringIn, button, onScreen, readCautions, startHunt } from './hunting.ts';
import { jobCalled } from './notebook-data.ts';
import { playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

const hostile = '<img src=x onerror="document.title=\'run\'"><script>document.title="run"</script>';
const wiring = /one humbucker, one volume/i;

test('no request leaves the origin in a whole hunt, and a name that is markup stays text', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(120_000);
  const { origin } = new URL(app.address);
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  await page.goto(app.address);
  await startHunt(page, { wiring, title: hostile, open: true });
  await expect(page.locator('.strip-title')).toHaveText(hostile);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  await playUntilAnswered(page, simulate(circuit, [{ op: 'open', site: 'hot@to' }], 'safety'));
  await page.locator('.strip-job').click();
  await page.goto(`${app.address}#/`);
  await onScreen(page, 'home');
  await expect(page.getByText(hostile).first()).toBeVisible();
  expect(await page.title()).not.toBe('run');
  expect(asked.length).toBeGreaterThan(5);
  expect(
    asked.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(`${origin}/`)),
  ).toEqual([]);
  expect(complaints).toEqual([]);
});

test('the page runs nothing but its own files, and talks to nobody else', async ({ app, page }) => {
  await page.goto(app.address);
  await onScreen(page, 'home');
  const refused = await page.evaluate(async (elsewhere) => {
    const told: string[] = [];
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
      told.push(effectiveDirective),
    );
    const script = document.createElement('script');
    script.textContent = 'document.title = "run"';
    document.body.append(script);
    const foreign = document.createElement('script');
    foreign.src = `${elsewhere}script.js`;
    document.body.append(foreign);
    const frame = document.createElement('iframe');
    frame.src = elsewhere;
    document.body.append(frame);
    const button = document.createElement('button');
    button.setAttribute('onclick', 'document.title = "run"');
    document.body.append(button);
    button.click();
    const image = new Image();
    image.src = `${elsewhere}picture.png`;
    const sent = await fetch(elsewhere).then(
      () => 'sent',
      () => 'refused',
    );
    // A frame is refused by another process, which tells so in its own time.
    for (let waited = 0; waited < 200 && new Set(told).size < 5; waited += 1)
      await new Promise((resolve) => setTimeout(resolve, 50));
    return { told, sent, title: document.title };
  }, 'http://127.0.0.1:9/');
  expect(refused.sent).toBe('refused');
  expect(refused.title).not.toBe('run');
  expect(new Set(refused.told)).toEqual(
    new Set(['script-src-elem', 'script-src-attr', 'frame-src', 'img-src', 'connect-src']),
  );
});

test('a link from anywhere opens the app and runs nothing', async ({ app, page, complaints }) => {
  const links = [
    '#/job/%',
    '#/draw/%E0%A4%A',
    '#/guitar/__proto__',
    '#/job/constructor/card',
    '#/together/beside/%',
    `#/pickup/${encodeURIComponent(hostile)}/job`,
    '#javascript:document.title="run"',
    `#/${'x/'.repeat(50_000)}`,
  ];
  for (const link of links) {
    // Opened anew each time, as a link is that came with a message.
    await page.goto('about:blank');
    await page.goto(`${app.address}${link}`);
    await expect(page.getByRole('heading', { level: 1 }), link.slice(0, 40)).toBeVisible();
    await expect(page.locator('body')).not.toContainText(/undefined|NaN|\[object/);
  }
  expect(await page.title()).not.toBe('run');
  expect(complaints).toEqual([]);
});

test('a file or a picture that would fill the phone is refused in words, before it is read', async ({
  app,
  page,
  complaints,
}) => {
  await page.goto(`${app.address}#/import`);
  const choose = (label: string, type: string, bytes: number) =>
    page.getByLabel(label).evaluate(
      (field, { type, bytes }) => {
        // One block many times over: the file is large, this page is not.
        const block = new Uint8Array(1_000_000);
        const file = new File(Array(bytes / block.length).fill(block), 'huge', { type });
        const chosen = new DataTransfer();
        chosen.items.add(file);
        (field as HTMLInputElement).files = chosen.files;
        field.dispatchEvent(new Event('change', { bubbles: true }));
      },
      { type, bytes },
    );
  await choose('From a file', 'application/json', 151_000_000);
  await expect(page.getByRole('alert').first()).toHaveText(
    'The file huge is too large: 151.0 MB, where a notebook has at most 150.0 MB.',
  );
  await bringIn(page, app.address, exportJob(jobCalled('blue', 'The blue one')));
  await page.goto(`${app.address}#/job/blue/record`);
  await choose('Add a photo', 'image/png', 61_000_000);
  await expect(page.getByRole('alert').first()).toContainText('This picture is too large');
  await page.getByLabel('Add a photo').setInputFiles({
    name: 'torn.png',
    mimeType: 'image/png',
    buffer: Buffer.from([0x89, 0x50, 0x4e, 0x47]),
  });
  await expect(page.getByRole('alert').first()).toContainText('no picture');
  await page.getByLabel('Add a photo').setInputFiles({
    name: 'bomb.png',
    mimeType: 'image/png',
    buffer: whitePng(16_000),
  });
  await expect(page.getByRole('alert').first()).toContainText('256 megapixels');
  expect(complaints).toEqual([]);
});

/** A white picture of so many pixels square, in one bit a pixel: large once it is unpacked, small as a file (ISO/IEC 15948). */
function whitePng(side: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const body = Buffer.concat([Buffer.from(type), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(side, 0);
  header.writeUInt32BE(side, 4);
  // One bit a pixel, grey.
  header[8] = 1;
  const rows = Buffer.alloc(side * (1 + Math.ceil(side / 8)), 0);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
