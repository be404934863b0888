import { describe, expect, it } from 'vitest';
import { switchKind } from '../../parts/switch.ts';
import { restingSetting, switchesOf } from '../../setting.ts';
import { twoHumbuckersFourKnobs } from '../two-humbuckers-four-knobs.ts';
import { modifications } from './index.ts';
import { optionOf } from './modification.ts';

const base = twoHumbuckersFourKnobs();

/** Rows of lugs from the soldering side and what each position joins, written by hand from switches of the trade (common practice, no source). */
const one = { rows: [['A1', 'AC', 'A2']], off: ['AC-A1'], on: ['AC-A2'] };
const two = {
  rows: [
    ['A1', 'B1'],
    ['AC', 'BC'],
    ['A2', 'B2'],
  ],
  off: ['AC-A1', 'BC-B1'],
  on: ['AC-A2', 'BC-B2'],
};
const along = {
  ...two,
  rows: [
    ['A1', 'AC', 'A2'],
    ['B1', 'BC', 'B2'],
  ],
};
const tables = [
  ['coil-split', 'mini-toggle', one],
  ['coil-split', 'push-pull:neckTone', two],
  ['coil-split', 'push-push:neckTone', two],
  ['coil-split', 'slide', along],
  ['coil-split', 'rotary', along],
  ['phase-of-pickup', 'mini-toggle', two],
  ['phase-of-pickup', 'push-pull:neckTone', two],
  ['phase-of-pickup', 'push-push:neckTone', two],
  ['phase-of-pickup', 'slide', along],
  ['phase-of-pickup', 'rotary', along],
] as const;

describe('what carries a switch', () => {
  it.each(tables)('of %s, %s, joins what the hand-written table says', (id, carrier, table) => {
    const modification = modifications.find((each) => each.id === id)!;
    const place = modification.applies(base)[0]!;
    const circuit = modification.apply(base, place, { carrier });
    const added = switchesOf(circuit).find((part) => part.id !== 'selector')!;
    expect(added.style).toBe(carrier.split(':')[0]);
    expect(added.carrier).toBe(carrier.split(':')[1]);
    expect(added.rows).toEqual(table.rows);
    for (const position of ['off', 'on'] as const) {
      const setting = { ...restingSetting(circuit), positions: { [added.id]: position } };
      const closed = switchKind.branches(added, setting).filter((branch) => branch.closed);
      expect(closed.map(({ name }) => name)).toEqual(table[position]);
    }
  });

  it('is offered for everything that is switched', () => {
    const switched = [
      'bass-cut',
      'add-in',
      'straight-to-jack',
      'phase-of-pickup',
      'phase-of-coil',
      'series-parallel',
      'coil-split',
      'partial-split',
      'split-both',
    ];
    for (const id of switched) {
      const modification = modifications.find((each) => each.id === id)!;
      const place = modification.applies(base)[0]!;
      const choice = modification.choices(base, place).find((each) => each.id === 'carrier')!;
      const kinds = new Set(choice.options.map((option) => option.id.split(':')[0]));
      for (const kind of ['mini-toggle', 'push-pull', 'push-push', 'slide', 'rotary'])
        expect(kinds.has(kind), `${id} ${kind}`).toBe(true);
      expect(optionOf(choice, {}).id).toBe('mini-toggle');
    }
  });
});
