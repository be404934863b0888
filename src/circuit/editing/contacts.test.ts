import { expect, it } from 'vitest';
import type { Switch } from '../parts/part.ts';
import { switchKind } from '../parts/switch.ts';
import { lugCount, withJoin, withLugs, withoutLastPosition, withPosition } from './contacts.ts';
import { leverTables } from './tray/contact-tables.ts';

const toggle: Switch = {
  kind: 'switch',
  id: 'mini',
  title: 'mini toggle',
  style: 'mini-toggle',
  frame: false,
  rows: leverTables[0].rows,
  positions: leverTables[0].positions,
};

it('joins two lugs in one position alone, once, whichever is named first', () => {
  const once = withJoin(toggle, 0, 'A1', 'B1', true);
  expect(once.positions[0]?.joins).toEqual([...toggle.positions[0]!.joins, ['A1', 'B1']]);
  expect(once.positions[1]).toEqual(toggle.positions[1]);
  expect(withJoin(once, 0, 'B1', 'A1', true)).toEqual(once);
  expect(withJoin(once, 0, 'B1', 'A1', false)).toEqual(toggle);
  expect(withJoin(toggle, 0, 'A1', 'A1', true)).toEqual(toggle);
});

it('calls a contact as it is called in the other positions', () => {
  // The usual table says AC to A1, though A1 is the lug before it.
  const both = withJoin(toggle, 1, 'A1', 'AC', true);
  expect(both.positions[1]?.joins).toContainEqual(['AC', 'A1']);
});

it('adds positions with names of their own, and keeps one', () => {
  const three = withPosition(toggle);
  expect(three.positions.map(({ name }) => name)).toEqual(['up', 'down', '3']);
  expect(withoutLastPosition(three)).toEqual(toggle);
  const one = withoutLastPosition(toggle);
  expect(withoutLastPosition(one)).toBe(one);
  expect(Array.from({ length: 40 }).reduce<Switch>(withPosition, toggle).positions).toHaveLength(
    24,
  );
});

it('grows and shrinks its rows, and joins nothing to a lug that is gone', () => {
  expect(lugCount(toggle)).toEqual({ rows: 3, columns: 2 });
  const wide = withLugs(toggle, { rows: 4, columns: 3 });
  expect(lugCount(wide)).toEqual({ rows: 4, columns: 3 });
  expect(wide.rows.slice(0, 3).map((row) => row.slice(0, 2))).toEqual(toggle.rows);
  expect(() => switchKind.check(wide)).not.toThrow();
  const narrow = withLugs(toggle, { rows: 3, columns: 1 });
  expect(narrow.rows).toEqual([['A1'], ['AC'], ['A2']]);
  expect(narrow.positions.map(({ joins }) => joins)).toEqual([[['AC', 'A1']], [['AC', 'A2']]]);
});
