import type { Page } from 'playwright';
import { button, onScreen, readCautions, startHunt } from '../e2e/hunting.ts';
import { answer, askOn, storedJob } from '../e2e/player.ts';
import { simulate } from '../simulated/index.ts';
import { stepsInNode } from './made/hunt-in-node.ts';
import { percentile, rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

/** Between a prompt and the entry: probes are set and a display is read in no less. Milliseconds. */
const HANDS = 4000;

interface Waits {
  /** From an entry to what it changed, and from there to the next prompt. */
  readonly steps: readonly number[];
  /** From the cautions read to the first prompt of a wiring never seen. */
  readonly first: number;
  /** From the question to the engine's answer as the page gets it, after each entry. */
  readonly answers: readonly number[];
}

/**
 * From an entry to what comes next: in Node the engine alone, by processor time; in the built app at a quarter of this machine's speed as
 * the page itself sees it, by the clock, with the longest task on the main thread in the whole hunt. Two hunts: one by hands that need
 * their time for the probes, one that enters without any pause.
 */
export async function run() {
  const inNode = stepsInNode();
  const byHand = await hunt(HANDS);
  const hurried = await hunt(0);
  const times = inNode.map(({ ms }) => ms);
  return {
    stepMsP50: rounded(percentile(times, 0.5)),
    stepMsP95: rounded(percentile(times, 0.95)),
    stepAt4xMsP50: rounded(percentile(byHand.steps, 0.5)),
    stepAt4xMsP95: rounded(percentile(byHand.steps, 0.95)),
    hurriedStepAt4xMsP95: rounded(percentile(hurried.steps, 0.95)),
    firstPromptAt4xMs: rounded(byHand.first),
    foreseenShare: rounded(inNode.filter(({ foreseen }) => foreseen).length / inNode.length),
    longestTaskMs: rounded(Math.max(0, ...byHand.tasks)),
    step: {
      stepsInNode: inNode.length,
      throttle: THROTTLE,
      handsMs: HANDS,
      readings: byHand.answers.length,
      answerMs: byHand.answers.map((ms) => rounded(ms)),
      stepMs: byHand.steps.map((ms) => rounded(ms)),
      hurriedStepMs: hurried.steps.map((ms) => rounded(ms)),
      tasksAbove50: byHand.tasks.length,
      tasksMs: byHand.tasks.map((ms) => rounded(ms)),
    },
  };
}

async function hunt(hands: number): Promise<Waits & { readonly tasks: readonly number[] }> {
  const { page, slowDown, longTasks, close } = await slowPhone(watchWorker);
  await watchPrompts(page);
  await slowDown();
  await startHunt(page, {
    wiring: /two humbuckers, 3-position toggle, two volumes/i,
    title: 'Step',
  });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [{ op: 'open', site: 'bridgeSlug:winding' }], 'step');
  let readings = 0;
  for (; readings < 12; ) {
    const screen = await onScreen(page, 'asking', 'opening', 'changed', 'verdict', 'nothing-left');
    if (screen === 'verdict' || screen === 'nothing-left') break;
    if (screen === 'changed') await button(page, 'Go on').click();
    if (screen === 'opening') await button(page, 'It is open').click();
    if (screen === 'asking') {
      const ask = await askOn(page);
      await page.waitForTimeout(hands);
      await answer(page, guitar.answer(ask));
      readings += 1;
    }
    await page.locator(`[data-screen=${screen}]`).waitFor({ state: 'detached' });
  }
  const tasks = await longTasks();
  const waits = await page.evaluate(() => (window as unknown as { waits: Waits }).waits);
  await close();
  return { ...waits, tasks };
}

/** Notes when the engine was asked and when it answered; runs in the page before anything else. */
function watchWorker(): void {
  const waits = { steps: [] as number[], first: 0, answers: [] as number[] };
  Object.assign(window, { waits, entered: 0 });
  const asked = new Map<number, number>();
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (this: Worker, message: { id: number; call: string }) {
    if (asked.size === 0)
      this.addEventListener('message', ({ data }: MessageEvent<{ id: number }>) => {
        const at = asked.get(data.id);
        if (at && (window as unknown as { entered: number }).entered > 0)
          waits.answers.push(performance.now() - at);
      });
    if (message.call === 'stand') asked.set(message.id, performance.now());
    else asked.set(-1, 0);
    post.call(this, message);
  } as typeof post;
}

/** Notes the time from a key to the title that takes the focus next. */
const watchPrompts = (page: Page) =>
  page.evaluate(() => {
    const seen = window as unknown as {
      waits: { steps: number[]; first: number };
      entered: number;
    };
    let pressed = { at: 0, what: '' };
    addEventListener(
      'click',
      ({ target }) => {
        const key = (target as Element).closest('.key-enter, .choices .large, .acts .main');
        const from = key?.closest<HTMLElement>('[data-screen]')?.dataset['screen'] ?? '';
        if (!key) return;
        pressed = { at: performance.now(), what: from };
        seen.entered = from === 'asking' ? pressed.at : 0;
      },
      true,
    );
    // The next prompt is there once another title has the focus.
    addEventListener('focusin', ({ target }) => {
      if ((target as Element).tagName !== 'H1' || pressed.at === 0) return;
      if (document.querySelector('[data-screen=waiting]')) return;
      const wait = performance.now() - pressed.at;
      if (pressed.what === 'cautions') seen.waits.first = wait;
      else if (['asking', 'changed'].includes(pressed.what)) seen.waits.steps.push(wait);
      pressed = { at: 0, what: '' };
      seen.entered = 0;
    });
  });
