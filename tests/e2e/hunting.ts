import { expect, type Page } from '@playwright/test';

/** Steps of a hunt as a person takes them, by what they see on the screen. */
export const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).first();

/** From the first screen to the cautions read: the wiring is chosen by its words, nothing was heard. */
export async function startHunt(
  page: Page,
  { wiring, title, open = false }: { wiring: RegExp; title: string; open?: boolean },
): Promise<void> {
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByLabel(wiring).check();
  await page.getByLabel('Your name for the guitar').fill(title);
  if (open) await page.getByLabel('It is open already').check();
  await button(page, 'Start').click();
  await page.locator('[data-screen=symptom]').waitFor();
}

export async function readCautions(page: Page): Promise<void> {
  await button(page, 'The guitar is unplugged').click();
  await onScreen(page, 'asking', 'opening', 'verdict');
}

/** Waits for one of these screens and tells which it is. */
export async function onScreen(page: Page, ...names: string[]): Promise<string> {
  // One that was answered stands until the next one is drawn, and takes nothing more.
  const screen = page.locator(
    names.map((name) => `[data-screen=${name}]:not([aria-busy=true])`).join(','),
  );
  await screen.first().waitFor({ timeout: 40_000 });
  return (await screen.first().getAttribute('data-screen')) ?? '';
}

/** Chooses what is heard in one place, under a heading that is unfolded first where it is named. */
export async function hear(
  page: Page,
  place: string,
  word: string,
  heading?: string,
): Promise<void> {
  if (heading !== undefined) {
    const fold = page.locator('.places-head', { hasText: heading });
    if ((await fold.getAttribute('aria-expanded')) !== 'true') await fold.click();
  }
  const head = page.locator('.place-head', { hasText: new RegExp(`^${place}`, 'i') });
  if ((await head.getAttribute('aria-expanded')) !== 'true') await head.click();
  await page
    .locator('.place', { has: head })
    .locator('.chip', { hasText: new RegExp(`^${word}`) })
    .click();
  // The next row unfolds with it: a head that is touched before it stands so would fold away again.
  await expect(head.locator('.place-seen')).toHaveText(word, { ignoreCase: true });
}

/** The keys that enter a figure as on a display, "430k" or "OL". */
export function keysOf(figure: string): readonly string[] {
  const names: Record<string, string> = {
    k: 'k, thousands of ohms',
    M: 'M, millions of ohms',
    '.': 'decimal point',
  };
  const keys = figure === 'OL' ? ['OL, no number'] : [...figure].map((sign) => names[sign] ?? sign);
  return [...keys, 'Enter'];
}

/** Types a figure as on a display, "430k" or "OL", and enters it. */
export async function type(page: Page, figure: string): Promise<void> {
  for (const key of keysOf(figure)) await button(page, key).click();
}

/** Enters a reading at the jack that was not asked for. */
export async function enterAtJack(page: Page, position: string, figure: string): Promise<void> {
  await button(page, 'My own reading').click();
  await onScreen(page, 'own-reading');
  await page.getByLabel(position, { exact: true }).check();
  await button(page, 'Enter it').click();
  await onScreen(page, 'asking');
  await type(page, figure);
  await onScreen(page, 'changed');
}

/** How far the page scrolls, down and across, in CSS pixels. */
export const overflow = (page: Page): Promise<readonly [number, number]> =>
  page.evaluate(() => {
    const { scrollHeight, scrollWidth, clientHeight, clientWidth } = document.documentElement;
    return [scrollHeight - clientHeight, scrollWidth - clientWidth] as const;
  });

/** Has the text of a file looked at, as on the screen that brings jobs in. */
export async function lookAtFile(page: Page, address: string, text: string): Promise<void> {
  await page.goto(`${address}#/import`);
  await page.getByLabel('Or paste its text').fill(text);
  await button(page, 'Look at the text').click();
}

/** Puts what is in a file on the phone, and waits until it is there. */
export async function bringIn(page: Page, address: string, text: string): Promise<void> {
  await lookAtFile(page, address, text);
  await onScreen(page, 'import-preview');
  await button(page, 'Bring it in').click();
  await page.locator('[data-screen=import-preview]').waitFor({ state: 'detached' });
}
