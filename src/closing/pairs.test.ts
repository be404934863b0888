import { describe, expect, it } from 'vitest';
import { oneHumbuckerOneKnob } from '../circuit/catalog/one-humbucker-one-knob.ts';
import { ohms } from '../circuit/units.ts';
import { pair } from '../diagnosis/hypothesis.ts';
import { closingBench, planOf } from './plan.ts';
import { apartBy } from './table.ts';
import { Together, wordsShow } from './together.ts';

const meter = { accuracy: 0.01, leads: ohms(0.3), limit: ohms(20e6) };

describe('pairs of faults', () => {
  it('are all shown by the list or named as hidden: every pair worked out, without the short way', () => {
    const bench = closingBench(oneHumbuckerOneKnob(), meter);
    const plan = planOf(bench, 'open');
    const { predictor, healthy, singles } = bench;
    const counts = new Map(plan.items.map(({ key, times }) => [key, times]));
    const columns = bench.columns.get('open')!.filter(({ key }) => counts.has(key));
    const times = new Map(columns.map((column) => [column, counts.get(column.key)!]));
    const list = new Together(columns, predictor.deviations(healthy));
    const steady = plan.showable.ladders
      .filter(({ ladder: [first] }) =>
        first!.edits.every(({ op }) => op !== 'worn' && op !== 'intermittent'),
      )
      .map(({ ladder, hidden }) => ({
        fault: ladder[Math.min(hidden, ladder.length - 1)]!,
        claimed: hidden < ladder.length,
      }));
    const named = new Set(
      plan.hiddenPairs.map(({ faults }) =>
        faults
          .map(({ id }) => id)
          .sort()
          .join(' '),
      ),
    );
    const missed: string[] = [];
    let tried = 0;
    steady.forEach((x, at) => {
      for (const y of steady.slice(0, at)) {
        if (!x.claimed && !y.claimed) continue;
        if (x.fault.faults[0]!.remedy.key === y.fault.faults[0]!.remedy.key) continue;
        tried += 1;
        const both = pair(x.fault, y.fault, singles.length);
        const row = { apart: apartBy(predictor, healthy, both, columns), moving: false };
        if (list.shows(row) || wordsShow(row, times)) continue;
        const name = both.faults
          .map(({ id }) => id)
          .sort()
          .join(' ');
        if (!named.has(name)) missed.push(name);
      }
    });
    expect(tried).toBeGreaterThan(2000);
    expect(missed).toEqual([]);
    // A coil whose leads and whose magnet are both the other way round swings as a healthy one does.
    expect(named).toContain('coil-reversed:bridgeScrew magnet:bridgeScrew');
  });
});
