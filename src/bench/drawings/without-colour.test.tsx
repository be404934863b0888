import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { restingSetting } from '../../circuit/setting.ts';
import type { Ask } from '../../readings/reading.ts';
import { findAll, type Shown, shown } from './markup.ts';
import { ProbeDrawing } from './probe-drawing.tsx';

/** All that an eye sees which knows no colours: the kind of shape, its size, its words. */
const withoutColour = (ask: Ask, circuit: Parameters<typeof ProbeDrawing>[0]['circuit']) =>
  shown(<ProbeDrawing circuit={circuit} ask={ask} />);

/** The shape that a letter of one character stands on: the last one drawn before it that is closed round it. */
function markUnder(nodes: readonly Shown[], letter: 'R' | 'B'): string {
  const marks = findAll(nodes, ({ tag, children }) => {
    const text = children.find((one) => one.tag === 'text' && one.text === letter);
    // A lug may be called B as well; its name has an edge of paper.
    const ofProbe = text?.props['font-weight'] === 700 && !text.props['paint-order'];
    return tag === 'g' && ofProbe && children.length === 2;
  });
  return marks.map(({ children }) => children[0]?.tag).join();
}

describe.each(startingWirings.map(({ title, build }) => [title, build()] as const))(
  'to an eye that sees no colour, %s',
  (_, circuit) => {
    const setting = restingSetting(circuit);
    const pairs = circuit.leads.map(
      ({ from, to }): Ask => ({ kind: 'ohms', red: from, black: to, setting }),
    );

    it('red is a round mark with R, black a square one with B', () => {
      for (const ask of pairs) {
        const nodes = withoutColour(ask, circuit);
        expect(markUnder(nodes, 'R')).toBe('circle');
        expect(markUnder(nodes, 'B')).toBe('rect');
      }
    });

    it('the lugs asked for are named in bold, and nothing else beside the probes is', () => {
      for (const ask of pairs) {
        const texts = findAll(withoutColour(ask, circuit), ({ tag }) => tag === 'text');
        const bold = texts.filter(({ props }) => props['font-weight'] === 700);
        const marks = bold.filter(({ props }) => props['paint-order'] === undefined);
        expect(marks.map(({ text }) => text).sort()).toEqual(['B', 'R']);
        expect(bold.length - marks.length).toBeGreaterThan(0);
        expect(bold.length - marks.length).toBeLessThanOrEqual(4);
      }
    });
  },
);
