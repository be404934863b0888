import { describe, expect, it } from 'vitest';
import { threeSinglesFivePosition } from '../../circuit/catalog/three-singles-five-position.ts';
import { twoHumbuckersFourKnobs } from '../../circuit/catalog/two-humbuckers-four-knobs.ts';
import type { Circuit, Setting } from '../../circuit/circuit.ts';
import type { Pot } from '../../circuit/parts/part.ts';
import { trackShare } from '../../circuit/parts/pot.ts';
import { restingSetting, withKnob } from '../../circuit/setting.ts';
import { controlItems } from './control-items.ts';
import { ControlsStrip } from './controls-strip.tsx';
import { along, heading, point } from './geometry.ts';
import { findAll, shown } from './markup.ts';
import { knobDegrees } from './views.tsx';

const three = threeSinglesFivePosition();
const rest = restingSetting(three);
const lines = (circuit: Circuit, setting: Setting, previous: Setting | null) =>
  findAll(
    shown(<ControlsStrip circuit={circuit} setting={setting} previous={previous} />),
    ({ tag }) => tag === 'li',
  ).map(({ text }) => text.trim().replace(/\s+/g, ' '));

describe('the controls', () => {
  it('stand with their figures, the selector by the title of its position', () => {
    expect(lines(three, rest, null)).toEqual([
      'bridge selector',
      '10 volume',
      '10 neck tone',
      '10 middle tone',
      'out cable',
    ]);
  });

  it('say "to" where they have to be moved, and nowhere else', () => {
    const moved: Setting = {
      ...withKnob(rest, 'volume', 0),
      positions: { selector: '2' },
      plug: 'in',
    };
    expect(lines(three, moved, rest)).toEqual([
      'to bridge and middle selector',
      'to 0 volume',
      '10 neck tone',
      '10 middle tone',
      'plug in cable',
    ]);
  });

  it('carry a pull with its knob', () => {
    const four = twoHumbuckersFourKnobs();
    const circuit: Circuit = {
      ...four,
      parts: [
        ...four.parts,
        {
          kind: 'switch',
          id: 'split',
          title: 'split',
          style: 'push-pull',
          rows: [['A']],
          frame: false,
          carrier: 'neckVolume',
          positions: [
            { name: 'down', title: 'down', joins: [] },
            { name: 'up', title: 'up', joins: [] },
          ],
        },
      ],
    };
    const setting = restingSetting(circuit);
    const up = { ...setting, positions: { ...setting.positions, split: 'up' } };
    expect(lines(circuit, up, setting)).toContain('10 to up neck volume');
    expect(controlItems(circuit, up, setting)).toHaveLength(6);
  });
});

describe('a knob from the front', () => {
  const c = point(0, 0);
  it('points to the lower left at 0, straight up at 5, to the lower right at 10', () => {
    const [zero, five, ten] = [0, 5, 10].map((figure) => along(c, heading(knobDegrees(figure)), 1));
    expect(zero!.x).toBeLessThan(0);
    expect(zero!.y).toBeGreaterThan(0);
    expect(five!.x).toBeCloseTo(0, 10);
    expect(five!.y).toBeCloseTo(-1, 10);
    expect(ten!.x).toBeGreaterThan(0);
    expect(ten!.y).toBeGreaterThan(0);
  });

  it('of a left-handed pot points to the lower left at 10, where the circuit has its wiper on lug 1', () => {
    const pot: Pot = {
      ...(three.parts.find(({ kind }) => kind === 'pot') as Pot),
      leftHanded: true,
    };
    const ten = along(c, heading(knobDegrees(10, true)), 1);
    expect(ten.x).toBeLessThan(0);
    expect(ten.y).toBeGreaterThan(0);
    expect(trackShare(pot, 10)).toBe(0);
    const circuit = { ...three, parts: three.parts.map((one) => (one.id === pot.id ? pot : one)) };
    const pointers = (setting: Setting, of: Circuit) =>
      findAll(
        shown(<ControlsStrip circuit={of} setting={setting} previous={null} />),
        ({ tag, props }) => tag === 'path' && props['stroke-width'] === 3,
      ).map(({ props }) => props['d']);
    // At 10 it stands as the usual one does at 0.
    expect(pointers(rest, circuit)).toEqual(pointers(withKnob(rest, pot.id, 0), three));
  });
});
