import type { Page } from '@playwright/test';
import { type IdealPickup, lead } from '../../src/sorter/ideal.fixture.ts';
import { dutch } from '../../src/words/nl/index.ts';
import { simulate } from '../simulated/index.ts';
import { answerDutch, dutchWords, foreignWords, sortDutch, typeDutch } from './dutch.ts';
import { button, onScreen, overflow } from './hunting.ts';
import { askOn, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000, locale: 'nl-NL' });

const known = dutchWords();

/** Notes what is not Dutch on the screen as it stands, and that nothing runs off at its side. */
function reader(page: Page, own: readonly string[]) {
  const foreign = new Set<string>();
  const look = async () => {
    const screen = await page.locator('[data-screen]').first().getAttribute('data-screen');
    for (const word of await foreignWords(page, known, own)) foreign.add(`${screen}: ${word}`);
    const [, across] = await overflow(page);
    if (across > 0) foreign.add(`${screen}: ${across} px too wide`);
  };
  return { look, foreign };
}

test('a whole hunt is in Dutch, its figures with a comma', async ({ app, page, complaints }) => {
  const { look, foreign } = reader(page, ['Rode Bas']);
  await page.goto(app.address);
  await page.getByText(dutch.home.worksOfflineOnThisPhone).waitFor();
  await look();
  await page.getByRole('link', { name: dutch.home.somethingIsWrong }).click();
  await page.getByLabel(/^één humbucker, één volume/i).check();
  await page.getByLabel(dutch.editor.yourNameForTheGuitar).fill('Rode Bas');
  await look();
  await button(page, dutch.editor.start).click();
  await onScreen(page, 'symptom');
  await look();
  await button(page, dutch.hunt.notTriedYet).click();
  await onScreen(page, 'cautions');
  await look();
  await button(page, dutch.hunt.theGuitarIsUnplugged).click();
  await onScreen(page, 'asking');
  await look();

  await typeDutch(page, '7,85k');
  await onScreen(page, 'changed', 'doubtful');
  await expect(page.getByText(/7,85.kΩ/).first()).toBeVisible();
  expect((await storedJob(page)).readings.at(-1)?.seen).toEqual({ kind: 'ohms', ohms: 7850 });
  await look();
  await button(page, dutch.pieces.undo).click();

  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'dutch');
  let screen = await onScreen(page, 'asking');
  for (let steps = 0; screen !== 'verdict' && steps < 30; steps += 1) {
    await look();
    if (screen === 'changed') await button(page, dutch.hunt.goOn).click();
    if (screen === 'opening') await button(page, dutch.hunt.itIsOpen).click();
    if (screen === 'doubtful') await button(page, new RegExp(dutch.hunt.asITypedIt)).click();
    if (screen === 'asking') await answerDutch(page, guitar.answer(await askOn(page)));
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
    screen = await onScreen(page, 'asking', 'opening', 'changed', 'doubtful', 'verdict');
  }
  expect(screen).toBe('verdict');
  await look();
  expect([...foreign]).toEqual([]);
  expect(complaints).toEqual([]);
});

test('every other screen is in Dutch', { tag: '@long' }, async ({ app, page }) => {
  test.setTimeout(300_000);
  const { look, foreign } = reader(page, ['Rode Bas', 'eigen']);
  const at = (hash: string) => page.goto(`${app.address}#/${hash}`);
  await page.goto(app.address);
  await button(page, new RegExp(dutch.home.practiseOnAMadeUpGuitar)).click();
  await onScreen(page, 'symptom');
  await look();
  await at('new');
  await page.locator('summary').first().click();
  await look();
  await page.getByRole('radio').nth(3).check();
  await page.getByLabel(dutch.editor.yourNameForTheGuitar).fill('Rode Bas');
  await button(page, dutch.editor.start).click();
  await onScreen(page, 'symptom');
  for (const head of await page.locator('.places-head').all()) {
    if ((await head.getAttribute('aria-expanded')) !== 'true') await head.click();
    for (const place of await page.locator('.place-head').all())
      if ((await place.getAttribute('aria-expanded')) !== 'true') {
        await place.click();
        await look();
      }
  }
  await button(page, new RegExp(`^(${dutch.hunt.notTriedYet}|${dutch.hunt.goOn})$`)).click();
  await button(page, dutch.hunt.theGuitarIsUnplugged).click();
  await onScreen(page, 'asking');
  await button(page, dutch.hunt.olHelp).click();
  await look();
  await button(page, dutch.hunt.backToTheReading).click();
  await button(page, dutch.hunt.jumpsAbout).click();
  await look();
  await button(page, dutch.hunt.itIsSteadyNow).click();
  await button(page, dutch.hunt.myOwnReading).click();
  await page.getByRole('radio').nth(1).check();
  await page.locator('summary').first().click();
  await look();
  const { id } = await storedJob(page);
  for (const view of ['record', 'values', 'trial', 'card', 'drawing'] as const) {
    await at(`job/${id}/${view}`);
    await page.waitForTimeout(1500);
    for (const fold of await page.locator('summary').all()) await fold.click();
    await look();
  }
  await page.locator('.wiring .whole-target').last().press('Enter');
  await look();
  await at(`job/${id}/closing`);
  await onScreen(page, 'closing-start');
  await look();
  await page.locator('button.large').first().click();
  if ((await onScreen(page, 'cautions', 'closing-list')) === 'cautions')
    await button(page, dutch.hunt.theGuitarIsUnplugged).click();
  await onScreen(page, 'closing-list');
  for (const fold of await page.locator('summary').all()) await fold.click();
  await look();
  await button(page, dutch.proof.begin).click();
  await onScreen(page, 'closing-asking');
  await look();
  await typeDutch(page, '1,2k');
  await page.waitForTimeout(500);
  await look();
  await at(`guitar/${(await storedJob(page)).guitar.id}`);
  await page.waitForTimeout(500);
  await look();
  for (const hash of [
    'check',
    'new-check',
    'bench',
    'notebook',
    'import',
    'together',
    'draw/x',
    '',
  ]) {
    await at(hash);
    await page.waitForTimeout(500);
    await look();
  }
  await at('new');
  await button(page, dutch.desk.drawItYourself).click();
  await onScreen(page, 'editor');
  await look();
  await button(page, dutch.editor.add).click();
  await look();
  expect([...foreign]).toEqual([]);
});

test('leads are sorted and pickups compared in Dutch', { tag: '@long' }, async ({ app, page }) => {
  test.setTimeout(300_000);
  const { look, foreign } = reader(page, ['rood groen wit zwart vlecht']);
  const pickup: IdealPickup = {
    seen: {
      coils: 2,
      plate: true,
      cover: false,
      leads: [lead('rood'), lead('groen'), lead('wit'), lead('zwart'), lead('vlecht', 'bare')],
    },
    nodes: { rood: '1', groen: '2', wit: '3', zwart: '4', vlecht: 'p', plate: 'p' },
    coils: { a: ['2', '1', 4000], b: ['4', '3', 4100] },
  };
  await page.goto(`${app.address}#/leads`);
  await onScreen(page, 'sort-telling');
  await page.getByLabel('5', { exact: true }).check();
  for (const [at, { colour, what }] of pickup.seen.leads.entries()) {
    await page.getByLabel(dutch.mat.colourOfLeadWhat(at + 1)).fill(colour);
    await page.getByLabel(dutch.mat.leadWhatIs(at + 1)).selectOption(what);
  }
  await page.getByLabel(dutch.mat.markOfLeadWhat(2)).selectOption('striped');
  await look();
  await button(page, dutch.mat.start).click();
  await onScreen(page, 'sort-cautions');
  await look();
  await button(page, dutch.mat.itLiesFreeOnTheMat).click();
  await sortDutch(page, pickup, look);
  await look();
  await expect(page.getByText('groen, gestreept').first()).toBeVisible();
  await page.getByRole('link', { name: dutch.mat.intoAGuitar }).click();
  await page.waitForTimeout(500);
  await page.getByRole('radio').first().check();
  await look();
  await page.goBack();
  await page.getByRole('link', { name: dutch.mat.besideAnotherPickup }).click();
  await page.waitForTimeout(500);
  await look();
  await page.getByLabel(dutch.together.nameOfPickupWhat(1)).fill('zwart');
  await button(page, dutch.together.start).click();
  await page.waitForTimeout(500);
  await look();
  await page.locator('.acts .main').click();
  await onScreen(page, 'together-asking');
  for (let taken = 0; taken < 6; taken += 1) {
    await look();
    const asked = await page.locator('h1').textContent();
    await page.locator('button.large').first().click();
    await expect(page.locator('h1')).not.toHaveText(asked ?? '');
    if ((await onScreen(page, 'together-asking', 'together-result')) === 'together-result') break;
  }
  await onScreen(page, 'together-result');
  await page.locator('select').first().selectOption({ index: 1 });
  await page.waitForTimeout(1000);
  await look();
  await page.goto(`${app.address}#/`);
  await page.waitForTimeout(500);
  await look();
  expect([...foreign]).toEqual([]);
});
