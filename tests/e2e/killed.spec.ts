import type { Page } from '@playwright/test';
import { type IdealPickup, lead } from '../../src/sorter/ideal.fixture.ts';
import { Dice, type SimulatedGuitar, simulate } from '../simulated/index.ts';
import { begin, LIST_SCREENS, listStep } from './closing-player.ts';
import { button, onScreen, readCautions, startHunt } from './hunting.ts';
import { everythingStored } from './notebook-data.ts';
import { answer, askOn, storedJob } from './player.ts';
import { expect, test } from './served-app.ts';
import { answerOne, describePickup, questionOn } from './sorting.ts';

test.use({ actionTimeout: 20_000 });

/** How often the tab is killed in each flow; LUGWISE_KILLS=200 for the long run. */
const KILLS = Number(process.env['LUGWISE_KILLS'] ?? 3);
/** Longest time from the beginning of an act to the kill, milliseconds: into the middle of it, or of what follows. */
const LONGEST = 600;
/** Acts between two kills at most. */
const MOST = 5;
/** From so many kills on each screen of a flow must have been one of them. */
const MANY = 80;

/** A flow as a person plays it, screen by screen. */
interface Played {
  /** Where it stands in the course of things, and where it may. */
  readonly screens: readonly string[];
  readonly rare?: readonly string[];
  /** Does what this screen asks for, to the next screen. */
  act(tab: Page, screen: string): Promise<void>;
}

/** Ends the page at once, whatever it is doing (Chrome DevTools Protocol, Page.crash). */
async function kill(page: Page): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  devtools.send('Page.crash').catch(() => undefined);
  await crashed;
  await page.close();
}

/** All that a person has told and done so far, each as text: readings, refusals, repairs, checks, cautions read, guitars opened. */
async function told(tab: Page): Promise<readonly string[]> {
  const stored = await everythingStored(tab);
  const records = [...(stored['jobs'] ?? []), ...(stored['sheets'] ?? [])] as Record<
    string,
    unknown
  >[];
  return records.flatMap((record) => {
    const list = (key: string) => (record[key] ?? []) as { at?: string; startedAt?: string }[];
    const flags = ['cautionsReadAt', 'access', 'title'].map((key) => record[key]);
    return [
      ...flags.filter((flag) => flag !== undefined && flag !== 'closed'),
      ...list('readings'),
      ...list('refused'),
      ...list('repairs'),
      ...list('checks').map(({ startedAt }) => startedAt),
    ].map((one) => `${record['id']} ${JSON.stringify(one)}`);
  });
}

async function killAndLookAgain(home: string, first: Page, flow: Played): Promise<void> {
  const dice = new Dice('killed');
  const killedOn = new Map<string, number>();
  const here = (tab: Page) => onScreen(tab, ...flow.screens, ...(flow.rare ?? []));
  let tab = first;
  await tab.goto(home);
  for (let killed = 0; killed < KILLS; killed += 1) {
    let screen = await here(tab);
    // A screen that was killed on often is rather gone on from.
    const rather = () => dice.between(0, 1) > 1 / (1 + (killedOn.get(screen) ?? 0));
    for (let acts = 0; acts < MOST && rather(); acts += 1) {
      await flow.act(tab, screen);
      screen = await here(tab);
    }
    const kept = await told(tab);
    const ending = flow.act(tab, screen).catch(() => undefined);
    await tab.waitForTimeout(dice.between(0, LONGEST));
    const address = tab.url();
    await kill(tab);
    await ending;
    killedOn.set(screen, (killedOn.get(screen) ?? 0) + 1);
    tab = await first.context().newPage();
    await tab.goto(address);
    await here(tab);
    const found = new Set(await told(tab));
    expect(
      kept.filter((one) => !found.has(one)),
      `lost at kill ${killed + 1}, on ${screen}`,
    ).toEqual([]);
  }
  const counts = [...killedOn].map(([screen, count]) => `${screen} ${count}`).join(', ');
  console.log(`${KILLS} kills, ${(await told(tab)).length} things told, none lost: ${counts}`);
  if (KILLS >= MANY)
    expect([...killedOn.keys()]).toEqual(expect.arrayContaining([...flow.screens]));
}

const seconds = (from: number): number => 60_000 + from * 20_000;

test('a hunt whose tab is killed at random moments, on every screen of it, goes on with all that was told', async ({
  app,
  page,
}) => {
  test.setTimeout(seconds(KILLS));
  const dice = new Dice('hunt killed');
  let guitars = 0;
  const guitarOf = async (tab: Page): Promise<SimulatedGuitar> => {
    const { circuit, repairs } = await storedJob(tab);
    const broken = [{ op: 'open', site: 'hot@to' }] as const;
    return simulate(circuit, repairs.length > 0 ? [] : broken, `killed ${guitars}`);
  };
  await killAndLookAgain(app.address, page, {
    screens: [
      ...['home', 'new-job', 'symptom', 'cautions', 'asking', 'opening', 'changed', 'verdict'],
      ...['repairing', 'closed'],
    ],
    rare: ['nothing-left'],
    async act(tab, screen) {
      switch (screen) {
        case 'home':
          guitars += 1;
          return await startHunt(tab, {
            wiring: /one humbucker, one volume/i,
            title: `Killed ${guitars}`,
          });
        case 'new-job':
          await tab.getByLabel(/one humbucker, one volume/i).check();
          await button(tab, 'Start').click();
          return await tab.locator('[data-screen=symptom]').waitFor();
        case 'symptom':
          // What was told before a kill stands there still.
          if ((await button(tab, 'Not tried yet').count()) > 0) {
            if (dice.between(0, 1) < 0.5) return await button(tab, 'Not tried yet').click();
            await tab
              .locator('.chip', { hasText: /^Silent/ })
              .first()
              .click();
          }
          return await button(tab, 'Go on').click();
        case 'cautions':
          return await readCautions(tab);
        case 'opening':
          return await button(tab, 'It is open').click();
        case 'asking':
          if (dice.between(0, 1) < 0.1) return await button(tab, /^Can’t/).click();
          await answer(tab, (await guitarOf(tab)).answer(await askOn(tab)));
          return;
        case 'changed':
          return await button(tab, 'Go on').click();
        case 'repairing':
          return await button(tab, 'I did it').click();
        case 'closed':
          return await tab.getByRole('link', { name: 'Home' }).first().click();
        default:
          return await button(tab, /^(How to mend it|Close the job|Leave it here)$/).click();
      }
    },
  });
});

test('a sorting whose tab is killed at random moments goes on with all that was told', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(seconds(KILLS));
  const dice = new Dice('sorting killed');
  const pickup: IdealPickup = {
    seen: {
      coils: 2,
      leads: [lead('red'), lead('green'), lead('white'), lead('black'), lead('braid', 'bare')],
      plate: true,
      cover: false,
    },
    nodes: { red: '1', white: '2', green: '3', black: '4', braid: 'p', plate: 'p' },
    coils: { a: ['2', '1', 4200], b: ['3', '4', 4300] },
  };
  await killAndLookAgain(app.address, page, {
    screens: [
      'home',
      'sort-telling',
      'sort-cautions',
      'sort-asking',
      'sort-unclear',
      'sort-result',
    ],
    async act(tab, screen) {
      switch (screen) {
        case 'home':
          return await tab.getByRole('link', { name: /which lead does what/i }).click();
        case 'sort-telling':
          await describePickup(tab, pickup);
          return await tab.locator('[data-screen=sort-telling]').waitFor({ state: 'detached' });
        case 'sort-cautions':
          return await button(tab, 'It lies free on the mat').click();
        case 'sort-unclear':
          return await button(tab, 'Back').click();
        case 'sort-asking': {
          const words = await questionOn(tab);
          if (words.includes('millivolts') && dice.between(0, 1) < 0.2)
            return await button(tab, 'Not sure').click();
          if (dice.between(0, 1) < 0.05) return await button(tab, /^Can’t/).click();
          return await answerOne(tab, pickup, words);
        }
        default:
          return await tab.getByRole('link', { name: 'Home' }).first().click();
      }
    },
  });
});

test('a closing check whose tab is killed at random moments goes on with all that was told', {
  tag: '@long',
}, async ({ app, page }) => {
  test.setTimeout(seconds(KILLS));
  let guitars = 0;
  await killAndLookAgain(app.address, page, {
    screens: ['home', 'check', 'new-job', 'closing-start', 'cautions', ...LIST_SCREENS, 'proof'],
    async act(tab, screen) {
      switch (screen) {
        case 'home':
          guitars += 1;
          return await tab.getByRole('link', { name: /check a job before closing/i }).click();
        case 'check':
          return await tab.getByRole('link', { name: 'Another guitar' }).click();
        case 'new-job':
          await tab.getByLabel(/one humbucker, one volume/i).check();
          await tab.getByLabel('Your name for the guitar').fill(`Killed ${guitars}`);
          await button(tab, 'Start').click();
          return await tab.locator('[data-screen=new-job]').waitFor({ state: 'detached' });
        case 'closing-start':
          return await begin(tab, /back open/);
        case 'cautions':
          return await button(tab, 'The guitar is unplugged').click();
        case 'closing-passed':
          return await button(tab, 'Keep the record').click();
        case 'closing-failed':
        case 'proof':
          return await tab.getByRole('link', { name: 'Home' }).first().click();
        default: {
          const { circuit } = await storedJob(tab);
          // Every second one was left with a cold joint.
          const edits = guitars % 2 === 0 ? ([{ op: 'open', site: 'hot@to' }] as const) : [];
          await listStep(tab, simulate(circuit, edits, `closed ${guitars}`), screen);
        }
      }
    },
  });
});
