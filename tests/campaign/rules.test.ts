import { describe, expect, it } from 'vitest';
import { hunt } from './hunt.ts';
import { RULES } from './rules.ts';

describe('rules that choose the next reading', () => {
  it('are each followed on the same guitar, and need no fewer readings by chance than by bits', () => {
    const found = RULES.map((order) =>
      hunt({
        seed: 3,
        kind: 'single-by-prior',
        order,
        access: 'open',
        wrongEntries: 0,
        symptoms: true,
      }),
    );
    expect(new Set(found.map(({ wiring, faults }) => `${wiring} ${faults}`)).size).toBe(1);
    const of = (name: (typeof RULES)[number]) => found[RULES.indexOf(name)]!;
    expect(of('random').readings).toBeGreaterThanOrEqual(of('entropy').readings);
    // The nearest reading first spends the least on each.
    const each = ({ seconds, readings }: (typeof found)[number]) => seconds / Math.max(1, readings);
    expect(each(of('nearest'))).toBeLessThanOrEqual(each(of('entropy')));
  }, 120_000);
});
