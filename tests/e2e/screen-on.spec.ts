import type { Page } from '@playwright/test';
import { type IdealPickup, lead } from '../../src/sorter/ideal.fixture.ts';
import { begin } from './closing-player.ts';
import { button, onScreen, readCautions, startHunt, type } from './hunting.ts';
import { storedJob } from './player.ts';
import { expect, test } from './served-app.ts';
import { tellPickup } from './sorting.ts';

test.use({ actionTimeout: 20_000 });

/** Puts a screen that can be kept on in the place of the browser's, and tells how often it is kept on now. */
async function screenLocks(page: Page) {
  await page.addInitScript(() => {
    const held = new Set<EventTarget>();
    class Sentinel extends EventTarget {
      released = false;
      async release() {
        this.released = true;
        held.delete(this);
      }
    }
    let visible = true;
    Object.defineProperty(Document.prototype, 'visibilityState', {
      get: () => (visible ? 'visible' : 'hidden'),
    });
    Object.defineProperty(Navigator.prototype, 'wakeLock', {
      value: {
        request: async (what: string) => {
          if (what !== 'screen' || !visible) throw new DOMException('no', 'NotAllowedError');
          const taken = new Sentinel();
          held.add(taken);
          return taken;
        },
      },
    });
    Object.assign(window, {
      locks: () => held.size,
      // As the standard has it: a tab that is hidden loses its locks. W3C, Screen Wake Lock API, "Handling document loss of visibility".
      showTab: (shown: boolean) => {
        visible = shown;
        if (!shown) for (const one of held) void (one as Sentinel).release();
        document.dispatchEvent(new Event('visibilitychange'));
      },
    });
  });
  return {
    held: () => page.evaluate(() => (window as unknown as { locks(): number }).locks()),
    showTab: (shown: boolean) =>
      page.evaluate(
        (is) => (window as unknown as { showTab(shown: boolean): void }).showTab(is),
        shown,
      ),
  };
}

const pickup: IdealPickup = {
  seen: { coils: 2, leads: [lead('white'), lead('black')], plate: true, cover: false },
  nodes: { white: '1', black: '2', plate: 'p' },
  coils: { a: ['3', '1', 4000], b: ['2', '3', 4100] },
};

test('the screen stays on while a reading is asked for, in hunt, sorter and closing check, and only then', async ({
  app,
  page,
  complaints,
}) => {
  const { held, showTab } = await screenLocks(page);
  const keepsOn = (screens: number) => expect.poll(held).toBe(screens);
  await page.goto(app.address);
  await startHunt(page, { wiring: /^one humbucker/i, title: 'Kept on', open: true });
  await keepsOn(0);
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  await onScreen(page, 'asking');
  await keepsOn(1);

  // The phone takes it when the tab is hidden; it is asked for again when the tab is back, and once is enough.
  await showTab(false);
  await keepsOn(0);
  await showTab(true);
  await keepsOn(1);
  await showTab(true);
  await keepsOn(1);

  await button(page, 'OL? Help').click();
  await onScreen(page, 'help');
  await keepsOn(0);
  await button(page, 'Back to the reading').click();
  await keepsOn(1);
  await type(page, 'OL');
  await onScreen(page, 'changed');
  await keepsOn(0);
  // A tab that comes back where nothing is asked keeps nothing on.
  await showTab(false);
  await showTab(true);
  await keepsOn(0);

  const { id } = await storedJob(page);
  await page.goto(`${app.address}#/job/${id}/closing`);
  await begin(page, /back open/);
  await keepsOn(0);
  await button(page, /^(Begin|Go on)$/).click();
  await onScreen(page, 'closing-asking');
  await keepsOn(1);
  await button(page, 'List').click();
  await onScreen(page, 'closing-list');
  await keepsOn(0);

  await page.goto(`${app.address}#/`);
  await tellPickup(page, pickup);
  await keepsOn(1);
  await page.goto(`${app.address}#/`);
  await onScreen(page, 'home');
  await keepsOn(0);
  expect(complaints).toEqual([]);
});
