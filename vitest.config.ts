import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [preact()],
  test: {
    include: ['src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    exclude: ['tests/e2e/**', 'node_modules/**', 'dist/**'],
    passWithNoTests: false,
    // Two cores: one worker for each.
    maxWorkers: 2,
    // A cold engine on a busy machine takes seconds.
    testTimeout: 30_000,
  },
});
