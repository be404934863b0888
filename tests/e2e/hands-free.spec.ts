import type { Page } from '@playwright/test';
import { nextItem } from '../../src/flows/closing-conversation.ts';
import { type IdealPickup, lead } from '../../src/sorter/ideal.fixture.ts';
import { addTone, sampleRate, wavOf } from '../hearing/sounds.ts';
import { simulate } from '../simulated/index.ts';
import { begin, standing } from './closing-player.ts';
import { button, onScreen, overflow, startHunt, type } from './hunting.ts';
import { microphone } from './microphone.ts';
import { figureOf, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';
import { answerOne, questionOn, tellPickup } from './sorting.ts';
import { withVoice } from './spoken.ts';

test.use({ actionTimeout: 20_000 });

function beep(seconds: number): Buffer {
  const sound = new Float32Array(Math.round((seconds + 0.2) * sampleRate));
  addTone(sound, { from: 0.1, seconds, hertz: 2730, rms: 0.1, square: true });
  return wavOf(sound);
}

async function speakFromNowOn(page: Page, address: string): Promise<void> {
  await page.goto(`${address}#/bench`);
  await page.getByLabel(/Say where the probes go/).check();
}

/** Four leads of two coils, and a bare one that is joined to the plate. */
const pickup: IdealPickup = {
  seen: {
    coils: 2,
    leads: [lead('white'), lead('black'), lead('red'), lead('green'), lead('braid', 'bare')],
    plate: true,
    cover: false,
  },
  nodes: { white: '1', black: '2', red: '3', green: '4', braid: 'p', plate: 'p' },
  coils: { a: ['2', '1', 4000], b: ['4', '3', 4100] },
};

test('leads are sorted with every question said and a beep heard', { tag: '@long' }, async ({
  app,
  page,
  complaints,
}) => {
  test.setTimeout(120_000);
  const said = await withVoice(page);
  const play = await microphone(page);
  await speakFromNowOn(page, app.address);
  await button(page, /^Learn my meter/).click();
  await page.getByText(/Hold the two tips together/).waitFor();
  await play(beep(2));
  await expect(page.locator('[data-tone]')).toHaveAttribute('data-tone', /^27[23]\d$/);
  await page.getByLabel('only by the key').check();
  await page.getByRole('link', { name: 'Done' }).click();
  await tellPickup(page, pickup);

  const heard: string[] = [];
  for (let taken = 0; taken < 15; taken += 1) {
    if ((await onScreen(page, 'sort-asking', 'sort-result')) === 'sort-result') break;
    const words = await questionOn(page);
    // Said is what stands there, for the ear: the probes by their colours.
    const probes = /R on the (.+?), B on the (.+?)[.]? *$/.exec(words.split('. ')[0] ?? '');
    await expect
      .poll(said)
      .toContain(`red probe on the ${probes?.[1]}, black probe on the ${probes?.[2]}`);
    if (words.includes('beep') && /braid wire/.test(words) && /base plate/.test(words)) {
      await page.getByText(/^Listening/).waitFor();
      for (const size of [
        { width: 320, height: 640 },
        { width: 390, height: 844 },
      ]) {
        await page.setViewportSize(size);
        await expect.poll(() => overflow(page)).toEqual([0, 0]);
      }
      await play(beep(0.8));
      heard.push(words);
    } else await answerOne(page, pickup, words);
    await page.locator(`[data-readings="${taken}"]`).waitFor({ state: 'detached' });
  }
  expect(heard).toHaveLength(1);
  await onScreen(page, 'sort-result');
  await expect.poll(said).toMatch(/Braid wire: the base plate\./);
  await expect.poll(said).toMatch(/White lead: plus end, screw coil\./);
  expect(complaints).toEqual([]);
});

test('each line of a closing check is said with what passes, and what came of the last one', async ({
  app,
  page,
  complaints,
}) => {
  const said = await withVoice(page);
  await speakFromNowOn(page, app.address);
  await page.goto(`${app.address}#/`);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Said', open: true });
  const { id, circuit } = await storedJob(page);
  await page.goto(`${app.address}#/job/${id}/closing`);
  await begin(page, /back open/);
  await button(page, 'Begin').click();
  await onScreen(page, 'closing-asking');
  await expect.poll(said).toMatch(/red probe on .+, black probe on .+ Passes: [^|]*ohm\./);
  // No line of a list is answered by a beep: the microphone stays shut.
  expect(await page.locator('.by-ear').count()).toBe(0);

  const item = nextItem(await standing(page), null);
  const seen = item && simulate(circuit, [], 'said').answer(item.ask);
  if (seen?.kind !== 'ohms') throw new Error('The first line is no figure.');
  await type(page, figureOf(seen.ohms));
  await expect.poll(said).toMatch(/ohm: as it should be\. .*Passes:/);
  await type(page, 'OL');
  await expect.poll(said).toMatch(/open does not fit/i);
  expect(await said()).not.toMatch(/Ω|\bOL\b|·/);
  expect(complaints).toEqual([]);
});
