import type { Page } from '@playwright/test';
import { assess } from '../../src/diagnosis/assess.ts';
import { evidenceOf } from '../../src/flows/index.ts';
import type { Job } from '../../src/notebook/job.ts';
import type { Ask, Seen } from '../../src/readings/reading.ts';
import type { SimulatedGuitar } from '../simulated/index.ts';
import { button, keysOf, onScreen } from './hunting.ts';

/** The newest job, as the browser's database holds it once no screen is being answered: nothing is asked of the app. */
export async function storedJob(page: Page): Promise<Job> {
  await page
    .locator('[data-screen]:not([data-screen=waiting], [aria-busy=true])')
    .first()
    .waitFor();
  return page.evaluate(
    () =>
      new Promise<Job>((resolve, reject) => {
        const opening = indexedDB.open('lugwise');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction('jobs').objectStore('jobs').getAll();
          all.onerror = () => reject(all.error);
          all.onsuccess = () => {
            opening.result.close();
            const jobs = all.result as Job[];
            const newest = jobs.sort((a, b) => a.changedAt.localeCompare(b.changedAt)).at(-1);
            if (newest) resolve(newest);
            else reject(new Error('No job is stored.'));
          };
        };
      }),
  );
}

/** Goes on from whatever is asked until another screen comes, with a guitar that a circuit simulator plays. */
export async function playUntilAnswered(
  page: Page,
  guitar: SimulatedGuitar,
  most = 20,
  onScreenOf: (screen: string) => Promise<void> = async () => undefined,
): Promise<string> {
  for (let taken = 0; taken < most; ) {
    const screen = await onScreen(page, 'asking', 'opening', 'changed', 'verdict', 'nothing-left');
    if (screen === 'verdict' || screen === 'nothing-left') return screen;
    await onScreenOf(screen);
    if (screen === 'changed') await button(page, 'Go on').click();
    if (screen === 'opening') await button(page, 'It is open').click();
    if (screen === 'asking') {
      await answer(page, guitar.answer(await askOn(page)));
      taken += 1;
    }
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  throw new Error(`No verdict after ${most} readings.`);
}

/** What is asked now follows from what is stored. */
export async function askOn(page: Page, { byEar = false } = {}): Promise<Ask> {
  const { next } = assess({ ...evidenceOf(await storedJob(page)), byEar });
  if (!next[0]) throw new Error('The screen asks, and the engine does not.');
  return next[0].ask;
}

/** Enters what was seen, as a person does. */
export async function answer(page: Page, seen: Seen): Promise<void> {
  const keys = keysFor(seen);
  for (const key of keys) await button(page, key).click();
  const isFigure = seen.kind === 'ohms' || (seen.kind === 'turn' && seen.peak !== undefined);
  if (isFigure && (await isDoubted(page))) await button(page, asTyped).click();
}

/** What a figure is answered with that the app doubts. */
export const asTyped = /as I typed it/;

/** The keys that enter what was seen, one after the other. */
export function keysFor(seen: Seen): readonly (string | RegExp)[] {
  switch (seen.kind) {
    case 'ohms':
      return keysOf(figureOf(seen.ohms));
    case 'turn': {
      const how = new RegExp(`^${seen.how}`, 'i');
      return [how, ...(seen.peak === undefined ? ['Not noted'] : keysOf(figureOf(seen.peak)))];
    }
    case 'farads': {
      if (seen.farads === 'open') return ['Shows nothing'];
      if (seen.farads === 'short') return ['Shows a short'];
      const signs = [...String(Number((seen.farads * 1e9).toPrecision(3)))];
      const digits = signs.map((sign) => (sign === '.' ? 'decimal point' : sign));
      return [...digits, 'n, nanofarad', 'Enter'];
    }
    default:
      return [wordOf(seen)];
  }
}

const isDoubted = async (page: Page): Promise<boolean> => {
  const after = page.locator(
    ['doubtful', 'changed', 'waiting', 'storage-failed']
      .map((name) => `[data-screen=${name}]`)
      .join(),
  );
  await after.first().waitFor();
  return (await page.locator('[data-screen=doubtful]').count()) > 0;
};

export function wordOf(seen: Exclude<Seen, { kind: 'ohms' | 'turn' }>): RegExp {
  switch (seen.kind) {
    case 'beep':
      return seen.beeps ? /^Beeps/ : /^Silent/;
    case 'flex':
    case 'look':
      return new RegExp(`^${seen.how}`, 'i');
    case 'tap':
      return { minus: /minus$/, nothing: /nothing$/, plus: /plus$/ }[seen.swing];
    case 'touch':
      return { down: /^Softer/, same: /^The same/, up: /^Louder/ }[seen.hum];
    case 'pole':
      return { north: /^North/, south: /^South/, none: /^No pull/ }[seen.pole];
    case 'listen':
      return new RegExp(`^${seen.heard}`, 'i');
    case 'hum':
      throw new Error('Hum is measured, not typed.');
    case 'farads':
      throw new Error('A capacitance is not typed here.');
  }
}

/** Four figures with the unit that a display shows. */
export function figureOf(ohms: number | 'open'): string {
  if (ohms === 'open') return 'OL';
  const step = ohms >= 1e6 ? { size: 1e6, unit: 'M' } : { size: 1e3, unit: 'k' };
  // With its decimal, because a lone 1 can mean open.
  if (ohms < 1000) return ohms.toFixed(1);
  return `${Number((ohms / step.size).toPrecision(4))}${step.unit}`;
}
