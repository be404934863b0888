import type { Locator, Page } from 'playwright';
import type { Edit } from '../../src/circuit/edit.ts';
import { ohms } from '../../src/circuit/units.ts';
import { button, onScreen, readCautions, startHunt } from '../e2e/hunting.ts';
import { askOn, asTyped, keysFor, storedJob } from '../e2e/player.ts';
import { simulate } from '../simulated/index.ts';
import { stepsInNode } from './made/hunt-in-node.ts';
import { percentile, rounded } from './made/percentile.ts';
import { slowPhone, THROTTLE } from './made/slow-phone.ts';

/** What a person's hands and eyes take at the least, milliseconds. */
interface Pace {
  /** From a prompt to the first key: probes are set and a display is read. */
  readonly probes: number;
  /** From one key to the next. */
  readonly key: number;
  /** To read what an entry changed. */
  readonly reading: number;
}
const BY_HAND: Pace = { probes: 4000, key: 250, reading: 1000 };
const HURRIED: Pace = { probes: 0, key: 0, reading: 0 };

/** Guitars that are hunted on, each with one fault: wirings by their words on the screen. */
const GUITARS: readonly { readonly wiring: RegExp; readonly fault: Edit }[] = [
  {
    wiring: /two humbuckers, 3-position toggle, two volumes/i,
    fault: { op: 'open', site: 'bridgeSlug:winding' },
  },
  {
    wiring: /three single coils, 5-position blade, one volume and two tones/i,
    fault: { op: 'open', site: 'neckCoil:winding' },
  },
  {
    wiring: /two single coils, 3-position/i,
    fault: { op: 'bridge', a: 'volume.2', b: 'volume.3', ohms: ohms(0.1) },
  },
];

/** From one screen to the next, milliseconds by the clock. */
interface Step {
  readonly from: string;
  readonly to: string;
  readonly ms: number;
}

interface Waits {
  /** From an entry to what it changed, and from there to the next prompt. */
  readonly steps: readonly Step[];
  /** From the cautions read to the first prompt of a wiring never seen. */
  readonly first: readonly number[];
  /** From the question to the engine's answer as the page gets it, after each entry. */
  readonly answers: readonly number[];
}

/**
 * From an entry to what comes next: in Node the engine alone, by processor time; in the built app at a quarter of this machine's speed as
 * the page itself sees it, by the clock, with the longest task on the main thread in the whole hunt: the browser slows the page down, and
 * not the engine's worker. By hands that need their time for the probes and the keys, and once more without any pause.
 */
export async function run() {
  const inNode = stepsInNode();
  const byHand = await hunts(BY_HAND);
  const hurried = await hunts(HURRIED);
  const times = inNode.map(({ ms }) => ms);
  return {
    stepMsP50: rounded(percentile(times, 0.5)),
    stepMsP95: rounded(percentile(times, 0.95)),
    stepAt4xMsP50: rounded(percentile(msOf(byHand), 0.5)),
    stepAt4xMsP95: rounded(percentile(msOf(byHand), 0.95)),
    hurriedStepAt4xMsP95: rounded(percentile(msOf(hurried), 0.95)),
    firstPromptAt4xMs: rounded(Math.max(...byHand.first)),
    foreseenShare: rounded(inNode.filter(({ foreseen }) => foreseen).length / inNode.length),
    longestTaskMs: rounded(Math.max(0, ...byHand.tasks)),
    step: {
      stepsInNode: inNode.length,
      throttle: THROTTLE,
      pace: BY_HAND,
      hunts: GUITARS.length,
      readings: byHand.answers.length,
      answerMs: byHand.answers.map((ms) => rounded(ms)),
      steps: byHand.steps.map(told),
      hurriedSteps: hurried.steps.map(told),
      tasksAbove50: byHand.tasks.length,
      tasksMs: byHand.tasks.map((ms) => rounded(ms)),
    },
  };
}

const msOf = ({ steps }: Waits): readonly number[] => steps.map(({ ms }) => ms);
const told = ({ from, to, ms }: Step): string => `${from} to ${to}: ${rounded(ms)}`;

interface Measured extends Waits {
  readonly tasks: readonly number[];
}

async function hunts(pace: Pace): Promise<Measured> {
  const all: Measured[] = [];
  for (const guitar of GUITARS) all.push(await hunt(guitar, pace));
  return {
    steps: all.flatMap(({ steps }) => steps),
    first: all.flatMap(({ first }) => first),
    answers: all.flatMap(({ answers }) => answers),
    tasks: all.flatMap(({ tasks }) => tasks),
  };
}

async function hunt({ wiring, fault }: (typeof GUITARS)[number], pace: Pace): Promise<Measured> {
  const { page, slowDown, longTasks, close } = await slowPhone(watchWorker);
  await watchPrompts(page);
  await slowDown();
  await startHunt(page, { wiring, title: 'Step' });
  await button(page, 'Not tried yet').click();
  await readCautions(page);
  const { circuit } = await storedJob(page);
  const guitar = simulate(circuit, [fault], 'step');
  let screen = await onScreen(page, 'asking', 'opening');
  for (let readings = 0; readings < 12 && !LAST.has(screen); ) {
    if (screen === 'asking') {
      const keys = keysFor(guitar.answer(await askOn(page)));
      await page.waitForTimeout(pace.probes);
      for (const key of keys.slice(0, -1)) {
        await button(page, key).click();
        await page.waitForTimeout(pace.key);
      }
      screen = await pressed(page, button(page, keys.at(-1) as string));
      readings += 1;
    } else if (screen === 'doubtful') {
      await page.waitForTimeout(pace.reading);
      screen = await pressed(page, button(page, asTyped));
    } else if (screen === 'changed') {
      await page.waitForTimeout(pace.reading);
      screen = await pressed(page, button(page, 'Go on'));
    } else if (screen === 'opening') screen = await pressed(page, button(page, 'It is open'));
    else throw new Error(`Nobody knows what to do on the screen "${screen}".`);
  }
  const tasks = await longTasks();
  const waits = await page.evaluate(() => (window as unknown as { waits: Waits }).waits);
  await close();
  return { ...waits, tasks };
}

/** Screens that end a hunt here. */
const LAST: ReadonlySet<string> = new Set(['verdict', 'nothing-left']);

/**
 * Presses a key and waits until the title of another screen has the focus; gives that screen's name. The key is looked for before, and the
 * page tells by itself when it is there: whoever looks through a page that is at work takes its time away, at a quarter of the speed 50 ms
 * a step.
 */
async function pressed(page: Page, key: Locator): Promise<string> {
  const box = await key.boundingBox();
  if (!box) throw new Error('The key is not on the screen.');
  const next = page.evaluate(() => (window as unknown as { next(): Promise<string> }).next());
  await page.waitForTimeout(50);
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  return next;
}

/** Notes when the engine was asked and when it answered; runs in the page before anything else. */
function watchWorker(): void {
  const waits: { steps: Step[]; first: number[]; answers: number[] } = {
    steps: [],
    first: [],
    answers: [],
  };
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
    const ANSWERED = ['asking', 'doubtful'];
    const seen = window as unknown as {
      waits: { steps: Step[]; first: number[] };
      entered: number;
    };
    let pressed = { at: 0, what: '' };
    let tell = (_screen: string) => {};
    const next = () =>
      new Promise<string>((resolve) => {
        tell = resolve;
      });
    Object.assign(window, { next });
    addEventListener(
      'click',
      ({ target }) => {
        const key = (target as Element).closest('.key-enter, .choices .large, .acts .main');
        const from = key?.closest<HTMLElement>('[data-screen]')?.dataset['screen'] ?? '';
        if (!key) return;
        pressed = { at: performance.now(), what: from };
        seen.entered = ANSWERED.includes(from) ? pressed.at : 0;
      },
      true,
    );
    // The next prompt is there once another title has the focus.
    addEventListener('focusin', ({ target }) => {
      if ((target as Element).tagName !== 'H1') return;
      const to = (target as Element).closest<HTMLElement>('[data-screen]')?.dataset['screen'] ?? '';
      if (to === 'waiting') return;
      tell(to);
      if (pressed.at === 0) return;
      const wait = performance.now() - pressed.at;
      if (pressed.what === 'cautions') seen.waits.first.push(wait);
      else if ([...ANSWERED, 'changed'].includes(pressed.what))
        seen.waits.steps.push({
          from: pressed.what,
          to,
          ms: wait,
        });
      pressed = { at: 0, what: '' };
      seen.entered = 0;
    });
  });
