import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { type Browser, chromium } from '@playwright/test';
import { browserLaunch } from './browser.ts';

export interface MortalBrowser {
  readonly browser: Browser;
  /** As a phone does that runs out of power: no process of it gets to say a word. */
  kill(): Promise<void>;
}

/** A browser with a profile on disk that can be killed. One that hangs as it starts is killed, and another is started. */
export async function startBrowser(profile: string, tries = 3): Promise<MortalBrowser> {
  const { executablePath, args } = browserLaunch;
  const child = spawn(
    executablePath!,
    [...args!, '--headless', '--remote-debugging-port=0', `--user-data-dir=${profile}`],
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const end = async (): Promise<void> => {
    const gone = new Promise((resolve) => child.once('exit', resolve));
    process.kill(-child.pid!, 'SIGKILL');
    await gone;
    // Its other processes die a moment later: the next browser must not open a profile that one of them still holds.
    for (let left = processesOn(profile); left.length > 0; left = processesOn(profile)) {
      for (const pid of left) killed(pid);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  };
  const address = await addressOf(child);
  const browser = await chromium.connectOverCDP(address).catch(async (error: unknown) => {
    await end();
    if (tries <= 1) throw error;
    return null;
  });
  if (!browser) return await startBrowser(profile, tries - 1);
  return {
    browser,
    async kill() {
      await end();
      await browser.close();
    },
  };
}

/** Processes whose command line names the profile, as Linux tells of them. */
const processesOn = (profile: string): readonly number[] =>
  readdirSync('/proc')
    .map(Number)
    .filter((pid) => {
      try {
        return pid > 0 && readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes(profile);
      } catch {
        return false; // It has ended meanwhile.
      }
    });

function killed(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It has ended meanwhile.
  }
}

const addressOf = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let said = '';
    child.stderr!.on('data', (piece: Buffer) => {
      said += piece.toString();
      const address = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (address) resolve(address);
    });
    child.once('exit', () => reject(new Error(`The browser ended: ${said}`)));
  });
