import { describe, expect, it } from 'vitest';
import { startingWirings } from '../catalog/index.ts';
import { CircuitError } from '../errors.ts';
import { restingSetting, switchesOf } from '../setting.ts';
import type { Switch } from './part.ts';
import { contacts, switchKind } from './switch.ts';

/** The usual two-pole blade of five positions, and a rotary of two poles and six positions (common practice, no source). */
const fiveWay = {
  '1': ['A1-AC', 'B1-BC'],
  '2': ['A1-AC', 'A2-AC', 'B1-BC', 'B2-BC'],
  '3': ['A2-AC', 'B2-BC'],
  '4': ['A2-AC', 'A3-AC', 'B2-BC', 'B3-BC'],
  '5': ['A3-AC', 'B3-BC'],
};
const sixWay = {
  '1': ['A1-AC', 'B1-BC'],
  '2': ['A2-AC', 'B2-BC'],
  '3': ['A3-AC', 'B3-BC'],
  '4': ['A4-AC', 'B4-BC'],
  '5': ['A5-AC', 'B5-BC'],
  '6': ['A6-AC', 'B6-BC'],
};

/** Which outer lugs each pole joins to its common, lever position by lever position: written by hand from the trade's usual blades and toggles (common practice, no source). */
const truth: Record<string, Record<string, readonly string[]>> = {
  'two-humbuckers-four-knobs': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'two-pickups-shared-controls': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'three-singles-five-position': fiveWay,
  'two-singles-three-position': {
    bridge: ['A1-AC', 'B1-BC'],
    both: ['A1-AC', 'A3-AC', 'B1-BC', 'B3-BC'],
    neck: ['A3-AC', 'B3-BC'],
  },
  'one-humbucker-one-knob': {},
  'two-humbuckers-shared-controls': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'two-wide-singles-four-knobs': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'three-singles-one-tone': fiveWay,
  'humbucker-two-singles': fiveWay,
  'one-single-two-knobs': {},
  'one-three-conductor-humbucker': {},
  'four-strings-split-pickup': {},
  'four-strings-two-singles': {},
  'two-three-conductor-humbuckers': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'two-humbuckers-five-position': {
    '1': ['A1-AC', 'B1-BC', 'C1-CC', 'D1-DC'],
    '2': ['A2-AC', 'B2-BC', 'C2-CC', 'D2-DC'],
    '3': ['A3-AC', 'B3-BC', 'C3-CC', 'D3-DC'],
    '4': ['A4-AC', 'B4-BC', 'C4-CC', 'D4-DC'],
    '5': ['A5-AC', 'B5-BC', 'C5-CC', 'D5-DC'],
  },
  'two-humbuckers-six-position': sixWay,
  'two-humbuckers-stereo-jack': { mono: ['1-2'], stereo: [] },
  'humbucker-two-singles-split': fiveWay,
  'humbucker-single-humbucker': fiveWay,
  'three-singles-six-position': sixWay,
  'two-singles-four-position': {
    '1': ['A1-AC', 'B1-BC'],
    '2': ['A2-AC', 'B2-BC'],
    '3': ['A3-AC', 'B3-BC'],
    '4': ['A4-AC', 'B4-BC'],
  },
  'three-two-conductor-pickups': fiveWay,
  'two-wide-singles-shared-controls': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'one-wide-single-two-knobs': {},
  'one-single-one-knob': {},
  'four-strings-split-and-single': {},
  'four-strings-two-split-pickups': { neck: ['A-C'], both: ['A-C', 'B-C'], bridge: ['B-C'] },
  'four-strings-two-singles-four-knobs': {},
  'four-strings-humbucker-mini-toggle': {
    up: ['A1-AC', 'B1-BC'],
    middle: ['A2-AC', 'B1-BC'],
    down: ['A2-AC', 'B2-BC'],
  },
};

describe('the contact table', () => {
  it('covers every starting wiring', () => {
    expect(Object.keys(truth).sort()).toEqual(startingWirings.map(({ id }) => id).sort());
  });

  it.each(startingWirings.map(({ id, build }) => [id, build] as const))(
    'of %s closes what the hand-written table says and holds the rest open',
    (id, build) => {
      const circuit = build();
      const rest = restingSetting(circuit);
      const table: Record<string, readonly string[]> = {};
      for (const part of switchesOf(circuit))
        for (const position of part.positions) {
          const branches = switchKind.branches(part, {
            ...rest,
            positions: { [part.id]: position.name },
          });
          table[position.name] = branches
            .filter(({ closed }) => closed)
            .map(({ name }) => name)
            .sort();
        }
      expect(table).toEqual(truth[id]);
    },
  );
});

const button: Switch = {
  kind: 'switch',
  id: 'kill',
  title: 'kill button',
  style: 'button',
  frame: false,
  rows: [['1', '2']],
  positions: [
    { name: 'out', title: 'out', joins: [] },
    { name: 'in', title: 'pressed', joins: [['1', '2']] },
  ],
};

describe('a switch', () => {
  it('stands in its first position where the setting says nothing', () => {
    const setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] } as const;
    expect(switchKind.branches(button, setting).map(({ closed }) => closed)).toEqual([false]);
    expect(switchKind.branches(button, { ...setting, positions: { kill: 'in' } })[0]?.closed).toBe(
      true,
    );
  });

  it('lists each contact once, whatever the positions repeat', () => {
    expect(
      contacts({
        ...button,
        positions: [...button.positions, { name: 'held', title: 'held', joins: [['1', '2']] }],
      }),
    ).toEqual([{ name: '1-2', a: '1', b: '2' }]);
  });

  it('has a frame lug only where it has a frame', () => {
    expect(switchKind.lugs(button)).toEqual(['1', '2']);
    expect(switchKind.lugs({ ...button, frame: true })).toEqual(['1', '2', 'frame']);
  });

  it.each<[string, Partial<Switch>, string]>([
    ['no position', { positions: [] }, 'kill button: a switch needs at least one position'],
    [
      'two lugs of one name',
      { rows: [['1', '1']] },
      'kill button: two of its lugs have the same name',
    ],
    [
      'two positions of one name',
      { positions: [button.positions[0]!, button.positions[0]!] },
      'kill button: two positions are called "out"',
    ],
    [
      'a join of a lug it lacks',
      { positions: [{ name: 'in', title: 'in', joins: [['1', '9']] }] },
      'kill button: position "in" joins lug 9, which it does not have',
    ],
    [
      'a join of a lug to itself',
      { positions: [{ name: 'in', title: 'in', joins: [['1', '1']] }] },
      'kill button: position "in" joins lug 1 to itself',
    ],
  ])('with %s is turned away', (_what, more, sentence) => {
    const check = () => switchKind.check({ ...button, ...more });
    expect(check).toThrow(CircuitError);
    expect(check).toThrow(sentence);
  });
});
