import { pot as potOf } from '../../catalog/build.ts';
import { Draft } from '../../catalog/modifications/draft.ts';
import { type Choice, type Option, optionOf } from '../../catalog/modifications/modification.ts';
import { blade3, blade5, toggle3 } from '../../catalog/selectors.ts';
import type { Circuit } from '../../circuit.ts';
import type { Part, Pot, Switch } from '../../parts/part.ts';
import { buttonTables, type ContactTable, leverTables, stepTables } from './contact-tables.ts';
import type { TrayItem } from './item.ts';
import { freeTitle, nameFrom } from './names.ts';

const choice = (id: string, title: string, options: readonly Option[]): Choice => ({
  id,
  title,
  options: options as [Option, ...Option[]],
});

const optionsOf = (tables: readonly ContactTable[]): readonly Option[] =>
  tables.map(({ id, title }) => ({ id, title }));

const tableOf = (tables: readonly ContactTable[], { id }: Option): ContactTable =>
  tables.find((table) => table.id === id) ?? (tables[0] as ContactTable);

const role = choice('role', 'What it does', [
  { id: 'volume', title: 'volume' },
  { id: 'tone', title: 'tone' },
  { id: 'other', title: 'something else' },
]);
/** Values of the trade (common practice, no source). */
export const trackChoice = choice('track', 'Printed on it', [
  { id: '500000', title: '500 kΩ' },
  { id: '250000', title: '250 kΩ' },
  { id: '300000', title: '300 kΩ' },
  { id: '1000000', title: '1 MΩ' },
  { id: '100000', title: '100 kΩ' },
  { id: '25000', title: '25 kΩ' },
]);
export const taperChoice = choice('taper', 'Taper', [
  { id: 'audio', title: 'audio (A)' },
  { id: 'linear', title: 'linear (B)' },
  { id: 'reverse-audio', title: 'reverse audio (C)' },
]);
const onBack = choice('back', 'Switch on its back', [
  { id: 'none', title: 'none' },
  { id: 'push-pull', title: 'push-pull' },
  { id: 'push-push', title: 'push-push' },
]);

/** Where a switch on a pot stands: `up` is pulled. It rests pushed in. */
const shaft = (table: ContactTable): ContactTable => ({
  ...table,
  positions: table.positions.map((position, at) => ({
    ...position,
    name: at === 0 ? 'in' : 'out',
    title: at === 0 ? 'pushed in' : 'pulled out',
  })),
});

const switchOf = (
  draft: Draft,
  circuit: Circuit,
  title: string,
  style: Switch['style'],
  { rows, positions }: ContactTable,
  more: Partial<Switch> = {},
): Switch => {
  const named = freeTitle(circuit, title);
  return draft.add<Switch>({
    kind: 'switch',
    id: nameFrom(named, 'switch'),
    title: named,
    style,
    rows,
    positions,
    frame: false,
    ...more,
  });
};

const titles: Readonly<Record<Pot['role'], string>> = {
  volume: 'volume',
  tone: 'tone',
  other: 'pot',
};

export const pot: TrayItem = {
  id: 'pot',
  title: 'Pot',
  choices: () => [role, trackChoice, taperChoice, onBack],
  make(circuit, chosen) {
    const draft = new Draft(circuit);
    const does = optionOf(role, chosen).id as Pot['role'];
    const title = freeTitle(circuit, titles[does]);
    const track = Number(optionOf(trackChoice, chosen).id);
    const made = draft.add<Pot>({
      ...potOf(nameFrom(title, 'pot'), title, does, track),
      taper: optionOf(taperChoice, chosen).id as Pot['taper'],
    });
    const style = optionOf(onBack, chosen).id;
    const parts: Part[] = [made];
    if (style !== 'none')
      parts.push(
        switchOf(
          draft,
          circuit,
          `switch on the ${title}`,
          style as Switch['style'],
          shaft(leverTables[0]),
          {
            id: draft.fresh(`${made.id}Switch`),
            carrier: made.id,
          },
        ),
      );
    return { parts, leads: [] };
  },
};

/** Positions are called by their place: which pickup comes with which is for whoever wires it. */
const placed = ({ rows, positions }: Switch, id: string, title: string): ContactTable => ({
  id,
  title,
  rows,
  positions: positions.map(({ joins }, at) => ({
    name: `${at + 1}`,
    title: `position ${at + 1}`,
    joins,
  })),
});

/** Selectors: what bridges neighbours in between, and what steps. */
const selectorTables: readonly (ContactTable & { readonly style: Switch['style'] })[] = [
  { ...placed(toggle3, 'toggle-3', '3-position toggle'), style: 'toggle' },
  { ...placed(blade5, 'blade-5', '5-position blade, two poles'), style: 'blade' },
  { ...placed(blade3, 'blade-3', '3-position blade, two poles'), style: 'blade' },
  ...stepTables.map((table) => ({
    ...table,
    title: `${table.id === '2-pole-4-way' || table.id === '4-pole-5-way' ? 'blade' : 'rotary'}, ${table.title}`,
    style:
      table.id === '2-pole-4-way' || table.id === '4-pole-5-way'
        ? ('blade' as const)
        : ('rotary' as const),
  })),
];

const selectorChoice = choice('table', 'Which', optionsOf(selectorTables));

export const selector: TrayItem = {
  id: 'selector',
  title: 'Pickup selector',
  choices: () => [selectorChoice],
  make(circuit, chosen) {
    const id = optionOf(selectorChoice, chosen).id;
    const table = selectorTables.find((one) => one.id === id) ?? selectorTables[0]!;
    const draft = new Draft(circuit);
    return {
      parts: [switchOf(draft, circuit, 'selector', table.style, table, { frame: true })],
      leads: [],
    };
  },
};

const lever = (
  id: string,
  title: string,
  style: Switch['style'],
  tables: readonly ContactTable[],
): TrayItem => {
  const which = choice('table', 'Contacts', optionsOf(tables));
  return {
    id,
    title: title.charAt(0).toUpperCase() + title.slice(1),
    choices: () => [which],
    make(circuit, chosen) {
      const table = tableOf(tables, optionOf(which, chosen));
      return { parts: [switchOf(new Draft(circuit), circuit, title, style, table)], leads: [] };
    },
  };
};

export const miniToggle = lever('mini-toggle', 'mini toggle', 'mini-toggle', leverTables);
export const slide = lever('slide', 'slide switch', 'slide', leverTables);
export const button = lever('button', 'button', 'button', buttonTables);

/** Contact tables that a switch of this style can have. */
export const tablesFor = ({ style }: Pick<Switch, 'style'>): readonly ContactTable[] => {
  if (style === 'button') return buttonTables;
  if (style === 'toggle' || style === 'blade' || style === 'rotary')
    return selectorTables.filter((table) => table.style === style);
  return style === 'push-pull' || style === 'push-push'
    ? leverTables.filter(({ positions }) => positions.length === 2).map(shaft)
    : leverTables;
};
