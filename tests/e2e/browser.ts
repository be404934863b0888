import type { LaunchOptions } from 'playwright';

/**
 * Debian's Chromium, told to keep off the network: the tests need nothing but this machine. Another
 * Chromium is named in CHROMIUM.
 */
export const browserLaunch: LaunchOptions = {
  executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
  args: [
    // Debian's Chromium refuses its sandbox to root, which is who runs the tests in a container.
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
