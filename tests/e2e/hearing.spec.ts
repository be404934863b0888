import { assess } from '../../src/diagnosis/assess.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { evidenceOf } from '../../src/flows/index.ts';
import { hearIn } from '../hearing/in-browser.ts';
import {
  addTone,
  humming,
  mixed,
  sampleRate,
  speechShapedNoise,
  wavOf,
} from '../hearing/sounds.ts';
import { type Condition, judge, streamOf } from '../hearing/trials.ts';
import { Dice } from '../simulated/dice.ts';
import { simulate } from '../simulated/index.ts';
import { button, onScreen, overflow, readCautions, startHunt } from './hunting.ts';
import { microphone } from './microphone.ts';
import { figureOf, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';

test.use({ actionTimeout: 20_000 });

const inBrowser: readonly Condition[] = [
  { surroundings: 'speech-shaped noise', decibels: 10, beep: 0.3 },
  { surroundings: 'music', decibels: 10, beep: 1.2 },
  { surroundings: 'noise that rises and falls', decibels: 5, beep: 0.3 },
];

test('the ear answers in the browser as it does in its tests', { tag: '@long' }, async ({
  app,
  page,
  complaints,
}) => {
  await page.goto(app.address);
  for (const condition of inBrowser) {
    const stream = streamOf(condition, 'in the browser', 20);
    const { tone, changes } = await hearIn(page, stream.sound);
    expect(Math.abs((tone?.hertz ?? 0) - stream.hertz)).toBeLessThan(5);
    const tally = judge(stream, changes);
    expect(tally, JSON.stringify(condition)).toEqual({ asked: 20, right: 20, missed: 0, false: 0 });
  }
  expect(complaints).toEqual([]);
});

function beep(seconds: number): Buffer {
  const sound = new Float32Array(Math.round((seconds + 0.2) * sampleRate));
  addTone(sound, { from: 0.1, seconds, hertz: 2730, rms: 0.1, square: true });
  return wavOf(sound);
}

test('a whole hunt with the screen touched only to start it', async ({ app, page, complaints }) => {
  test.setTimeout(240_000);
  const play = await microphone(page);
  await page.goto(app.address);
  await page.getByRole('link', { name: /hearing/i }).click();
  await button(page, /^Learn my meter/).click();
  await page.getByText(/Hold the two tips together/).waitFor();
  await play(beep(2));
  await expect(page.locator('[data-tone]')).toHaveAttribute('data-tone', /^27[23]\d$/);
  await page.getByLabel('after 5 s').check();
  await page.getByRole('link', { name: 'Done' }).click();

  await startHunt(page, { wiring: /one humbucker, one volume/i, title: 'By ear', open: true });
  await button(page, 'Not tried yet').click();
  await onScreen(page, 'cautions');
  await readCautions(page);

  // From here on no touch: figures come from the keyboard, beeps through the microphone.
  const { circuit } = await storedJob(page);
  const fault = faultsOf(circuit).find(({ id }) => id === 'open:hot@to');
  if (!fault?.variants[0]) throw new Error('That joint cannot be open.');
  const guitar = simulate(circuit, fault.variants[0].edits, 'by ear');
  const kinds: string[] = [];
  for (let taken = 0; taken < 15; taken++) {
    if ((await onScreen(page, 'asking', 'verdict', 'changed')) === 'verdict') break;
    // Worked out while what changed still stands: once it listens, five seconds without a beep are an answer.
    const { next } = assess({ ...evidenceOf(await storedJob(page)), byEar: true });
    if ((await onScreen(page, 'asking', 'verdict')) === 'verdict') break;
    if (!next[0]) throw new Error('The screen asks, and the engine does not.');
    const seen = guitar.answer(next[0].ask);
    kinds.push(seen.kind);
    if (seen.kind === 'beep') {
      await page.getByText(/^Listening/).waitFor();
      if (seen.beeps) await play(beep(0.8));
    } else if (seen.kind === 'ohms') {
      await page.locator('.display-shown').waitFor();
      await page.keyboard.type(figureOf(seen.ohms));
      await page.keyboard.press('Enter');
    } else throw new Error(`A ${seen.kind} reading is not answered by ear or keyboard here.`);
    await page.locator('[data-screen=asking]').waitFor({ state: 'detached' });
  }
  expect(kinds).toContain('beep');
  expect(kinds).toContain('ohms');
  await onScreen(page, 'verdict');
  await expect(page.locator('h1')).toContainText(/on lug 3 of the volume is open/);
  expect(complaints).toEqual([]);
});

test('hum is measured by the microphone, position against position, and kept as readings', {
  tag: '@long',
}, async ({ app, page, complaints }) => {
  const play = await microphone(page);
  await page.goto(app.address);
  await startHunt(page, { wiring: /two single coils, 3-position blade/i, title: 'Hums' });
  await onScreen(page, 'symptom');
  await button(page, 'Measure the hum').click();
  await onScreen(page, 'hum');
  await expect(page.locator('.sentence').first()).toContainText('never opened');
  expect((await overflow(page))[1]).toBe(0);
  await button(page, 'Open the microphone').click();
  await page.getByText('Microphone', { exact: true }).waitFor();

  const dice = new Dice('hum in the browser');
  const talk = speechShapedNoise(7, dice, true);
  const sound = humming(7, 49.95, dice);
  for (const [position, decibels] of [
    ['bridge', 0],
    ['both', -14],
  ] as const) {
    await play(
      wavOf(
        mixed(
          sound,
          0.1 * 10 ** (decibels / 20),
          talk.map((x) => 0.03 * x),
        ),
      ),
    );
    const row = page.locator('.hum-places li', { hasText: new RegExp(`^${position}`, 'i') });
    await row.getByRole('button', { name: 'Measure' }).click();
    await row.getByRole('button', { name: 'Again' }).waitFor({ timeout: 15_000 });
  }
  await expect(page.getByText('Hum, 50 Hz')).toBeVisible();
  await expect(page.locator('.hum-places li', { hasText: /^bridge/i })).toContainText('loudest');
  await expect(page.locator('.hum-places li', { hasText: /^both/i })).toContainText('dB softer');
  await button(page, 'Take over the figures').click();
  await onScreen(page, 'symptom');
  await expect(page.getByText('Hum compared in two positions')).toBeVisible();
  await button(page, 'Go on').click();
  await onScreen(page, 'cautions');
  const { readings } = await storedJob(page);
  expect(readings).toHaveLength(1);
  const [{ ask, seen } = {}] = readings;
  if (ask?.kind !== 'hum' || seen?.kind !== 'hum') throw new Error('No reading of hum was kept.');
  expect([ask.setting.positions['selector'], ask.against.positions['selector']]).toEqual([
    'both',
    'bridge',
  ]);
  // What the ear promises under talk, and a browser that may lose a block of sound.
  expect(Math.abs(seen.decibels + 14)).toBeLessThan(2);
  expect(complaints).toEqual([]);
});
