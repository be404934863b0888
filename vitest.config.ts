import preact from '@preact/preset-vite';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that take ten seconds and more, the longest first: begun last, one of them would keep one core while the other idles. */
const LONG = [
  'tests/campaign/hunt.test.ts',
  'tests/outside/ngspice-dc.test.ts',
  'tests/hearing/ear.test.ts',
  'tests/simulated/guitar.test.ts',
  'tests/pictures/whole-wirings.test.ts',
  'src/bench/drawings/scene.test.ts',
  'src/flows/hunt-paths.test.ts',
  'src/closing/plan.test.ts',
  'tests/outside/reading-card.test.ts',
];

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => {
      const at = LONG.findIndex((name) => moduleId.endsWith(name));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).toSorted((x, y) => place(x) - place(y));
  }
}

export default defineConfig({
  plugins: [preact()],
  test: {
    include: ['src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    exclude: ['tests/e2e/**', 'node_modules/**', 'dist/**'],
    passWithNoTests: false,
    sequence: { sequencer: LongestFirst },
    // Two cores: one worker for each.
    maxWorkers: 2,
    // A cold engine on a busy machine takes seconds.
    testTimeout: 30_000,
  },
});
