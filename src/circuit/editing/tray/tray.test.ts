import { describe, expect, it } from 'vitest';
import { checkCircuit } from '../../check.ts';
import type { Circuit } from '../../circuit.ts';
import { afterAct } from '../act.ts';
import { lugsOf } from '../find.ts';
import { buttonTables, leverTables, stepTables } from './contact-tables.ts';
import { tray } from './index.ts';

const nothing: Circuit = { id: 'drawn', title: 'drawn', parts: [], leads: [], pickups: [] };

const ways = (item: (typeof tray)[number], circuit: Circuit) => {
  let all: Record<string, string>[] = [{}];
  for (const { id } of item.choices(circuit, {}))
    all = all.flatMap((chosen) => {
      const choice = item.choices(circuit, chosen).find((one) => one.id === id);
      return (choice?.options ?? []).map((option) => ({ ...chosen, [id]: option.id }));
    });
  return all;
};

it('has every kind of part that a wiring knows', () => {
  const kinds = tray.flatMap((item) =>
    ways(item, nothing).flatMap((way) => item.make(nothing, way).parts.map(({ kind }) => kind)),
  );
  expect([...new Set(kinds)].sort()).toEqual([
    'capacitor',
    'coil',
    'jack',
    'metal',
    'pot',
    'resistor',
    'splice',
    'switch',
  ]);
});

it.each(tray.map((item) => [item.id, item] as const))(
  '%s passes the door in every way it can be chosen, twice',
  (_, item) => {
    for (const way of ways(item, nothing)) {
      let circuit = afterAct(nothing, { do: 'add', ...item.make(nothing, way) });
      checkCircuit(circuit);
      if (item.id === 'jack') continue;
      const next = item.make(circuit, way);
      circuit = afterAct(circuit, { do: 'add', ...next });
      checkCircuit(circuit);
      const titles = [
        ...circuit.pickups,
        ...circuit.parts.filter(({ kind }) => kind !== 'coil'),
      ].map(({ title }) => title);
      expect(new Set(titles).size).toBe(titles.length);
    }
  },
);

it.each([
  ['single-coil', { metal: 'none' }, 2],
  ['single-coil', { metal: 'cold' }, 2],
  ['single-coil', { metal: 'own' }, 3],
  ['two-coils', { leads: '2', metal: 'cold' }, 2],
  ['two-coils', { leads: '2', metal: 'own' }, 3],
  ['two-coils', { leads: '3', metal: 'none' }, 3],
  ['two-coils', { leads: '3', metal: 'own' }, 4],
  ['two-coils', { leads: '4', metal: 'none' }, 4],
  ['two-coils', { leads: '4', metal: 'own' }, 5],
])('%s %o brings out %i leads', (id, chosen, count) => {
  const { parts, leads } = tray.find((item) => item.id === id)!.make(nothing, chosen);
  // A lead comes out for each group of ends that are joined inside, but where the coils meet only if it is asked for.
  const ends = parts.flatMap(lugsOf);
  const inside = leads.length;
  const hidden = chosen.metal !== undefined && 'leads' in chosen && chosen.leads === '2' ? 1 : 0;
  expect(ends.length - inside - hidden).toBe(count);
});

describe('contact tables', () => {
  const table = (id: string) =>
    [...leverTables, ...buttonTables, ...stepTables].find((one) => one.id === id)!;
  const closed = (id: string) =>
    table(id).positions.map(({ joins }) =>
      joins
        .map(([a, b]) => `${a}-${b}`)
        .sort()
        .join(' '),
    );
  // Written by hand from how such switches are sold (common practice, no source).
  it.each([
    ['spdt', ['AC-A1', 'AC-A2']],
    ['dpdt', ['AC-A1 BC-B1', 'AC-A2 BC-B2']],
    ['spdt-centre-off', ['AC-A1', '', 'AC-A2']],
    ['dpdt-centre-off', ['AC-A1 BC-B1', '', 'AC-A2 BC-B2']],
    ['dpdt-on-on-on', ['AC-A1 BC-B1', 'AC-A2 BC-B1', 'AC-A2 BC-B2']],
    ['spdt-both', ['AC-A1', 'AC-A1 AC-A2', 'AC-A2']],
    ['tpdt', ['AC-A1 BC-B1 CC-C1', 'AC-A2 BC-B2 CC-C2']],
    ['fpdt', ['AC-A1 BC-B1 CC-C1 DC-D1', 'AC-A2 BC-B2 CC-C2 DC-D2']],
    ['spst', ['', '1-2']],
    ['make', ['', '1-2']],
    ['break', ['1-2', '']],
    ['2-pole-4-way', ['A1-AC B1-BC', 'A2-AC B2-BC', 'A3-AC B3-BC', 'A4-AC B4-BC']],
  ])('of %s', (id, expected) => {
    expect(closed(id)).toEqual(expected);
  });
});
