import { signal } from '@preact/signals';

/** What a browser hands over when the app may be put on the home screen. */
interface InstallOffer extends Event {
  prompt(): Promise<unknown>;
}

/** Kept until it is the right moment: nobody is asked before a first hunt is done. */
const offer = signal<InstallOffer | null>(null);

/** How the app gets on the home screen of this phone: by the browser's own question, by hand, or not at all. */
export type InstallWay = 'ask' | 'by-hand' | 'none';

export function watchForInstall(): void {
  window.addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer.value = event as InstallOffer;
  });
  window.addEventListener('appinstalled', () => {
    offer.value = null;
  });
}

export function installWay(): InstallWay {
  const standing =
    matchMedia('(display-mode: standalone)').matches ||
    (navigator as { standalone?: boolean }).standalone === true;
  if (standing) return 'none';
  if (offer.value) return 'ask';
  // Only Safari on a phone or tablet has this property at all, and it never asks by itself.
  return 'standalone' in navigator ? 'by-hand' : 'none';
}

/** The browser asks; whatever is answered, it asks no more. */
export async function install(): Promise<void> {
  const asked = offer.value;
  offer.value = null;
  await asked?.prompt();
}
