import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { parseAst } from 'vite';
import type { Seen } from '../../src/readings/reading.ts';
import { answerOf, type IdealPickup } from '../../src/sorter/ideal.fixture.ts';
import { dutch } from '../../src/words/nl/index.ts';
import { button, onScreen } from './hunting.ts';
import { figureOf } from './player.ts';

/** Steps of a person who reads Dutch, and the words on a screen that Dutch does not have. */

const { entry } = dutch;

/** Types a figure as a Dutch display has it, "7,85k", and enters it. */
export async function typeDutch(page: Page, figure: string): Promise<void> {
  if (figure === 'OL') await button(page, entry.olNoNumber).click();
  else
    for (const key of figure)
      await page.locator('.key', { hasText: new RegExp(`^${key}$`) }).click();
  await button(page, entry.enter).click();
}

/** Enters what was seen by the keys of the Dutch screen. */
export async function answerDutch(page: Page, seen: Seen): Promise<void> {
  if (seen.kind === 'ohms') return typeDutch(page, figureOf(seen.ohms).replace('.', ','));
  if (seen.kind !== 'turn') return largeKey(page, wordOf(seen));
  await largeKey(page, entry[seen.how]);
  if (seen.peak === undefined) return button(page, entry.notNoted).click();
  return typeDutch(page, figureOf(seen.peak).replace('.', ','));
}

const largeKey = (page: Page, says: string) =>
  page
    .locator('button.large', { has: page.locator('.says', { hasText: new RegExp(`^${says}$`) }) })
    .click();

function wordOf(seen: Exclude<Seen, { kind: 'ohms' | 'turn' }>): string {
  switch (seen.kind) {
    case 'beep':
      return seen.beeps ? entry.beeps : entry.silent;
    case 'flex':
    case 'look':
      return entry[seen.how];
    case 'tap':
      return { minus: '−', nothing: '0', plus: '[+]' }[seen.swing];
    case 'touch':
      return { down: entry.softer, same: entry.theSame, up: entry.louder }[seen.hum];
    case 'pole':
      return { north: entry.north, south: entry.south, none: entry.noPull }[seen.pole];
    case 'listen':
      return seen.heard === 'crackle' ? entry.crackles : entry[seen.heard];
    case 'farads':
    case 'hum':
      throw new Error(`No key answers ${seen.kind}.`);
  }
}

/** Sorts a pickup's leads from the first question to the result; `seen` is called on every screen of it. */
export async function sortDutch(
  page: Page,
  on: IdealPickup,
  seen: () => Promise<void>,
): Promise<void> {
  for (let taken = 0; taken < 25; taken += 1) {
    if ((await onScreen(page, 'sort-asking', 'sort-result')) === 'sort-result') return;
    await seen();
    const heading = page.getByRole('heading', { level: 1 });
    const asked = ((await heading.textContent()) ?? '').replaceAll(/\s+/g, ' ');
    const kind = await page.locator('[data-kind]').getAttribute('data-kind');
    const found = dutch.common.probes.exec(asked);
    const point = (words = '') => {
      if (words.includes('bodemplaat')) return 'plate.metal';
      const lead = on.seen.leads.find(({ colour }) => words.includes(colour));
      if (!lead) throw new Error(`No lead is called "${words}".`);
      return `${lead.id}End.joint`;
    };
    const probes = {
      red: point(found?.[2]),
      black: point(found?.[3]),
      setting: { positions: {}, knobs: {}, plug: 'out', lifted: [] },
    } as const;
    await answerDutch(
      page,
      answerOf(
        on,
        kind === 'tap'
          ? { kind, coil: asked.includes('stiftspoel') ? 'b' : 'a', ...probes }
          : { kind: kind === 'beep' ? 'beep' : 'ohms', ...probes },
      ),
    );
    await page.locator(`[data-readings="${taken}"]`).waitFor({ state: 'detached' });
  }
  throw new Error('The sorter does not come to an end.');
}

const words = (text: string): readonly string[] => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

interface Node {
  readonly type: string;
  readonly [key: string]: unknown;
}

/** The texts in a piece of a catalogue: not its keys, nor the English that it looks for. */
function texts(at: unknown): readonly string[] {
  if (Array.isArray(at)) return at.flatMap(texts);
  if (typeof at !== 'object' || at === null || !('type' in at)) return [];
  const node = at as Node;
  if (node.type === 'Literal') return typeof node['value'] === 'string' ? [node['value']] : [];
  if (node.type === 'TemplateElement') return [(node['value'] as { cooked: string }).cooked];
  if (node.type === 'Property') return texts(node['value']);
  if (node.type === 'BinaryExpression' && node['operator'] !== '+') return [];
  if (/^TS|^Import/.test(node.type)) return texts(node['expression']);
  return Object.values(node).flatMap(texts);
}

/** Every word that the Dutch catalogue can say. */
export function dutchWords(): ReadonlySet<string> {
  const folder = new URL('../../src/words/nl/', import.meta.url);
  const files = readdirSync(folder).map((file) => readFileSync(new URL(file, folder), 'utf8'));
  return new Set(files.flatMap((file) => texts(parseAst(file, { lang: 'ts' })).flatMap(words)));
}

/** Units, letters of meters and lugs, names: the same in every language. */
const everywhere = words('DC mV kΩ MΩ nF pF µF OL kHz Hz dB ohm Lugwise English Nederlands AC BC');

/** Words that the page shows or reads out and that neither Dutch nor the person (`own`) has. */
export async function foreignWords(
  page: Page,
  known: ReadonlySet<string>,
  own: readonly string[],
): Promise<readonly string[]> {
  const shown = await page.evaluate(() => {
    const said: string[] = [];
    const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = all.nextNode(); text; text = all.nextNode())
      if (text.parentElement?.closest('select') ?? text.parentElement?.checkVisibility())
        said.push(text.textContent ?? '');
    for (const element of document.querySelectorAll('*'))
      if (element.checkVisibility() || element instanceof HTMLOptionElement)
        for (const name of ['aria-label', 'aria-description', 'alt', 'title', 'placeholder'])
          said.push(element.getAttribute(name) ?? '');
    return said;
  });
  const simple = new Set([...known, ...everywhere, ...own.flatMap(words)]);
  // Dutch writes words together: "halstoon".
  const fine = {
    has: (word: string) =>
      simple.has(word) ||
      [...word.slice(6)].some(
        (_, at) => simple.has(word.slice(0, at + 3)) && simple.has(word.slice(at + 3)),
      ),
  };
  // A meter's display has a point in every language.
  return shown.flatMap((text) =>
    [...words(text.replaceAll('\u00ad', '')), ...(/\d[.]\d+(?!\d*[.])/.exec(text) ?? [])]
      .filter((word) => !fine.has(word) && !/^(7[.]42|0[.]00)$/.test(word))
      .map((word) => `${word} in “${text.trim().slice(0, 90)}”`),
  );
}
