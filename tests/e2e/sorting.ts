import type { Page } from '@playwright/test';
import { answerOf, type IdealPickup } from '../../src/sorter/ideal.fixture.ts';
import { button, onScreen, type } from './hunting.ts';

/** Steps of sorting a pickup's leads as a person takes them, by what they see on the screen. */

/** From the first screen to the first question. */
export async function tellPickup(page: Page, on: IdealPickup): Promise<void> {
  await page.getByRole('link', { name: /which lead does what/i }).click();
  await onScreen(page, 'sort-telling');
  await describePickup(page, on);
  await onScreen(page, 'sort-cautions');
  await button(page, 'It lies free on the mat').click();
  await onScreen(page, 'sort-asking');
}

/** What is seen of the pickup, and Start. */
export async function describePickup(page: Page, on: IdealPickup): Promise<void> {
  await page.getByLabel(`${on.seen.leads.length}`, { exact: true }).check();
  for (const [at, { colour, mark, what }] of on.seen.leads.entries()) {
    await page.getByLabel(`Colour of lead ${at + 1}`).fill(colour);
    if (mark) await page.getByLabel(`Mark of lead ${at + 1}`).selectOption(mark);
    await page.getByLabel(`Lead ${at + 1} is`).selectOption(what);
  }
  await button(page, 'Start').click();
}

/** From the first screen to the last reading, answered as this pickup would. `seen` is called before each answer. */
export async function sortLeads(
  page: Page,
  on: IdealPickup,
  seen: (words: string, at: number) => Promise<void> = async () => {},
): Promise<void> {
  await tellPickup(page, on);
  await answerAll(page, on, seen);
}

export async function answerAll(
  page: Page,
  on: IdealPickup,
  seen: (words: string, at: number) => Promise<void> = async () => {},
): Promise<void> {
  for (let readings = 0; readings < 25; readings += 1) {
    if ((await onScreen(page, 'sort-asking', 'sort-result')) === 'sort-result') return;
    const words = await questionOn(page);
    await seen(words, readings);
    const before = await page.locator('[data-readings]').getAttribute('data-readings');
    await answerOne(page, on, words);
    // The same may be asked again: what counts is that the answer was taken.
    await page.waitForFunction(
      (taken) => {
        const screen = document.querySelector('[data-screen]');
        return (
          screen?.getAttribute('data-screen') === 'sort-result' ||
          (screen?.getAttribute('data-readings') ?? taken) !== taken
        );
      },
      before,
      { timeout: 40_000 },
    );
  }
  throw new Error('the sorter does not come to an end');
}

export const questionOn = async (page: Page): Promise<string> =>
  (await page.getByRole('heading', { level: 1 }).textContent()) ?? '';

export async function answerOne(page: Page, on: IdealPickup, words: string): Promise<void> {
  const found = /R on the (.+?), B on the (.+?)(?:[.] |[.]?$)/.exec(words.replaceAll(/\s+/g, ' '));
  if (!found) throw new Error(`no probes in "${words}"`);
  const point = (name: string) => {
    const [metal] = /^(base plate|cover)$/.exec(name) ?? [];
    if (metal) return metal === 'cover' ? 'cover.metal' : 'plate.metal';
    const told = on.seen.leads.find(({ colour }) => name.split(' ').includes(colour));
    if (!told) throw new Error(`no lead is called "${name}"`);
    return `${told.id}End.joint`;
  };
  const common = {
    red: point(found[1] as string),
    black: point(found[2] as string),
    setting: { positions: {}, knobs: {}, plug: 'out', lifted: [] },
  } as const;
  const seen = words.includes('millivolts')
    ? answerOf(on, { kind: 'tap', coil: words.includes('slug coil') ? 'b' : 'a', ...common })
    : answerOf(on, { kind: words.includes('beep') ? 'beep' : 'ohms', ...common });
  if (seen.kind === 'tap')
    await button(page, { plus: /plus/, nothing: /nothing/, minus: /minus/ }[seen.swing]).click();
  else if (seen.kind === 'beep') await button(page, seen.beeps ? 'Beeps' : 'Silent').click();
  else if (seen.kind === 'ohms')
    await type(
      page,
      seen.ohms === 'open' ? 'OL' : seen.ohms < 1000 ? '0.3' : `${(seen.ohms / 1000).toFixed(2)}k`,
    );
}
