import type { Page } from '@playwright/test';
import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { begunJob } from '../../src/notebook/begun-job.ts';
import { type IdealPickup, lead, sortThrough } from '../../src/sorter/ideal.fixture.ts';
import { putInto } from '../../src/sorter/into-circuit.ts';
import { simulate } from '../simulated/index.ts';
import { begin, openCheck, playList } from './closing-player.ts';
import { button, onScreen, overflow, type } from './hunting.ts';
import { playUntilAnswered } from './player.ts';
import { expect, test } from './served-app.ts';
import { answerAll, answerOne, questionOn, sortLeads } from './sorting.ts';
import { withVoice } from './spoken.ts';

test.use({ actionTimeout: 20_000 });

const pickup: IdealPickup = {
  seen: {
    coils: 2,
    leads: [
      lead('red'),
      { ...lead('green'), mark: 'striped' },
      lead('white'),
      lead('black'),
      lead('braid', 'bare'),
    ],
    plate: true,
    cover: false,
  },
  nodes: { red: '1', white: '2', green: '3', black: '4', braid: 'p', plate: 'p' },
  coils: { a: ['2', '1', 4200], b: ['3', '4', 4300] },
};

const role = (page: Page, lead: RegExp) =>
  page.locator('tr[data-role]').filter({ hasText: lead }).getByRole('cell').first();

test('five leads of a pickup, from the first screen to joined wiring, offline, over a crash, undone and put back', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 30_000 });
  await app.stopServer();
  await sortLeads(page, pickup, async (_, at) => {
    if (at === 1) {
      // A crash between two readings loses none.
      const before = await questionOn(page);
      await page.reload();
      await onScreen(page, 'sort-asking');
      expect(await questionOn(page)).toBe(before);
    }
    if (at === 2) {
      await button(page, 'Undo').click();
      await button(page, 'Put back').click();
      // What was asked before the undo stands again, not what was asked after it.
      await expect(page.locator('[data-readings="2"]')).toBeVisible();
      expect((await overflow(page))[1]).toBe(0);
    }
  });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Which lead does what');
  await expect(role(page, /red lead/)).toHaveText('+ end, screw coil');
  await expect(role(page, /white lead/)).toHaveText('− end, screw coil');
  await expect(role(page, /black lead/)).toHaveText('+ end, slug coil');
  await expect(role(page, /striped green lead/)).toHaveText('− end, slug coil');
  await expect(role(page, /braid wire/)).toHaveText('the base plate');
  const series = page.locator('[data-way=series]');
  const row = (name: RegExp) => series.getByRole('row', { name }).getByRole('cell');
  await expect(row(/^Hot/)).toHaveText('black lead');
  await expect(row(/^Ground/)).toHaveText('white lead + braid wire');
  await expect(row(/^Joined/)).toHaveText('red lead + striped green lead');
  await expect(page.locator('[data-way]')).toHaveCount(5);
  expect((await overflow(page))[1]).toBe(0);
  await page.reload();
  await onScreen(page, 'sort-result');
  await expect(role(page, /red lead/)).toHaveText('+ end, screw coil');

  // Into a guitar: its wiring speaks of the striped green lead.
  await page.getByRole('link', { name: 'Into a guitar' }).click();
  await page.getByLabel(/A new guitar/).selectOption('one-humbucker-one-knob');
  await button(page, 'Put it in').click();
  await onScreen(page, 'drawing');
  await expect(page.getByRole('button', { name: /striped green lead/ }).first()).toBeAttached();

  // Removed, and put back.
  await page.goto(`${app.address}#/`);
  await page.getByRole('link', { name: /Pickup: red, striped green/ }).click();
  await onScreen(page, 'sort-result');
  await page.getByText('Remove it').click();
  await page.getByRole('button', { name: /^Remove Pickup/ }).click();
  await onScreen(page, 'home');
  await expect(page.getByRole('link', { name: /Pickup: red, striped green/ })).toHaveCount(0);
  await button(page, 'Put back').click();
  await onScreen(page, 'sort-result');
  expect(complaints).toEqual([]);
});

test('closing check, hunt and card of a guitar with a sorted pickup speak of its leads', async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  const { sorting, evidence } = sortThrough(pickup);
  const put = putInto(oneHumbuckerOneKnob(), 'bridgePickup', {
    seen: pickup.seen,
    sorting,
    readings: evidence.readings,
    turned: false,
  });
  if ('refused' in put) throw new Error(put.refused);
  const { circuit } = put;
  const job = begunJob(
    { id: 'sorted', title: 'Sorted', circuit, meter: evidence.meter, access: 'open' },
    '2026-03-01T10:00:00Z',
  );
  await openCheck(page, app.address, job);
  await begin(page, /back open/);
  await expect(page.getByText(/striped green lead/).first()).toBeAttached();
  // The joint of the green lead is cold: the check finds that something is, the hunt what.
  const broken = simulate(circuit, [{ op: 'open', site: 'slugInner@to' }], 'the green lead');
  expect(await playList(page, broken)).toBe('closing-failed');
  await page.getByRole('link', { name: 'Find it' }).click();
  expect(await playUntilAnswered(page, broken)).toBe('verdict');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('striped green lead');
  await page.goto(`${app.address}#/job/sorted/card`);
  await onScreen(page, 'card');
  await page.getByRole('button', { name: /Pickups, inside/ }).click();
  await expect(page.getByText(/slug coil, black to striped green lead/i).first()).toBeAttached();
});

test('a pickup with a dead coil', async ({ app, page }) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  await sortLeads(page, { ...pickup, coils: { a: pickup.coils.a, b: ['3', '4', Infinity] } });
  await expect(role(page, /green lead/)).toHaveText('slug coil, which reads open');
  await expect(role(page, /black lead/)).toHaveText('slug coil, which reads open');
  await expect(role(page, /red lead/)).toHaveText('+ end, screw coil');
  await expect(
    page.getByText(/reads open: the break is in it or in one of its leads/).first(),
  ).toBeVisible();
});

test('a pickup with a coil the other way round, a slip of unit asked about, a tap in doubt done again', async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  const turned: IdealPickup = { ...pickup, coils: { a: pickup.coils.a, b: ['4', '3', 4300] } };
  await page.goto(app.address);
  let [slipped, doubted] = [false, false];
  await sortLeads(page, turned, async (words) => {
    if (!doubted && words.includes('millivolts')) {
      doubted = true;
      await button(page, 'Not sure').click();
      await expect(page.getByRole('heading', { level: 1 })).toHaveText('Do the same tap again');
      await button(page, 'Back').click();
    }
    if (!slipped && words.startsWith('Read the ohms')) {
      slipped = true;
      await type(page, '4.2');
      await expect(page.getByText(/You entered 4.2 Ω/)).toBeVisible();
      await button(page, 'Type it again').click();
      for (let key = 0; key < 3; key += 1) await button(page, 'delete').click();
    }
  });
  expect([slipped, doubted]).toEqual([true, true]);
  await expect(role(page, /green lead/)).toHaveText('+ end, slug coil');
  await expect(
    page.locator('[data-way=series]').getByRole('row', { name: /^Hot/ }).getByRole('cell'),
  ).toHaveText('striped green lead');
});

test('a pickup with a pair that the maker joined, and the pickup that it plays with', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(180_000);
  const joined: IdealPickup = {
    seen: {
      ...pickup.seen,
      leads: [lead('twisted', 'pair'), lead('red'), lead('black'), lead('braid', 'bare')],
    },
    nodes: { red: '1', twisted: '2', black: '3', braid: 'p', plate: 'p' },
    coils: { a: ['3', '2', 4000], b: ['2', '1', 4100] },
  };
  const said = await withVoice(page);
  await page.goto(`${app.address}#/bench`);
  await page.getByLabel(/Say where the probes go/).check();
  await page.getByRole('link', { name: 'Done' }).click();
  await sortLeads(page, joined);
  await expect(role(page, /joined pair twisted/)).toHaveText('where the two coils are joined');
  await expect(
    page.locator('[data-way=series]').getByRole('row', { name: /^Hot/ }).getByRole('cell'),
  ).toHaveText('red lead');
  await page.getByRole('button', { name: /poles with a compass/ }).click();
  for (const [coil, pole] of [
    ['screw', 'North'],
    ['slug', 'South'],
  ] as const) {
    await expect(page.getByRole('heading', { level: 1 })).toContainText(coil);
    await button(page, pole).click();
  }
  await expect(page.getByText(/opposite poles/)).toBeVisible();

  // Beside a single coil that swings to minus at the jack: it goes in the other way round.
  await page.getByRole('link', { name: 'Beside another pickup' }).click();
  await page.getByLabel('Name of pickup 1').fill('neck pickup');
  await button(page, 'Start').click();
  await button(page, 'It is unplugged').click();
  await onScreen(page, 'together-asking');
  await expect.poll(said).toMatch(/red probe on the tip .* Pull steel off the neck pickup/);
  await button(page, /minus/).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Once more');
  await button(page, /minus/).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('compass');
  // Without one, phase is told and hum stays open.
  await button(page, 'No compass').click();
  await onScreen(page, 'together-result');
  await expect(page.getByText('hum not known').first()).toBeVisible();
  await button(page, 'I have a compass now').click();
  await onScreen(page, 'together-asking');
  await button(page, 'North').click();
  await onScreen(page, 'together-result');
  await expect.poll(said).toMatch(/out of phase\.$/);
  await expect(page.getByText(/in the other way round: its minus end is hot/)).toBeVisible();
  await page.getByLabel('The wiring that they are meant for').selectOption({ index: 1 });
  await expect(page.locator('tr[data-position]').first()).toContainText('in phase');
  expect((await overflow(page))[1]).toBe(0);
  expect(complaints).toEqual([]);
});

test('two readings that cannot both be right are named, and the doubtful one is repeated', async ({
  app,
  page,
}) => {
  test.setTimeout(180_000);
  await page.goto(app.address);
  const single: IdealPickup = {
    seen: { coils: 1, leads: [lead('white'), lead('black')], plate: true, cover: false },
    nodes: { white: '1', black: '2', plate: 'p' },
    coils: { a: ['1', '2', 6000], b: ['x', 'y', Infinity] },
  };
  await page.getByRole('link', { name: /which lead does what/i }).click();
  await page.getByRole('radio', { name: 'One', exact: true }).check();
  await page.getByLabel('2', { exact: true }).check();
  for (const [at, { colour }] of single.seen.leads.entries())
    await page.getByLabel(`Colour of lead ${at + 1}`).fill(colour);
  await button(page, 'Start').click();
  await button(page, 'It lies free on the mat').click();
  await onScreen(page, 'sort-asking');
  let wrong = 0;
  for (let reading = 0; reading < 4; reading += 1) {
    if ((await onScreen(page, 'sort-asking', 'sort-result')) === 'sort-result') break;
    const words = await questionOn(page);
    const turned = { ...single, coils: { ...single.coils, a: ['2', '1', 6000] } } as IdealPickup;
    const isTap = words.includes('millivolts');
    if (isTap) wrong += 1;
    await answerOne(page, isTap && wrong === 2 ? turned : single, words);
    await expect(page.locator(`[data-readings="${reading}"]`)).toHaveCount(0, { timeout: 20_000 });
    if (isTap && wrong === 2) break;
  }
  await expect(page.getByText(/Two readings disagree|cannot both be right/)).toBeVisible({
    timeout: 20_000,
  });
  await page.getByRole('button', { name: /Repeat/ }).click();
  await answerAll(page, single);
  await expect(role(page, /black lead/)).toHaveText('+ end, coil');
});
