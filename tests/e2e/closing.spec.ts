import { compose } from '../../src/circuit/catalog/modifications/compose.ts';
import { modifications } from '../../src/circuit/catalog/modifications/index.ts';
import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { twoSinglesThreePosition } from '../../src/circuit/catalog/two-singles-three-position.ts';
import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { ohms } from '../../src/circuit/units.ts';
import { JOB_VERSION, type Job } from '../../src/notebook/job.ts';
import { simulate } from '../simulated/index.ts';
import { answerFirst, begin, openCheck, playList, standing } from './closing-player.ts';
import { button, onScreen, overflow } from './hunting.ts';
import { playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const jobOf = (circuit: Circuit, title: string): Job => ({
  format: 'lugwise-job',
  version: JOB_VERSION,
  id: 'to-be-closed',
  title,
  guitar: { id: 'to-be-closed', title },
  createdAt: '2026-03-01T10:00:00Z',
  changedAt: '2026-03-01T10:00:00Z',
  circuit,
  meter: { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) },
  access: 'open',
  readings: [],
  refused: [],
  repairs: [],
});

const withBleed = (): Circuit => {
  const base = oneHumbuckerOneKnob();
  const modification = modifications.find(({ id }) => id === 'treble-bleed')!;
  const [place] = modification.applies(base);
  return compose(base, [{ modification, place: place!, chosen: {} }]).circuit;
};

test('closes a healthy guitar, any line first, with a stop on the way, and keeps the page', async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(120_000);
  await page.goto(app.address);
  await page.getByRole('link', { name: /check a job before closing/i }).click();
  await onScreen(page, 'check');
  await page.getByRole('link', { name: 'Another guitar' }).click();
  await page
    .getByLabel(/^one humbucker/i)
    .first()
    .check();
  await page.getByLabel('Your name for the guitar').fill('Red one');
  await button(page, 'Start').click();
  await begin(page, /back open/);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [], 'healthy');

  // The list says what it is worth before it begins.
  await expect(page.locator('.screen-body')).toContainText(
    /no list that shows as much needs fewer/,
  );
  await expect(page.locator('summary')).toHaveText('What this cannot see');

  // Any line can be first.
  await page.locator('.check-row').nth(5).click();
  await onScreen(page, 'closing-asking');
  await button(page, 'List').click();
  await onScreen(page, 'closing-list');

  // Stopped before the head of the list is through; a movement is kept as often as it was made.
  await expect(playList(page, guitar, 3)).rejects.toThrow('Not through');
  await expect(page.locator('.strip-job')).toContainText('3 of');
  expect((await storedJob(page)).readings.length).toBeGreaterThanOrEqual(3);
  await page.reload();
  await onScreen(page, 'closing-list');
  await expect(page.locator('.strip-job')).toContainText('3 of');
  await expect(page.locator('.check-row .mark-fits').first()).toBeVisible();

  expect(await playList(page, guitar)).toBe('closing-passed');
  await page.getByLabel(/how warm/i).fill('21');
  await button(page, 'Keep the record').click();
  await onScreen(page, 'proof');
  const proof = page.locator('.proof');
  await expect(proof).toContainText('Red one');
  await expect(proof).toContainText('Ruled out');
  await expect(proof).toContainText('What these readings cannot see');
  await expect(proof).toContainText('room at 21 °C');
  const stored = await storedJob(page);
  expect(stored.closedAt).toBe(stored.checks?.at(-1)?.endedAt);

  // One page of paper.
  const paper = await page.pdf({ format: 'A4' });
  expect(paper.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);

  // A file to share, with every place named.
  const downloading = page.waitForEvent('download');
  await button(page, 'Save as a file').click();
  expect((await downloading).suggestedFilename()).toMatch(/^Red-one-closing-check-.*\.txt$/);
  expect(complaints).toEqual([]);
});

const humbucker = oneHumbuckerOneKnob;
const faults: readonly {
  readonly name: string;
  readonly circuit: () => Circuit;
  readonly edits: readonly Edit[];
  /** What the line that fails asks. */
  readonly by: RegExp;
  /** The list may be begun anywhere: here with the taps. */
  readonly tapsFirst?: true;
}[] = [
  {
    name: 'a cold joint that reads well until flexed',
    circuit: humbucker,
    edits: [{ op: 'intermittent', site: 'hot@to' }],
    by: /moving|moved/i,
  },
  {
    name: 'a reversed coil inside a humbucker',
    circuit: humbucker,
    edits: [{ op: 'exchange', lugs: ['bridgeSlug.start', 'bridgeSlug.finish'] }],
    by: /tap|sound/i,
    tapsFirst: true,
  },
  {
    name: 'an out-of-phase pair',
    circuit: twoSinglesThreePosition,
    edits: [{ op: 'exchange', lugs: ['neckCoil.start', 'neckCoil.finish'] }],
    by: /tap|sound/i,
    tapsFirst: true,
  },
  {
    name: 'a dead pot',
    circuit: humbucker,
    edits: [{ op: 'open', site: 'volume:wiper' }],
    by: /./,
  },
  {
    name: 'swapped jack leads',
    circuit: humbucker,
    edits: [{ op: 'exchange', lugs: ['jack.tip', 'jack.sleeve'] }],
    by: /./,
  },
  {
    name: 'a missing string ground',
    circuit: humbucker,
    edits: [{ op: 'open', site: 'stringGround' }],
    by: /strings/i,
  },
  {
    name: 'a treble bleed on the wrong lugs',
    circuit: withBleed,
    edits: [
      { op: 'land', joint: 'volumeBleedOtherLeg@to', lug: 'volume.1' },
      { op: 'land', joint: 'volumeBleedResistorWiperLeg@to', lug: 'volume.1' },
    ],
    by: /./,
  },
];

for (const [at, { name, circuit, edits, by, tapsFirst }] of faults.entries())
  test(`catches ${name}`, at < 2 ? {} : { tag: '@long' }, async ({ app, page }) => {
    test.setTimeout(90_000);
    const job = jobOf(circuit(), name);
    await openCheck(page, app.address, job);
    await begin(page, /back open/);
    const guitar = simulate(job.circuit, edits, `closing ${name}`);
    if (tapsFirst) await answerFirst(page, guitar, 'tap');
    expect(await playList(page, guitar)).toBe('closing-failed');
    await expect(page.locator('.screen-closing-failed h2').first()).toHaveText(by);
    expect((await standing(page)).state).toBe('failed');
    expect((await overflow(page))[1]).toBe(0);
  });

test('a reading that fails becomes a hunt with all evidence, and after the repair only what it may have changed is asked', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(120_000);
  const job = jobOf(humbucker(), 'Mended');
  await openCheck(page, app.address, job);
  await begin(page, /back open/);
  const seed = 'mended';
  const broken = simulate(job.circuit, [{ op: 'open', site: 'stringGround' }], seed);
  expect(await playList(page, broken)).toBe('closing-failed');
  const before = await storedJob(page);
  const passed = (await standing(page)).items.filter(({ mark }) => mark === 'fits').length;
  await page.getByRole('link', { name: 'Find it' }).click();
  expect(await playUntilAnswered(page, broken)).toBe('verdict');
  expect((await storedJob(page)).readings.slice(0, before.readings.length)).toEqual(
    before.readings,
  );
  await button(page, 'How to mend it').click();
  await onScreen(page, 'repairing');
  await button(page, 'I did it').click();
  const mended = simulate(job.circuit, [], seed);
  expect(await playUntilAnswered(page, mended)).toBe('verdict');
  await page.getByRole('link', { name: /closing check/i }).click();
  await onScreen(page, 'closing-list', 'closing-asking');
  const now = await standing(page);
  expect(now.items.filter(({ mark }) => mark === 'fits').length).toBeGreaterThanOrEqual(
    Math.floor(0.6 * passed),
  );
  expect(await playList(page, mended)).toBe('closing-passed');
});
