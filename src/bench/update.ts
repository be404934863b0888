import { type Signal, signal } from '@preact/signals';
import { Workbox } from 'workbox-window';

/** Whether the app would open with no network: the bench says so before the player goes there. */
export type OfflineState = 'preparing' | 'ready' | 'unavailable';

/** True while a newer version is on the phone and waits for the player to agree to it. */
export const updateWaiting: Signal<boolean> = signal(false);
export const offlineState: Signal<OfflineState> = signal('preparing');

/**
 * A version that was agreed to takes over soon, unless the running one still answers a request of
 * some tab: after this time the page opens again, which lets go of its own requests.
 */
const takeOverWithinMs = 4000;

/**
 * So often it is asked to, until it has: a request that the running version gets meanwhile lets it live on for half a minute
 * (Chromium's idle time of a service worker, seen and not in a standard), unless it is asked once more.
 */
const askEveryMs = 300;

/**
 * Left in this tab by a page that opened itself again unseen by the agreed version: it may have taken over while the next page was on
 * its way here, which is then still of the old one, with nothing to tell it so.
 */
const agreedMark = 'lugwise-agreed-version';

/** An app left open for days asks for a newer version this often, when it comes back into view. */
const hoursBetweenChecks = 6;

let worker: Workbox | undefined;
let accepted = false;
let takenOver = false;

/**
 * Registers the service worker that keeps the app on the phone. Call once, at the start. Without a
 * secure origin there is none, and `offlineState` says so.
 */
export async function keepOffline(): Promise<void> {
  if (!('serviceWorker' in navigator)) {
    offlineState.value = 'unavailable';
    return;
  }
  worker = new Workbox('./sw.js');
  // The version that this page runs.
  let running = navigator.serviceWorker.controller;
  worker.addEventListener('waiting', async () => {
    // The very first one passes through the same state, with nothing to wait for.
    const registration = await navigator.serviceWorker.getRegistration();
    if (registration?.active && registration.waiting) updateWaiting.value = true;
  });
  worker.addEventListener('controlling', () => {
    if (navigator.serviceWorker.controller === running) return;
    if (accepted) {
      window.location.reload();
      return;
    }
    // Another tab agreed: this one still runs the old version, whose files are gone from the cache.
    takenOver = true;
    updateWaiting.value = true;
  });
  try {
    const registration = await worker.register();
    // Opened before any version was kept, or again while the first one is: that one is no newer.
    running ??= registration?.active ?? registration?.waiting ?? registration?.installing ?? null;
    await navigator.serviceWorker.ready;
    offlineState.value = 'ready';
    if (wasAgreed()) {
      // Where it does not take over soon after all, it waits, and says so.
      if (registration?.waiting)
        askToTakeOver(() => {
          accepted = false;
        });
      else window.location.reload();
    }
    askNowAndThen(worker);
  } catch {
    // No certificate that the browser trusts, or a private window: the app works, but only online.
    offlineState.value = 'unavailable';
  }
}

/** Takes the waiting version into use and opens the app again. Call it only on the player's word. */
export function acceptUpdate(): void {
  if (takenOver) {
    window.location.reload();
    return;
  }
  askToTakeOver(() => {
    sessionStorage.setItem(agreedMark, 'yes');
    window.location.reload();
  });
}

/** Asks the waiting version to take over, again and again, and does `otherwise` where it has not within its time. */
function askToTakeOver(otherwise: () => void): void {
  accepted = true;
  worker?.messageSkipWaiting();
  const asking = setInterval(() => worker?.messageSkipWaiting(), askEveryMs);
  setTimeout(() => {
    clearInterval(asking);
    otherwise();
  }, takeOverWithinMs);
}

/** Whether the page before this one agreed to a version and did not see it take over; told once. */
function wasAgreed(): boolean {
  const agreed = sessionStorage.getItem(agreedMark) !== null;
  sessionStorage.removeItem(agreedMark);
  return agreed;
}

function askNowAndThen(current: Workbox): void {
  let lastCheck = Date.now();
  document.addEventListener('visibilitychange', () => {
    const due = Date.now() - lastCheck > hoursBetweenChecks * 3_600_000;
    if (document.visibilityState !== 'visible' || !due) return;
    lastCheck = Date.now();
    // Offline the question cannot be asked; the next time is soon enough.
    current.update().catch(() => undefined);
  });
}
