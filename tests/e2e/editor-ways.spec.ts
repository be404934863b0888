import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { twoPickupsSharedControls } from '../../src/circuit/catalog/two-pickups-shared-controls.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import type { WiringDraft } from '../../src/notebook/draft.ts';
import { exportJob, type Job } from '../../src/notebook/index.ts';
import { boxAtRest, DrawingBoard, draw } from './drawing-board.ts';
import { bringIn, button, lookAtFile, onScreen, overflow } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** The only draft, as the browser's database holds it. */
const storedDraft = (page: Page): Promise<WiringDraft> =>
  page.evaluate(
    () =>
      new Promise<WiringDraft>((resolve, reject) => {
        const opening = indexedDB.open('lugwise-drafts');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction('drafts').objectStore('drafts').getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve(all.result[0]);
          };
        };
      }),
  );

test('a kill button is wired with the keys alone, and a screen reader is told', async ({
  page,
  app,
}) => {
  await draw(page, app.address, /one humbucker, one volume/i);
  const said = page.locator('.announcer');
  /** Goes on with Tab, or back, until the words of what has the focus fit. */
  const tabTo = async (words: RegExp, key = 'Tab') => {
    for (let presses = 0; presses < 60; presses += 1) {
      await page.keyboard.press(key);
      const name = await page.evaluate(() => {
        const { activeElement: at } = document;
        return at?.getAttribute('aria-label') ?? at?.textContent ?? '';
      });
      if (words.test(name.trim())) return;
    }
    throw new Error(`60 times ${key} did not lead to ${words}`);
  };
  const press = async (words: RegExp, key = 'Tab') => {
    await tabTo(words, key);
    await page.keyboard.press('Enter');
  };
  await press(/^Past the drawing$/);
  await press(/^Add$/);
  await press(/^Button$/);
  await press(/^Place it$/);
  await expect(said).toHaveText('Placed: button.');
  for (const [lug, other] of [
    ['lug 1 of the button', 'the tip lug of the output jack'],
    ['lug 2 of the button', 'the sleeve lug of the output jack'],
  ]) {
    await press(/^List$/);
    await press(/^button\s*2 lugs/i);
    await press(new RegExp(`^Lead from ${lug}$`));
    await expect(said).toHaveText(`A lead from ${lug}: choose the lug it goes to.`);
    await press(/^output jack\s*2 lugs/i, 'Shift+Tab');
    await press(new RegExp(`^To ${other}$`));
    await expect(said).toHaveText(`Joined: ${lug} to ${other}.`);
    await page.keyboard.press('Escape');
    await expect(page.locator('.panel')).toHaveCount(0);
  }
  await expect(button(page, 'Check')).toBeVisible();
  const lastLeads = async () =>
    (await storedDraft(page)).now.circuit.leads.slice(-2).map(({ from, to }) => [from, to]);
  await expect.poll(lastLeads).toEqual([
    ['button.1', 'jack.tip'],
    ['button.2', 'jack.sleeve'],
  ]);
});

test('every panel of the board can be read and worked by all, light and dark, and fits', {
  tag: '@long',
}, async ({ page, app, complaints }) => {
  test.setTimeout(180_000);
  const board = await draw(page, app.address, /two two-conductor pickups/i);
  await board.add('Mini toggle');
  await expect(board.button('1 to see')).toBeVisible();
  const panels: readonly (readonly [string, () => Promise<void>])[] = [
    ['nothing', async () => undefined],
    ['Add a part', () => board.tap(board.button('Add'))],
    ['Parts, lugs and leads', () => board.tap(board.button('List'))],
    ['What stands out', () => board.tap(board.button('1 to see'))],
    ['Use this wiring', () => board.tap(board.button('Use it'))],
    ['Tone', () => board.touchPart('tone')],
    ['Mini toggle', () => board.touchPart('mini toggle')],
  ];
  for (const [title, open] of panels) {
    await open();
    if (title !== 'nothing') await expect(page.locator('.panel h2')).toHaveText(title);
    // The drawing is judged once: it is the same beside every panel.
    const what = title === 'nothing' ? 'main' : '.panel';
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      const { violations, passes } = await new AxeBuilder({ page })
        .include(what)
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(
        violations.map(({ id, nodes }) => `${title}, ${colorScheme}: ${id} at ${nodes[0]?.target}`),
      ).toEqual([]);
      expect(passes.length).toBeGreaterThan(3);
    }
    for (const [width, height] of [
      [320, 640],
      [844, 390],
      [390, 844],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect([title, width, await overflow(page)]).toEqual([title, width, [0, 0]]);
    }
    if (title !== 'nothing') await board.tap(board.button('Close'));
  }
  expect(complaints).toEqual([]);
});

test('what was drawn outlives the tab, with all that can be taken back and done again', async ({
  page,
  app,
}) => {
  const board = await draw(page, app.address, /one humbucker, one volume/i);
  await board.add('Capacitor', { 'Printed on it': '10 nF' });
  await board.lead('leg a of the capacitor', 'lug 3 of the volume');
  await board.add('Resistor');
  await board.tap(board.button('Undo'));
  await expect(page.locator('.announcer')).toHaveText('Taken back.');
  await expect.poll(async () => (await storedDraft(page)).undone.length).toBe(1);
  const before = await storedDraft(page);
  expect(before.now.circuit.parts.map(({ id }) => id)).toContain('capacitor');
  const context = page.context();
  await page.close({ runBeforeUnload: false });

  const again = await context.newPage();
  await again.goto(app.address);
  await again.getByRole('link', { name: /one humbucker, one volume/i }).tap();
  await onScreen(again, 'editor');
  expect((await storedDraft(again)).now).toEqual(before.now);
  await button(again, 'Redo').tap();
  await expect.poll(async () => (await storedDraft(again)).undone.length).toBe(0);
  const ids = (await storedDraft(again)).now.circuit.parts.map(({ id }) => id);
  expect(ids).toContain('resistor');
  for (let acts = 3; acts > 0; acts -= 1) await button(again, 'Undo').tap();
  await expect(button(again, 'Undo')).toBeDisabled();
  await expect
    .poll(async () => (await storedDraft(again)).now)
    .toEqual((await storedDraft(again)).start);
});

test('a lug is meant by where the finger came down, also where the drawing moves before it is lifted', async ({
  page,
  app,
}) => {
  const board = await draw(page, app.address, /one humbucker, one volume/i);
  for (let parts = 3; parts > 0; parts -= 1) await board.add('Pickup, one coil');
  await expect(page.locator('.board-sheet')).toHaveAttribute('aria-busy', 'false');
  const lug = page.locator('.whole-target[aria-label="lug 3 of the volume"]');
  const before = (await boxAtRest(lug))!;
  await page.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
  await page.mouse.down();
  for (let acts = 3; acts > 0; acts -= 1)
    await board.button('Undo').evaluate((undo: HTMLButtonElement) => undo.click());
  await expect(board.button('Undo')).toBeDisabled();
  await expect(page.locator('.board-sheet')).toHaveAttribute('aria-busy', 'false');
  const after = (await boxAtRest(lug))!;
  expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeGreaterThan(30);
  await page.mouse.up();
  await expect(page.locator('.doing')).toContainText('From lug 3 of the volume');
});

test('a part is moved, turned, renamed, given a value and taken away; a lead gets its colour', async ({
  page,
  app,
}) => {
  const board = await draw(page, app.address, /two two-conductor pickups/i);
  await board.touchPart('tone');
  await board.tap(board.button('Turn'));
  await expect
    .poll(async () => (await storedDraft(page)).now.places['tone'])
    .toMatchObject({ turn: 90 });
  const start = (await storedDraft(page)).now.places['tone']!;
  await page.getByLabel('Name', { exact: true }).fill('dark knob');
  await page.getByLabel('Printed').fill('250k');
  await page.getByLabel('Name', { exact: true }).focus();
  await expect(page.locator('.panel h2')).toHaveText('Dark knob');
  const isLeftHanded = async () =>
    (await storedDraft(page)).now.circuit.parts.some((part) => 'leftHanded' in part);
  await page.getByLabel('At 10 it is turned').selectOption('to the left');
  await expect.poll(isLeftHanded).toBe(true);
  await expect(page.locator('.board text', { hasText: 'lefty' })).toHaveCount(1);
  await page.getByLabel('At 10 it is turned').selectOption('to the right');
  await expect.poll(isLeftHanded).toBe(false);
  await board.tap(board.button('Move'));
  const frame = (await boxAtRest(page.locator('.zoom-frame')))!;
  await page.touchscreen.tap(frame.x + frame.width / 2, frame.y + 60);
  await expect(page.locator('.doing')).toContainText('Tap a lug');
  await expect
    .poll(async () => (await storedDraft(page)).now.places['tone']?.y)
    .toBeLessThan(start.y);
  expect((await storedDraft(page)).now.places['tone']).toMatchObject({ turn: 90 });
  await expect
    .poll(async () => (await storedDraft(page)).now.circuit.parts.find(({ id }) => id === 'tone'))
    .toMatchObject({ title: 'dark knob', ohms: { nominal: 250e3 } });
  await page
    .locator('.whole-target[aria-label^="the lead of the neck pickup on lug A"]')
    .press('Enter');
  await board.tap(page.locator('.chip', { hasText: 'white' }));
  await expect(page.locator('.panel h2')).toHaveText(/^The white lead of the neck pickup/);
  await board.tap(board.button('Close'));
  await board.touchPart('dark knob');
  await board.tap(board.button('Remove'));
  await expect
    .poll(async () => (await storedDraft(page)).now.circuit.parts.map(({ id }) => id))
    .not.toContain('tone');
  const { now } = await storedDraft(page);
  expect(now.circuit.leads.find(({ id }) => id === 'neckHot')?.colour).toBe('white');
});

/** A job with one reading at the jack and one at the tone. */
function measuredJob(): Job {
  const circuit = twoPickupsSharedControls();
  const setting = restingSetting(circuit);
  const at = (minute: number) => new Date(Date.UTC(2026, 2, 1, 18, minute)).toISOString();
  return {
    format: 'lugwise-job',
    version: 2,
    id: 'measured',
    title: 'Measured guitar',
    guitar: { id: 'measured', title: 'Measured guitar' },
    createdAt: at(0),
    changedAt: at(3),
    circuit,
    meter: { accuracy: 0.01, leads: ohms(0.2), limit: ohms(20e6) },
    access: 'open',
    readings: [
      {
        id: 'r1',
        ask: { kind: 'ohms', red: 'jack.tip', black: 'jack.sleeve', setting },
        seen: { kind: 'ohms', ohms: ohms(7400) },
        at: at(1),
        round: 0,
      },
      {
        id: 'r2',
        ask: { kind: 'ohms', red: 'tone.2', black: 'tone.1', setting },
        seen: { kind: 'ohms', ohms: ohms(431e3) },
        at: at(2),
        round: 0,
      },
    ],
    refused: [],
    repairs: [],
    cautionsReadAt: at(0),
  };
}

test('a file with a wiring that cannot be is refused with a sentence that names the lug', async ({
  page,
  app,
}) => {
  const job = measuredJob();
  const leads = job.circuit.leads.map((lead) =>
    lead.id === 'selectorOut' ? { ...lead, to: 'volume.9' } : lead,
  );
  await lookAtFile(page, app.address, exportJob({ ...job, circuit: { ...job.circuit, leads } }));
  await expect(page.getByRole('alert')).toHaveText(
    'This is no job that can be brought in. Circuit: lead selectorOut ends on volume.9, which is no lug of this guitar',
  );
});

test('a wiring of an open job is drawn anew: its readings stay, and those that lose their lugs are told', async ({
  page,
  app,
  complaints,
}) => {
  const job = measuredJob();
  await bringIn(page, app.address, exportJob(job));
  await page.goto(`${app.address}#/job/${job.id}`);
  await onScreen(page, 'record', 'asking', 'changed', 'verdict', 'opening', 'nothing-left');
  await page.locator('.strip-job').click();
  await page.getByRole('link', { name: 'The wiring' }).click();
  await button(page, 'The wiring is different').tap();
  await onScreen(page, 'editor');
  const board = new DrawingBoard(page);
  await board.touchPart('tone');
  await board.tap(board.button('Remove'));
  await board.tap(board.button('Use it'));
  await expect(page.locator('.panel h2')).toHaveText('Use the new wiring');
  await expect(page.locator('.lost li')).toHaveText(
    ['Lug 2 of the tone to lug 1 of the tone: 431 kΩ'],
    {
      ignoreCase: true,
    },
  );
  await expect(page.locator('.panel')).toContainText('One reading names what this wiring does not');
  await board.tap(board.button('Keep it'));
  await onScreen(page, 'asking', 'verdict', 'nothing-left', 'opening');
  const now = await storedJob(page);
  expect(now.id).toBe(job.id);
  expect(now.circuit.parts.map(({ id }) => id)).not.toContain('tone');
  expect(now.readings.map(({ id, seen }) => ({ id, seen }))).toEqual([
    { id: 'r1', seen: job.readings[0]?.seen },
  ]);
  expect(now.setAside?.map(({ reading }) => reading.id)).toEqual(['r2']);
  await page.locator('.strip-job').click();
  await onScreen(page, 'record');
  await expect(page.getByText('Readings of the wiring as it was before')).toBeVisible();
  await expect(page.locator('[data-screen=record]')).toContainText(/lug 1 of the tone: 431/i);
  // What is judged now is the wiring as it is: the reading at the jack is still in its table.
  await expect(page.locator('.grounds').first()).toContainText('7.40');
  expect(complaints).toEqual([]);
});

test('a switch gets lugs and contacts of its own, and the wiring takes them', async ({
  page,
  app,
}) => {
  const board = await draw(page, app.address, /two two-conductor pickups/i);
  await board.add('Mini toggle', { Contacts: 'on-on, one pole' });
  await board.touchPart('mini toggle');
  await page.locator('summary', { hasText: 'Lugs and what they join' }).tap();
  await page.getByLabel('Rows of lugs').selectOption('2');
  await board.tap(board.button('One position more'));
  await page.getByLabel('Lug, position 3', { exact: true }).selectOption('A1');
  await page.getByLabel('Other lug, position 3').selectOption('B3');
  await board.tap(board.button('Join them, position 3'));
  const pictured = page.locator('.contact-pictures').getByRole('img');
  await expect(pictured.nth(0)).toHaveAccessibleName('up: joins AC – A1');
  await expect(pictured.nth(2)).toHaveAccessibleName('position 3: joins A1 – B3');
  await board.tap(board.button('Part AC from A2, down'));
  await expect(page.getByLabel('Contacts')).toHaveValue('own');
  const made = async () =>
    (await storedDraft(page)).now.circuit.parts.find(({ id }) => id === 'miniToggle');
  await expect.poll(made).toMatchObject({
    rows: [
      ['A1', 'AC', 'A2'],
      ['B1', 'B2', 'B3'],
    ],
    positions: [
      { name: 'up', joins: [['AC', 'A1']] },
      { name: 'down', joins: [] },
      { name: '3', title: 'position 3', joins: [['A1', 'B3']] },
    ],
  });
  await board.tap(board.button('Close'));
  // Across the output: in its third position the guitar is silent, and the board says so.
  await board.lead('lug A1 of the mini toggle', 'the tip lug of the output jack');
  await board.lead('lug B3 of the mini toggle', 'the sleeve lug of the output jack');
  await board.tap(board.button(/to see/));
  await expect(page.locator('.warnings')).toContainText('position 3');
  await board.tap(board.button('Undo'));
  await expect
    .poll(async () => (await storedDraft(page)).now.circuit.leads.at(-1)?.to)
    .toBe('jack.tip');
});
