import { describe, expect, it } from 'vitest';
import { layoutOf } from '../../src/circuit/netlist.ts';
import { restingSetting } from '../../src/circuit/setting.ts';
import { assess } from '../../src/diagnosis/assess.ts';
import { hiddenGuitar } from '../../src/practice/hidden-guitar.ts';
import { practiceFault, practiceReading, practiceStart } from '../../src/practice/reading.ts';
import { jackOf } from '../../src/readings/points.ts';
import type { AskOf, Reading } from '../../src/readings/reading.ts';

const seeds = Array.from({ length: 3 }, (_, at) => `seed-${at + 1}`);

/** Readings as asked until a repair leads clearly, as a beginner takes them. */
function hunt(seed: string): { readonly repair: string | undefined; readonly taken: number } {
  const { circuit, meter } = practiceStart(seed);
  const readings: Reading[] = [];
  for (;;) {
    const { next, verdict, suspects } = assess({
      circuit,
      meter,
      access: 'open',
      readings,
      refused: [],
      repairs: [],
    });
    const ask = next[0]?.ask;
    if (verdict || !ask || readings.length > 25)
      return { repair: verdict?.repairs[0] ?? suspects[0]?.repair, taken: readings.length };
    const { seen } = practiceReading({ seed, ask, repairs: [], before: 0 });
    readings.push({ id: `r${readings.length}`, ask, seen, at: '2026-01-01T00:00:00Z', round: 0 });
  }
}

const atJack = (seed: string, kind: 'ohms' | 'beep' = 'ohms'): AskOf<'ohms' | 'beep'> => {
  const { circuit } = practiceStart(seed);
  const { tip, sleeve } = jackOf(layoutOf(circuit));
  return { kind, red: tip, black: sleeve, setting: restingSetting(circuit) };
};

describe('a practice guitar', () => {
  it('can be hunted down by taking the readings that are asked', () => {
    for (const seed of seeds)
      expect(hunt(seed).repair, seed).toBe(hiddenGuitar(seed).fault.remedy.key);
  }, 90_000);

  it('is the same for the same seed, and another for another', () => {
    const faults = seeds.map((seed) => hiddenGuitar(seed).fault.id);
    expect(seeds.map((seed) => hiddenGuitar(seed).fault.id)).toEqual(faults);
    expect(new Set(seeds.map((seed) => hiddenGuitar(seed).intended.id)).size).toBeGreaterThan(1);
  });

  it('is healthy once the right repair was done, and not after another', () => {
    for (const seed of seeds) {
      const { key } = hiddenGuitar(seed).fault.remedy;
      expect(practiceFault({ seed, repairs: ['another'] }).found).toBe(false);
      expect(practiceFault({ seed, repairs: ['another', key] }).found).toBe(true);
      const mended = practiceReading({ seed, ask: atJack(seed), repairs: [key], before: 0 });
      const { circuit, meter } = practiceStart(seed);
      const { readings } = assess({
        circuit,
        meter,
        access: 'open',
        readings: [
          { id: 'a', ask: atJack(seed), seen: mended.seen, at: '2026-01-01T00:00:00Z', round: 1 },
        ],
        refused: [],
        repairs: [key],
      });
      expect(readings[0]?.fits, seed).toBe('fits');
    }
  });

  it('shows a figure as it is entered: what the display says is what is stored', () => {
    for (const seed of seeds) {
      const { seen, display } = practiceReading({
        seed,
        ask: atJack(seed),
        repairs: [],
        before: 0,
      });
      if (seen.kind !== 'ohms' || display === undefined) throw new Error('ohms were asked');
      if (seen.ohms === 'open') expect(display).toBe('OL');
      else {
        const [figure, unit] = display.split(' ') as [string, string];
        const size = { Ω: 1, kΩ: 1e3, MΩ: 1e6 }[unit] as number;
        expect(Number(figure) * size).toBeCloseTo(seen.ohms, 6);
      }
    }
  });

  it('flickers by a count or two when it is read again, and by no more', () => {
    const seed = 'seed-flicker';
    const { key } = hiddenGuitar(seed).fault.remedy;
    const figures = Array.from({ length: 12 }, (_, before) => {
      const { seen } = practiceReading({ seed, ask: atJack(seed), repairs: [key], before });
      return seen.kind === 'ohms' && seen.ohms !== 'open' ? seen.ohms : Number.NaN;
    });
    expect(new Set(figures).size).toBeGreaterThan(1);
    expect(Math.max(...figures) / Math.min(...figures)).toBeLessThan(1.01);
  });

  it('beeps where the metal is one, and never through a healthy coil', () => {
    const seed = 'seed-beep';
    const { key } = hiddenGuitar(seed).fault.remedy;
    const through = practiceReading({ seed, ask: atJack(seed, 'beep'), repairs: [key], before: 0 });
    expect(through.seen).toEqual({ kind: 'beep', beeps: false });
    const ask = atJack(seed, 'beep');
    const touching = practiceReading({
      seed,
      ask: { ...ask, red: ask.black },
      repairs: [],
      before: 0,
    });
    expect(touching.seen).toEqual({ kind: 'beep', beeps: true });
  });

  it('refuses what it does not have in words', () => {
    const ask = { ...atJack('seed-1'), red: 'none.1' };
    expect(() => practiceReading({ seed: 'seed-1', ask, repairs: [], before: 0 })).toThrow(/none/);
  });
});
