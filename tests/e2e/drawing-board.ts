import type { Locator, Page } from '@playwright/test';
import { button, onScreen } from './hunting.ts';
import { expect } from './served-app.ts';

/** Where something stands once it moves no more, as a finger waits for a panel to close. */
export async function boxAtRest(target: Locator) {
  let before = await target.boundingBox();
  await expect(async () => {
    await target.page().waitForTimeout(50);
    const now = await target.boundingBox();
    const moved = JSON.stringify(now) !== JSON.stringify(before);
    before = now;
    expect(moved).toBe(false);
  }).toPass();
  return before;
}

/** A wiring as a finger draws it: what is touched is counted. */
export class DrawingBoard {
  readonly page: Page;
  taps = 0;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(target: Locator): Promise<void> {
    await target.tap();
    this.taps += 1;
  }

  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name, exact: typeof name === 'string' }).first();
  }

  /** Places a part from the tray; what is not chosen is as it comes. */
  async add(part: string, chosen: Readonly<Record<string, string>> = {}): Promise<void> {
    await this.tap(this.button('Add'));
    await this.tap(this.page.locator('.tray button', { hasText: new RegExp(`^${part}`) }));
    for (const [label, option] of Object.entries(chosen)) {
      await this.page.getByLabel(label).selectOption({ label: option });
      this.taps += 2;
    }
    const place = this.button('Place it');
    // A part with nothing to decide is placed at once.
    await expect(this.page.locator('.tray')).toHaveCount(0);
    if (await place.isVisible()) await this.tap(place);
    await expect(this.page.locator('.panel')).toHaveCount(0);
  }

  /** The middle of something on the drawing, by the words a screen reader says, once what was done last is drawn: that may move it. */
  async touch(words: string): Promise<void> {
    await expect(this.page.locator('.board-sheet')).toHaveAttribute('aria-busy', 'false');
    const target = this.page.locator(`.whole-target[aria-label="${words}"]`).first();
    await boxAtRest(target);
    await this.tap(target);
  }

  /** Opens a part by its words: its middle is where its own lugs are far from. */
  async touchPart(title: string): Promise<void> {
    await this.page.locator(`.whole-target[aria-label="${title}"]`).first().press('Enter');
    await expect(this.page.locator('.panel h2')).toHaveText(new RegExp(`^${title}$`, 'i'));
    this.taps += 1;
  }

  /** Runs a lead: two touches. */
  async lead(from: string, to: string): Promise<void> {
    await this.touch(from);
    await expect(this.page.locator('.doing')).toContainText(`From ${from}`);
    await this.touch(to);
    await expect(this.page.locator('.announcer')).toHaveText(`Joined: ${from} to ${to}.`);
  }
}

/** A wiring from the list on the drawing board. */
export async function draw(page: Page, address: string, wiring: RegExp): Promise<DrawingBoard> {
  await page.goto(address);
  await page.getByRole('link', { name: /something is wrong/i }).click();
  await page.getByLabel(wiring).check();
  await button(page, 'Change the drawing').click();
  await onScreen(page, 'editor');
  return new DrawingBoard(page);
}
