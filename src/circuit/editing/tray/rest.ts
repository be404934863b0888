import { capacitor as capacitorOf, outputJack, strings as stringsOf } from '../../catalog/build.ts';
import { Draft } from '../../catalog/modifications/draft.ts';
import { type Choice, type Option, optionOf } from '../../catalog/modifications/modification.ts';
import type { Metal, Part } from '../../parts/part.ts';
import { ohms } from '../../units.ts';
import type { TrayItem } from './item.ts';
import { freeTitle, nameFrom } from './names.ts';

/** Values of the trade (common practice, no source). */
const faradsChoice: Choice = {
  id: 'farads',
  title: 'Printed on it',
  options: [
    { id: '22e-9', title: '22 nF' },
    { id: '47e-9', title: '47 nF' },
    { id: '10e-9', title: '10 nF' },
    { id: '33e-9', title: '33 nF' },
    { id: '100e-9', title: '100 nF' },
    { id: '3.3e-9', title: '3.3 nF' },
    { id: '1e-9', title: '1 nF' },
    { id: '680e-12', title: '680 pF' },
  ],
};
const ohmsChoice: Choice = {
  id: 'ohms',
  title: 'Printed on it',
  options: [
    { id: '100e3', title: '100 kΩ' },
    { id: '150e3', title: '150 kΩ' },
    { id: '220e3', title: '220 kΩ' },
    { id: '2.2e3', title: '2.2 kΩ' },
    { id: '1.1e3', title: '1.1 kΩ' },
    { id: '1e6', title: '1 MΩ' },
  ],
};
const ringChoice: Choice = {
  id: 'ring',
  title: 'Lugs',
  options: [
    { id: 'no', title: 'tip and sleeve' },
    { id: 'yes', title: 'tip, ring and sleeve' },
  ],
};
const shieldChoice: Choice = {
  id: 'shield',
  title: 'What it is',
  options: [
    { id: 'foil', title: 'shield of foil' },
    { id: 'paint', title: 'shield of conductive paint' },
    { id: 'control-plate', title: 'metal control plate' },
  ],
};

/** An item with one choice, whose part is named by its title. */
const oneOf = (
  id: string,
  title: string,
  choices: readonly Choice[],
  part: (name: string, title: string, chosen: (choice: Choice) => Option) => Part,
  word: (chosen: (choice: Choice) => Option) => string,
): TrayItem => ({
  id,
  title,
  choices: () => choices,
  make(circuit, chosen) {
    const take = (choice: Choice) => optionOf(choice, chosen);
    const named = freeTitle(circuit, word(take));
    const draft = new Draft(circuit);
    return { parts: [draft.add(part(nameFrom(named, id), named, take))], leads: [] };
  },
});

export const capacitor = oneOf(
  'capacitor',
  'Capacitor',
  [faradsChoice],
  (name, title, chosen) => capacitorOf(name, title, Number(chosen(faradsChoice).id)),
  () => 'capacitor',
);

export const resistor = oneOf(
  'resistor',
  'Resistor',
  [ohmsChoice],
  (id, title, chosen) => ({
    kind: 'resistor',
    id,
    title,
    ohms: { nominal: ohms(Number(chosen(ohmsChoice).id)), tolerance: 0.05 },
  }),
  () => 'resistor',
);

/** Its name is that of the starting wirings: readings at the jack are stored by it. */
export const jack: TrayItem = {
  id: 'jack',
  title: 'Output jack',
  choices: () => [ringChoice],
  make: (_, chosen) => ({
    parts: [{ ...outputJack, ring: optionOf(ringChoice, chosen).id === 'yes' }],
    leads: [],
  }),
};

export const strings = oneOf(
  'strings',
  'Strings and bridge',
  [],
  (id, title) => ({ ...stringsOf, id: id === 'stringsAndBridge' ? stringsOf.id : id, title }),
  () => stringsOf.title,
);

const shieldTitles: Readonly<Record<string, string>> = {
  foil: 'shield',
  paint: 'shield paint',
  'control-plate': 'control plate',
};

export const shield = oneOf(
  'shield',
  'Shield or metal plate',
  [shieldChoice],
  (id, title, chosen) => {
    const role = chosen(shieldChoice).id as Metal['role'];
    return { kind: 'metal', id, title, role, outside: role === 'control-plate' };
  },
  (chosen) => shieldTitles[chosen(shieldChoice).id] ?? 'shield',
);

export const splice: TrayItem = {
  ...oneOf(
    'splice',
    'Twisted joint',
    [],
    (id, title) => ({ kind: 'splice', id, title }),
    () => 'twisted joint',
  ),
  note: 'leads joined to each other in the air',
};
