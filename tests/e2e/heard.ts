import type { Page } from '@playwright/test';

/** A node of the browser's accessibility tree, as a screen reader is given it. */
interface Told {
  readonly role: string;
  readonly name: string;
  readonly focused: boolean;
  readonly level?: number;
}

interface AxValue {
  readonly value?: unknown;
}
interface AxNode {
  readonly ignored: boolean;
  readonly role?: AxValue;
  readonly name?: AxValue;
  readonly properties?: readonly { readonly name: string; readonly value: AxValue }[];
}

/** All that a screen reader is told of the page, in order. */
export async function told(page: Page): Promise<readonly Told[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = (await session.send('Accessibility.getFullAXTree')) as unknown as {
    nodes: readonly AxNode[];
  };
  await session.detach();
  return nodes
    .filter(({ ignored }) => !ignored)
    .map(({ role, name, properties = [] }) => {
      const property = (wanted: string) =>
        properties.find((one) => one.name === wanted)?.value.value;
      const level = property('level');
      return {
        role: String(role?.value ?? ''),
        name: String(name?.value ?? '').trim(),
        focused: property('focused') === true,
        ...(typeof level === 'number' && { level }),
      };
    });
}

const acted = new Set(['button', 'link', 'textbox', 'checkbox', 'radio', 'combobox', 'slider']);

/** What a screen reader's user would miss on this screen. */
export function missing(nodes: readonly Told[]): readonly string[] {
  const titles = nodes.filter(({ role, level }) => role === 'heading' && level === 1);
  const mains = nodes.filter(({ role }) => role === 'main');
  return [
    ...(titles.length === 1 && titles[0]?.name ? [] : [`${titles.length} titles`]),
    ...(mains.length === 1 ? [] : [`${mains.length} main parts`]),
    ...nodes
      .filter(({ role, name }) => (acted.has(role) || role === 'image' || role === 'img') && !name)
      .map(({ role }) => `a ${role} without a name`),
    ...nodes
      .filter(({ name }) => /undefined|NaN|\[object/.test(name))
      .map(({ name }) => `broken words: ${name}`),
  ];
}

/** Goes to what has this name by the Tab key alone and presses Enter; throws where the way does not lead there. */
export async function pressByKeyboard(page: Page, name: RegExp, most = 60): Promise<void> {
  const passed: string[] = [];
  for (let step = 0; step < most; step++) {
    await page.keyboard.press('Tab');
    const here = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const style = getComputedStyle(element);
      return {
        name: (element.getAttribute('aria-label') ?? element.textContent ?? '').trim(),
        ring: style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2,
        field: element instanceof HTMLInputElement,
      };
    });
    if (!here) continue;
    passed.push(here.name);
    if (!here.ring && !here.field) throw new Error(`"${here.name}" has the focus and no ring.`);
    if (name.test(here.name)) return page.keyboard.press('Enter');
  }
  throw new Error(`The Tab key does not lead to ${name}; it passed ${passed.join(' | ')}.`);
}
