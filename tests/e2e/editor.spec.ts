import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { cardOf } from '../../src/diagnosis/card.ts';
import { importJob, type Job } from '../../src/notebook/index.ts';
import { resistancesOfMany, spiceNetlist } from '../oracle/index.ts';
import { compareAllPairs, tell } from '../outside/against-ngspice.ts';
import { everySetting } from '../outside/settings.ts';
import { simulate } from '../simulated/index.ts';
import { DrawingBoard } from './drawing-board.ts';
import { button, onScreen, readCautions } from './hunting.ts';
import { playUntilAnswered, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

/** From the first screen to an empty drawing board. */
async function drawFromNothing(page: Page, address: string): Promise<DrawingBoard> {
  await page.goto(address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await button(page, 'Draw it yourself').click();
  await onScreen(page, 'editor');
  return new DrawingBoard(page);
}

/** Three pickups, each with an on-off toggle and a phase toggle of its own, one volume. Nobody's wiring. */
async function drawSixToggles(board: DrawingBoard): Promise<void> {
  const sides = ['bridge', 'neck', 'middle'];
  for (const _ of sides) await board.add('Pickup, one coil');
  await board.add('Pot');
  for (const [at] of sides.entries()) {
    await board.add('Mini toggle', { Contacts: 'on-on, one pole' });
    await board.add('Mini toggle');
    const [onOff, phase] = [2 * at + 1, 2 * at + 2].map((number) =>
      number === 1 ? 'the mini toggle' : `the mini toggle ${number}`,
    );
    const side = sides[at];
    await board.lead(`the finish of the ${side} pickup`, `lug AC of ${phase}`);
    await board.lead(`the start of the ${side} pickup`, `lug BC of ${phase}`);
    await board.lead(`lug A1 of ${phase}`, `lug AC of ${onOff}`);
    await board.lead(`lug B1 of ${phase}`, 'the case of the volume');
    await board.lead(`lug A2 of ${phase}`, `lug B1 of ${phase}`);
    await board.lead(`lug B2 of ${phase}`, `lug A1 of ${phase}`);
    await board.lead(`lug A1 of ${onOff}`, 'lug 3 of the volume');
  }
  await board.add('Output jack');
  await board.add('Strings and bridge');
  await board.lead('lug 1 of the volume', 'the case of the volume');
  await board.lead('lug 2 of the volume', 'the tip lug of the output jack');
  await board.lead('the case of the volume', 'the sleeve lug of the output jack');
  await board.lead('the strings and bridge', 'the case of the volume');
}

/** From the board to the first question of the hunt. */
async function useIt(board: DrawingBoard, name: string): Promise<void> {
  const { page } = board;
  await board.tap(board.button('Use it'));
  await page.getByLabel('Your name for the guitar').fill(name);
  await page.getByLabel('It is open already').check();
  await board.tap(board.button('Start'));
  await onScreen(page, 'symptom');
}

/** The job as the app hands it over. */
async function exportedJob(page: Page): Promise<Job> {
  await page.locator('.strip-job').click();
  await onScreen(page, 'record');
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save as a file').click(),
  ]);
  const result = importJob(readFileSync(await file.path(), 'utf8'));
  if (!result.ok) throw new Error(result.sentence);
  return result.job;
}

const threeFigures = (ohms: number): string =>
  ohms < 1000 ? `${ohms.toPrecision(3)} Ω` : `${(ohms / 1000).toPrecision(3)} kΩ`;

/** Every figure in ohms on the reading card, beside what ngspice and the meter's leads give at the same place. */
function cardBesideNgspice(job: Job) {
  const card = cardOf({ ...job, repairs: [] });
  const cells = [
    ...card.jack.flatMap(({ atTen, atZero }) => [atTen, atZero]),
    ...card.lines.map(({ cell }) => cell),
  ];
  const asked = cells.flatMap(({ ask, expected }) =>
    ask.kind === 'ohms' ? [{ ask, expected }] : [],
  );
  const read = resistancesOfMany(
    asked.map(({ ask }) => ({
      netlist: spiceNetlist(job.circuit, ask.setting, []),
      pairs: [[ask.red, ask.black] as const],
    })),
  );
  return asked.map(({ ask, expected }, at) => ({
    place: `${ask.red} to ${ask.black}`,
    card: expected,
    ngspice: read[at]![0]!,
  }));
}

test('three pickups on six mini toggles: drawn from nothing, read as ngspice reads them, and a fault in them found', async ({
  page,
  app,
  complaints,
}) => {
  test.setTimeout(180_000);
  const board = await drawFromNothing(page, app.address);
  await drawSixToggles(board);
  await expect(board.button('Check')).toBeVisible();
  await useIt(board, 'Six toggles');
  const job = await exportedJob(page);
  const { circuit } = job;
  expect(circuit.parts.filter(({ kind }) => kind === 'switch')).toHaveLength(6);
  expect(circuit.leads).toHaveLength(25);

  // What the job expects is what a circuit simulator works out from the exported circuit.
  const some = everySetting(circuit).filter((_, at) => at % 16 === 3);
  const comparison = compareAllPairs(some.map((setting) => ({ circuit, setting, edits: [] })));
  expect(tell(comparison)).toEqual([]);
  expect(comparison.pairs).toBeGreaterThan(5000);
  const figures = cardBesideNgspice(job);
  expect(figures.length).toBeGreaterThan(20);
  for (const { place, card, ngspice } of figures) {
    if (card.text.startsWith('about'))
      expect(`${place}: ${card.text}`).toBe(`${place}: about ${threeFigures(ngspice)}`);
    expect(ngspice).toBeGreaterThanOrEqual(card.low ?? (card.text.startsWith('open') ? 1e12 : 0));
    expect(ngspice).toBeLessThanOrEqual(card.high ?? Number.POSITIVE_INFINITY);
  }
  // The screen shows the same figures.
  await page.getByRole('link', { name: 'Reading card' }).click();
  await onScreen(page, 'card');
  const shown = page.locator('.card-table').first().locator('.card-figure');
  await shown.first().waitFor();
  const first = figures.find(({ card }) => card.text.startsWith('about'))!;
  await expect(shown.first()).toContainText(threeFigures(first.ngspice));

  // One joint of the neck pickup was never soldered.
  const lead = circuit.leads.find(({ from }) => from === 'neckCoil.finish')!;
  const guitar = simulate(circuit, [{ op: 'open', site: `${lead.id}@to` }], 'six toggles');
  await page.getByRole('link', { name: 'To the hunt' }).click();
  await onScreen(page, 'symptom');
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  expect(await playUntilAnswered(page, guitar, 25)).toBe('verdict');
  await expect(page.getByRole('heading', { level: 1 })).toContainText(
    "the neck pickup's lead on lug AC of the mini toggle 4",
  );
  expect((await storedJob(page)).circuit).toEqual(circuit);
  expect(complaints).toEqual([]);
});
