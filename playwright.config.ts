import { defineConfig } from '@playwright/test';
import { browserLaunch } from './tests/e2e/browser.ts';

export default defineConfig({
  testDir: 'tests/e2e',
  testMatch: '**/*.spec.ts',
  outputDir: 'tests/e2e/results',
  forbidOnly: true,
  // `npm test` has a quarter of an hour: what takes long beside what it adds is tagged, and runs with the rest in `npm run test:long`.
  ...(process.env['LUGWISE_LONG'] ? {} : { grepInvert: /@long/ }),
  retries: 0,
  workers: 2,
  fullyParallel: true,
  timeout: 90_000,
  // A busy machine is slow, not wrong.
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: 'reports/end-to-end.json' }]],
  use: {
    // The phone of the design: what the player holds beside the guitar.
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    deviceScaleFactor: 2,
    launchOptions: browserLaunch,
    screenshot: 'only-on-failure',
  },
});
