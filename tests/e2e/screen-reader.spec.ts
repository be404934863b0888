import { simulate } from '../simulated/index.ts';
import { missing, pressByKeyboard, told } from './heard.ts';
import { onScreen } from './hunting.ts';
import { askOn, figureOf, storedJob, wordOf } from './player.ts';
import { expect, test } from './served-app.ts';

// What Chromium hands to a screen reader, and nothing but the keyboard to work with.
test('a whole hunt without a screen and without a pointer', async ({ app, page, complaints }) => {
  test.setTimeout(180_000);
  await page.addInitScript(() => {
    const said: string[] = [];
    Object.assign(window, { said });
    new MutationObserver(() => {
      const now = document.querySelector('[role=status].announcer')?.textContent ?? '';
      if (now && said.at(-1) !== now) said.push(now);
    }).observe(document, { subtree: true, childList: true, characterData: true });
  });
  const press = (name: RegExp) => pressByKeyboard(page, name);
  const check = async (screen: string) => {
    // A reader starts at the title, which takes the focus once it is painted.
    const focused = async () => (await told(page)).findLast((node) => node.focused)?.role;
    await expect.poll(focused, screen).toBe('heading');
    const nodes = await told(page);
    expect(missing(nodes), screen).toEqual([]);
    return nodes;
  };

  await page.goto(app.address);
  await onScreen(page, 'home');
  expect(missing(await told(page))).toEqual([]);
  await press(/^Something is wrong/);
  await onScreen(page, 'new-job');
  await check('new-job');
  await press(/^Start$/);
  await onScreen(page, 'symptom');
  await check('symptom');
  await press(/^Not tried yet$/);
  await onScreen(page, 'cautions');
  await check('cautions');
  await press(/^The guitar is unplugged$/);
  await onScreen(page, 'asking');

  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'jackHot@to' }], 'screens');
  const seen = new Set<string>();
  for (let taken = 0; taken < 15; ) {
    const screen = await onScreen(page, 'asking', 'opening', 'changed', 'doubtful', 'verdict');
    // The picture comes a moment after the words.
    if (screen === 'asking') await page.locator('.asking-drawing [role=img]').first().waitFor();
    const nodes = await check(screen);
    seen.add(screen);
    if (screen === 'verdict') break;
    if (screen === 'changed') await press(/^Go on$/);
    if (screen === 'opening') await press(/^It is open$/);
    if (screen === 'doubtful') await press(/as I typed it/);
    if (screen === 'asking') {
      const ask = await askOn(page);
      // Where the probes go is in the title and in the picture's words; the controls are a list.
      const title = nodes.find(({ role, level }) => role === 'heading' && level === 1);
      if ('red' in ask) expect(title?.name).toMatch(/R on .+, B on .+/);
      expect(nodes.some(({ role, name }) => /image|img/.test(role) && name.endsWith('.'))).toBe(
        true,
      );
      expect(nodes.map(({ name }) => name)).toContain('Controls as they must stand');
      const answer = guitar.answer(ask);
      if (answer.kind === 'ohms') {
        // Typed on a keyboard: digits find the display by themselves, once it stands.
        await page.locator('.display-shown').waitFor();
        await page.keyboard.type(figureOf(answer.ohms) === 'OL' ? 'OL' : figureOf(answer.ohms));
        await page.keyboard.press('Enter');
      } else if (answer.kind === 'turn') {
        await press(new RegExp(`^${answer.how}`, 'i'));
        await press(/^Not noted$/);
      } else await press(wordOf(answer));
      taken += 1;
    }
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  expect(seen).toContain('changed');
  expect(seen).toContain('verdict');
  expect(await page.locator('h1').textContent()).toContain('output jack');

  await press(/^Undo$/);
  await onScreen(page, 'asking', 'opening');
  const said = await page.evaluate(() => (window as unknown as { said: string[] }).said);
  expect(said.length, 'what was taken back is announced').toBeGreaterThan(0);
  expect(complaints).toEqual([]);
});
