import { describe, expect, it } from 'vitest';
import { startingWirings } from '../circuit/catalog/index.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { meter } from '../readings/guitar.fixture.ts';
import { likeness, predict } from '../readings/index.ts';
import { Outlines } from '../readings/outline.ts';
import type { Prediction } from '../readings/prediction.ts';
import { unknownsOf } from '../readings/unknowns.ts';
import { View } from '../readings/view.ts';
import { candidates } from './candidates.ts';
import { pair, singleHypotheses } from './hypothesis.ts';

/** Whether no score could tell two predictions apart, to what the solver is good for. */
function alike(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return one === other || Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one));
  if (typeof one !== 'object' || typeof other !== 'object' || !one || !other) return one === other;
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => alike(one[key as never], other[key as never]));
}

const chosen = [
  'two-humbuckers-four-knobs',
  'three-singles-five-position',
  'four-strings-two-singles',
];

describe('guitars of one name', () => {
  it.each(chosen)('foretell the same, worked out one by one: %s', (id) => {
    const layout = layoutOf(startingWirings.find((one) => one.id === id)!.build());
    const unknowns = unknownsOf(layout, meter);
    const singles = singleHypotheses(layout);
    const some = singles.filter(({ index }) => index % 11 === 0);
    // Pairs, as their edits meet in one place or in two.
    const pairs = Array.from({ length: 40 }, (_, at) =>
      pair(singles[1 + 7 * at]!, singles[3 + 11 * at]!, singles.length),
    );
    const hypotheses = [singles[0]!, ...some, ...pairs];
    const asks = [...candidates(layout, 'closed'), ...candidates(layout, 'open')];
    let [named, shared] = [0, 0];
    for (let at = 0; at < asks.length; at += 53) {
      const ask = asks[at]!;
      const first = new Map<string, readonly Prediction[]>();
      for (const { edits, loose } of hypotheses) {
        const outlines = new Outlines(layout, edits, loose);
        const name = likeness(outlines, ask);
        if (name === null) continue;
        named += 1;
        const instrument = { meter, unknowns, ...(loose && { loose }) };
        const own = predict(new View(layout, ask.setting, edits), ask, instrument);
        const other = first.get(name);
        if (other !== undefined) shared += 1;
        if (other && !alike(own, other))
          expect(own, `${JSON.stringify(edits)} ${JSON.stringify(ask)}`).toEqual(other);
        first.set(name, own);
      }
    }
    expect(named).toBeGreaterThan(200);
    expect(shared).toBeGreaterThan(0.4 * named);
  });
});
