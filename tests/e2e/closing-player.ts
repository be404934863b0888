import type { Page } from '@playwright/test';
import { closingOf } from '../../src/closing/check.ts';
import type { Closing, ClosingItem } from '../../src/closing/closing.ts';
import { nextItem, repeatsOf } from '../../src/flows/closing-conversation.ts';
import { checkEvidence, checkUnderWay, type DoneCheck } from '../../src/flows/index.ts';
import { exportJob } from '../../src/notebook/exchange.ts';
import type { Job } from '../../src/notebook/job.ts';
import type { Ask } from '../../src/readings/reading.ts';
import type { SimulatedGuitar } from '../simulated/index.ts';
import { bringIn, button, onScreen, type } from './hunting.ts';
import { figureOf, storedJob, wordOf } from './player.ts';
import { expect } from './served-app.ts';

/** Puts a job on the phone as a file and opens its closing check. */
export async function openCheck(page: Page, address: string, job: Job): Promise<void> {
  await bringIn(page, address, exportJob(job));
  await onScreen(page, 'symptom', 'cautions', 'asking', 'opening', 'verdict');
  await page.goto(`${address}#/job/${job.id}/closing`);
}

export async function begin(page: Page, stage: RegExp): Promise<void> {
  await onScreen(page, 'closing-start');
  await button(page, stage).click();
  if ((await onScreen(page, 'cautions', 'closing-list')) === 'cautions')
    await button(page, 'The guitar is unplugged').click();
  await onScreen(page, 'closing-list');
}

/** How the check stands follows from what is stored: nothing is asked of the app. */
export async function standing(page: Page): Promise<Closing> {
  const job = await storedJob(page);
  return closingOf(checkEvidence(job, checkUnderWay(job) as DoneCheck));
}

/** What is asked now: after the answer given last, or from the head of a list just opened, whatever a hunt has read last. */
async function asked(page: Page, fromList: boolean): Promise<ClosingItem> {
  const [closing, job] = [await standing(page), await storedJob(page)];
  const last = JSON.stringify(job.readings.at(-1)?.ask);
  const after = closing.items.find(({ ask }) => JSON.stringify(ask) === last);
  const item = nextItem(closing, (!fromList && after) || null);
  if (!item) throw new Error('The screen asks, and nothing is left of the list.');
  return item;
}

/** Answers the whole list with a guitar that a circuit simulator plays, to where it has passed or failed. */
export async function playList(
  page: Page,
  guitar: SimulatedGuitar,
  most = 200,
  onScreenOf: (taken: number) => Promise<void> = async () => undefined,
): Promise<'closing-passed' | 'closing-failed'> {
  for (let taken = 0; taken < most; ) {
    const screen = await onScreen(page, ...LIST_SCREENS);
    if (screen === 'closing-passed' || screen === 'closing-failed') return screen;
    if ((await listStep(page, guitar, screen, () => onScreenOf(taken))) === 'answered') taken += 1;
  }
  throw new Error(`Not through after ${most} readings.`);
}

/** Where a list that is under way can stand. */
export const LIST_SCREENS = [
  'closing-list',
  'closing-asking',
  'closing-halfway',
  'closing-passed',
  'closing-failed',
] as const;

/** One step of a list that is neither passed nor failed: on past where one may stop, or one answer. */
export async function listStep(
  page: Page,
  guitar: SimulatedGuitar,
  screen: string,
  onAsking: () => Promise<void> = async () => undefined,
): Promise<'answered' | 'went on'> {
  if (screen === 'closing-halfway') {
    await button(page, 'Go on').click();
    await onScreen(page, 'closing-asking');
    return 'went on';
  }
  if (screen === 'closing-list') {
    await button(page, /^(Begin|Go on)$/).click();
    if ((await onScreen(page, 'closing-asking', 'closing-halfway')) === 'closing-halfway')
      return 'went on';
  }
  await onAsking();
  await answerOne(page, guitar, await asked(page, screen === 'closing-list'));
  return 'answered';
}

/** Begins with the first line of one kind of reading. */
export async function answerFirst(
  page: Page,
  guitar: SimulatedGuitar,
  kind: Ask['kind'],
): Promise<void> {
  const item = (await standing(page)).items.find(({ ask }) => ask.kind === kind);
  if (!item) throw new Error(`The list asks for no ${kind}.`);
  await button(page, new RegExp(`${kind} on`, 'i')).click();
  await onScreen(page, 'closing-asking');
  await answerOne(page, guitar, item);
}

/** One answer, and until it is stored and the next thing stands on the screen. */
async function answerOne(page: Page, guitar: SimulatedGuitar, item: ClosingItem): Promise<void> {
  const { ask } = item;
  const words = page.locator('.asking-words');
  if ('red' in ask) await words.locator('.probe-red').waitFor();
  const before = (await storedJob(page)).readings.length;
  // A movement is done as often as asked in one go: one jump in it, and that is the answer.
  let seen = guitar.answer(ask);
  for (let time = 1; time < repeatsOf(item, seen); time += 1) {
    const more = guitar.answer(ask);
    if (JSON.stringify({ ...more, peak: 0 }) === JSON.stringify({ ...seen, peak: 0 })) continue;
    seen = more;
    break;
  }
  if (seen.kind === 'ohms') await type(page, figureOf(seen.ohms));
  else if (seen.kind === 'turn') {
    await button(page, new RegExp(`^${seen.how}`, 'i')).click();
    if (seen.peak === undefined) await button(page, 'Not noted').click();
    else await type(page, figureOf(seen.peak));
  } else await button(page, wordOf(seen)).click();
  // What comes next, a question about the figure or another screen, stands once this one is gone.
  await page.locator(`[data-readings="${before}"]`).waitFor({ state: 'detached' });
  const doubtful = page.locator('[data-screen=doubtful]');
  if ((await doubtful.count()) > 0) {
    await button(page, /as I typed it/).click();
    await doubtful.waitFor({ state: 'detached' });
  }
  const readings = async () => (await storedJob(page)).readings;
  await expect.poll(async () => (await readings()).length).toBeGreaterThan(before);
  const stored = (await readings()).at(-1);
  if (JSON.stringify(stored?.ask) !== JSON.stringify(ask))
    throw new Error(
      `Asked ${JSON.stringify(stored?.ask)} on the screen, ${JSON.stringify(ask)} by the list.`,
    );
}
