import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../../src/circuit/catalog/one-humbucker-one-knob.ts';
import { type ClosingOptions, close } from './closing.ts';
import { closingFigures } from './closing-figures.ts';

/** A small, seeded run of the campaign on the wiring with fewest parts, so that a change that makes it worse is seen at once. */
describe('closing checks on guitars played by the circuit simulator', () => {
  const run = (trouble: ClosingOptions['trouble'], seeds: readonly number[]) =>
    seeds.map((seed) =>
      close({
        wiring: 'one-humbucker-one-knob',
        circuit: oneHumbuckerOneKnob(),
        stage: 'open',
        trouble,
        seed,
        meter: 'one',
      }),
    );

  it('pass healthy guitars and catch single and double faults', () => {
    const healthy = run('healthy', [1, 2, 3]);
    const faulty = [...run('single', [4, 5, 6, 7, 8, 9]), ...run('double', [10, 11])];
    const figures = closingFigures([...healthy, ...faulty]);
    // One alarm in 300 healthy guitars and one miss in 100 are within what is claimed: on these few seeds there is none.
    expect(figures).toMatchObject({ falseAlarm: 0, caughtSingle: 1, caughtDouble: 1 });
    expect(figures.meanPlanReadings).toBeGreaterThanOrEqual(figures.lowerBoundReadings ?? 0);
    for (const one of healthy) expect(one.taken).toBeGreaterThanOrEqual(one.planReadings);
    for (const one of faulty) expect(one.failed.join()).toMatch(/expected/);
  }, 120_000);
});
