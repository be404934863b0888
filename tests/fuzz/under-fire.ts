import { appendFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect } from 'vitest';

/** So many runs at every door: `npm run fuzz -- --runs 100000`. Without it as many as each test asks for. */
const asked = process.env['LUGWISE_FUZZ'];
/** A file that takes a line of figures from each door. */
const figures = process.env['LUGWISE_FUZZ_FIGURES'];

/** Longest that one run may take, milliseconds. */
const HANG = 1000;

/** What vitest is to wait for: a hang is found by the clock of each run. */
export const UNHURRIED = { timeout: asked ? 6 * 3_600_000 : 120_000 };

export interface DoorFigures {
  readonly door: string;
  readonly runs: number;
  readonly worstMs: number;
}

interface Few {
  /** Runs in `npm test`. */
  readonly few: number;
  /** Of a campaign's runs, at a door where one run is dear. */
  readonly share?: number;
  /** Milliseconds, where one run is work of the engine: that is done beside the page, which stays in hand. */
  readonly hang?: number;
}

/** Puts values through a door: `act` throws where one does harm. No run may take longer than `hang`, by processor time: a busy machine is no hang. */
export async function underFire<T>(
  door: string,
  values: fc.Arbitrary<T>,
  act: (value: T) => void | Promise<void>,
  { few, share = 1, hang = HANG }: Few,
): Promise<void> {
  let [runs, worstMs] = [0, 0];
  // What the machine compiles once is not what is measured.
  for (const value of fc.sample(values, { numRuns: 3, seed: 1 })) await act(value);
  await fc.assert(
    fc.asyncProperty(values, async (value) => {
      const started = process.cpuUsage();
      await act(value);
      const { user, system } = process.cpuUsage(started);
      const ms = (user + system) / 1000;
      expect(ms).toBeLessThan(hang);
      runs += 1;
      worstMs = Math.max(worstMs, ms);
    }),
    { numRuns: asked ? Math.ceil(Number(asked) * share) : few },
  );
  if (figures)
    appendFileSync(
      figures,
      `${JSON.stringify({ door, runs, worstMs: Math.round(worstMs) } satisfies DoorFigures)}\n`,
    );
}

/** Words that a person may be shown: there are some, on one line, and nothing broken among them. */
export function expectSentence(sentence: string): void {
  expect(sentence).toMatch(/^\S[^\n]*$/);
  expect(sentence).not.toMatch(/\[object |undefined/);
}

const BROKEN = /\bNaN\b|\bundefined\b|\[object /;

/** No figure in it that is none or endless; nor, where `words` is set, any broken words. */
export function expectFinite(value: unknown, words = false): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) expect(value).toSatisfy(Number.isFinite);
  } else if (typeof value === 'string') {
    if (words && BROKEN.test(value)) expect.fail(`broken words: ${value}`);
  } else if (typeof value === 'object' && value !== null && !ArrayBuffer.isView(value))
    for (const one of Object.values(value)) expectFinite(one, words);
}
