import { describe, expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { modifications } from '../../circuit/catalog/modifications/index.ts';
import { valueRows } from '../entry/value-text.ts';
import {
  mirroredBy,
  rowsOn,
  type ToldJob,
  toldChanges,
  toldJobShape,
  wiringOf,
} from './told-job.ts';

const base = startingWirings.find(({ id }) => id === 'two-humbuckers-four-knobs')!.build();
const bleed = modifications.find(({ id }) => id === 'treble-bleed')!;
const changes = [
  ...mirroredBy(base),
  { modification: bleed, place: bleed.applies(base)[0]!, chosen: {} },
];
const told: ToldJob = {
  wiring: 'two-humbuckers-four-knobs',
  title: 'Red one',
  access: 'open',
  changes: toldChanges(changes),
  rows: valueRows(base).map((row) => ({ ...row, measured: '487k' })),
};

describe('a guitar as it is told', () => {
  it('goes through text and gives the same wiring', () => {
    const again = JSON.parse(JSON.stringify(told)) as ToldJob;
    expect(() => toldJobShape(again, '')).not.toThrow();
    const wiring = wiringOf(base, again.changes);
    expect(wiring.changes).toEqual(changes);
    expect(wiring.circuit?.parts.length).toBeGreaterThan(base.parts.length);
    expect(rowsOn(base, again.rows)?.every(({ measured }) => measured === '487k')).toBe(true);
  });

  it('leaves out changes that nobody knows, and values of other parts', () => {
    const strange = [
      { modification: 'none-of-ours', place: 'here', chosen: {} },
      { modification: bleed.id, place: 'nowhere', chosen: {} },
    ];
    expect(wiringOf(base, strange)).toEqual({ base, changes: [], circuit: base });
    expect(wiringOf(undefined, told.changes).circuit).toBeUndefined();
    expect(rowsOn(base, told.rows?.slice(1) ?? null)).toBeNull();
  });

  it.each([
    ['another place for the wiring', { ...told, access: 'half' }],
    ['no list', { ...told, changes: 'none' }],
    ['a row without its part', { ...told, rows: [{ nominal: '500k' }] }],
    ['nothing', null],
  ])('refuses %s', (_, damaged) => {
    expect(() => toldJobShape(damaged, '')).toThrow();
  });
});
