import AxeBuilder from '@axe-core/playwright';
import type { CDPSession, Page } from '@playwright/test';
import { restingSetting } from '../../src/circuit/setting.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import { expectation } from '../../src/diagnosis/expect.ts';
import { asksAtJoint, evidenceOf } from '../../src/flows/index.ts';
import { button, onScreen, overflow, readCautions, startHunt, type } from './hunting.ts';
import { pagesOf } from './paper.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const fourKnobs = /two humbuckers, 3-position toggle, two volumes/i;

/** From the first screen to the drawing of an open guitar. */
async function openDrawing(page: Page, address: string, wiring = fourKnobs): Promise<void> {
  await page.goto(address);
  await startHunt(page, { wiring, title: 'Drawn guitar', open: true });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'The wiring' }).click();
  await onScreen(page, 'drawing');
}

const joint = (page: Page, words: string) =>
  page.locator(`.whole-target[aria-label^="${words}"]`).first();

/** Touches a joint where it is drawn. */
async function touch(page: Page, words: string): Promise<void> {
  await joint(page, words).tap();
  await expect(page.locator('.panel h2')).toHaveText(new RegExp(`^${words}`, 'i'));
}

test('a joint that is touched says what it should read, takes what is seen there, and a reading', async ({
  page,
  app,
  complaints,
}) => {
  await openDrawing(page, app.address);
  await touch(page, 'the joint of the wire on lug 2 of the neck volume');
  const job = await storedJob(page);
  const lead = job.circuit.leads.find(({ from }) => from === 'neckVolume.2')!;
  const here = asksAtJoint(job.circuit, `${lead.id}@from`, restingSetting(job.circuit));
  expect(here.ohms.map(({ to }) => to)).toEqual(['across', 'sleeve', 'tip']);
  const rows = page.locator('.readings-here li');
  for (const [at, { ask }] of here.ohms.entries())
    await expect(rows.nth(at).locator('.says')).toContainText(
      expectation(job.circuit, job.meter, ask).text.replace(/ (?=[kM]?Ω)/, '\u00a0'),
    );

  // In another position of the selector the sleeve is seen through the other pickup alone.
  await page.locator('summary', { hasText: 'Controls stand otherwise' }).click();
  await page.getByLabel('bridge', { exact: true }).check();
  await expect(rows.nth(2).locator('.says')).not.toContainText('below 1');
  await page.getByLabel('neck', { exact: true }).check();
  await expect(rows.nth(2).locator('.says')).toContainText('below 1');

  await page.locator('.chip', { hasText: 'Dull' }).tap();
  await expect(page.locator('.chip', { hasText: 'Dull' })).toHaveAttribute('aria-pressed', 'true');
  await expect
    .poll(async () => (await storedJob(page)).readings.map(({ ask, seen }) => ({ ask, seen })))
    .toMatchObject([
      { ask: { kind: 'look', at: `${lead.id}@from` }, seen: { kind: 'look', how: 'dull' } },
    ]);
  // Said twice it is one look.
  await page.locator('.chip', { hasText: 'Dull' }).tap();

  await rows.nth(0).getByRole('button').tap();
  await onScreen(page, 'asking');
  await type(page, 'OL');
  await onScreen(page, 'drawing');
  await expect(rows.nth(0)).toContainText('does not fit');
  await expect(rows.nth(0)).toContainText('Read it again');
  const { readings } = await storedJob(page);
  expect(readings.map(({ ask }) => ask.kind)).toEqual(['look', 'ohms']);
  // Dull and open: no place is suspected more, and its dot says how much.
  const { suspicion } = assess(evidenceOf(await storedJob(page)));
  const share = suspicion[`${lead.id}@from`] ?? 0;
  expect(share).toBe(Math.max(...Object.values(suspicion)));
  const figure = `${Math.round(100 * share)}`;
  await expect(page.locator('.panel')).toContainText(`Share of the suspicion: ${figure}\u00a0%`);
  await expect(joint(page, 'the joint of the wire on lug 2 of the neck volume')).toHaveAttribute(
    'aria-label',
    `the joint of the wire on lug 2 of the neck volume, ${figure} % of the suspicion`,
  );
  await button(page, 'Close').tap();
  await expect(page.locator('.suspect-list li').first()).toContainText('neck volume');
  expect(complaints).toEqual([]);
});

/** How large the drawing is shown and where it begins. */
const place = async (page: Page) => (await page.locator('.zoom-content').boundingBox())!;

type Fingers = readonly { readonly x: number; readonly y: number; readonly id: number }[];
const fingers = (cdp: CDPSession, kind: 'touchStart' | 'touchMove' | 'touchEnd', at: Fingers) =>
  cdp.send('Input.dispatchTouchEvent', {
    type: kind,
    touchPoints: at.map(({ x, y, id }) => ({ x, y, id })),
  });

test('two fingers zoom the drawing about the point between them, one moves it, and a tap still means a joint', {
  tag: '@long',
}, async ({ page, app }) => {
  await openDrawing(page, app.address);
  const frame = (await page.locator('.zoom-frame').boundingBox())!;
  const middle = { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
  const before = await place(page);
  const cdp = await page.context().newCDPSession(page);
  const spread = (half: number): Fingers => [
    { x: middle.x - half, y: middle.y, id: 1 },
    { x: middle.x + half, y: middle.y, id: 2 },
  ];
  await fingers(cdp, 'touchStart', spread(40));
  for (let half = 45; half <= 120; half += 5) await fingers(cdp, 'touchMove', spread(half));
  await fingers(cdp, 'touchEnd', []);
  await expect.poll(async () => (await place(page)).width / before.width).toBeCloseTo(3, 1);
  const after = await place(page);
  // The point of the drawing between the fingers stayed between them.
  const shareOf = (box: typeof before) => ({
    x: (middle.x - box.x) / box.width,
    y: (middle.y - box.y) / box.height,
  });
  expect(shareOf(after).x).toBeCloseTo(shareOf(before).x, 1);
  expect(shareOf(after).y).toBeCloseTo(shareOf(before).y, 1);
  await expect(page.locator('.panel')).toHaveCount(0);
  // The page itself neither zooms nor scrolls.
  expect(await page.evaluate(() => [visualViewport?.scale, scrollY])).toEqual([1, 0]);

  await fingers(cdp, 'touchStart', [{ ...middle, id: 1 }]);
  for (let moved = 10; moved <= 60; moved += 10)
    await fingers(cdp, 'touchMove', [{ x: middle.x + moved, y: middle.y, id: 1 }]);
  await fingers(cdp, 'touchEnd', []);
  await expect.poll(async () => (await place(page)).x - after.x).toBeCloseTo(60, 0);
  await expect(page.locator('.panel')).toHaveCount(0);

  await button(page, 'Fit').click();
  await expect.poll(async () => (await place(page)).width).toBeCloseTo(before.width, 0);
  await touch(page, 'the joint of the wire on lug 2 of the neck volume');
});

test('the drawing is read and worked by all, by keys too, light and dark, and fits phones and tablets', {
  tag: '@long',
}, async ({ page, app, complaints }) => {
  await openDrawing(page, app.address, /three single coils.*two tones/i);
  await joint(page, 'the joint of the wire on lug 2 of the volume').focus();
  await page.keyboard.press('Enter');
  await expect(page.locator('.panel h2')).toBeFocused();
  await expect(page.locator('.readings-here .says').first()).toContainText('Ω');
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations, passes } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => `${id} at ${nodes[0]?.target}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(5);
  }
  for (const width of [320, 390, 768]) {
    await page.setViewportSize({ width, height: 800 });
    expect([width, (await overflow(page))[1]]).toEqual([width, 0]);
  }
  await page.keyboard.press('Escape');
  await expect(page.locator('.panel')).toHaveCount(0);
  expect(complaints).toEqual([]);
});

test('the drawing is printed whole on one page', { tag: '@long' }, async ({ page, app }) => {
  await openDrawing(page, app.address);
  await touch(page, 'the joint of the wire on lug 2 of the neck volume');
  await page.emulateMedia({ media: 'print' });
  await expect(button(page, 'Print')).toBeHidden();
  await expect(page.locator('.panel')).toBeHidden();
  await expect(page.getByText('Drawn guitar: ')).toBeVisible();
  // A4 within its margins of 9 mm, at 96 px an inch.
  await page.setViewportSize({ width: 726, height: 1054 });
  const sheet = (await page.locator('.whole-drawing').boundingBox())!;
  expect(sheet.width).toBeGreaterThan(600);
  expect(sheet.y + sheet.height).toBeLessThan(1054);
  expect(pagesOf(await page.pdf({ preferCSSPageSize: true }))).toBe(1);
});
