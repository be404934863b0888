import type { LugName, Switch, SwitchPosition } from '../../parts/part.ts';

/** What a switch joins in each of its positions, and how its lugs stand: all that tells one from another beside its style. */
export interface ContactTable {
  readonly id: string;
  readonly title: string;
  readonly rows: Switch['rows'];
  readonly positions: readonly SwitchPosition[];
}

type Join = readonly [LugName, LugName];

const poleNames = (count: number): readonly string[] => [...'ABCDEFGH'].slice(0, count);

/** A lever's places from one end to the other; the first is where it rests. */
const levers: Readonly<Record<number, readonly string[]>> = {
  2: ['up', 'down'],
  3: ['up', 'middle', 'down'],
};

const placeNames = (count: number): readonly string[] =>
  levers[count] ?? Array.from({ length: count }, (_, at) => `${at + 1}`);

export const entitled = (name: string): string => (/^\d+$/.test(name) ? `position ${name}` : name);

/** Each pole joins its common to one outer lug a position: one row a pole, A1 A2 ... AC. */
function throws(poles: number, count: number): ContactTable {
  const names = poleNames(poles);
  const outer = Array.from({ length: count }, (_, at) => at + 1);
  return {
    id: `${poles}-pole-${count}-way`,
    title: `${poles} ${poles === 1 ? 'pole' : 'poles'}, ${count} positions`,
    rows: names.map((pole) => [...outer.map((lug) => `${pole}${lug}`), `${pole}C`]),
    positions: placeNames(count).map((name, at) => ({
      name,
      title: entitled(name),
      joins: names.map((pole): Join => [`${pole}${at + 1}`, `${pole}C`]),
    })),
  };
}

/** Poles with a common between two outer lugs; `middle` lists which outer lug each pole joins between the ends. */
function lever(
  id: string,
  title: string,
  poles: number,
  middle?: (pole: number) => readonly (1 | 2)[],
): ContactTable {
  const names = poleNames(poles);
  const at = (side: 1 | 2): readonly Join[] => names.map((pole) => [`${pole}C`, `${pole}${side}`]);
  const [first, ...rest] = placeNames(middle ? 3 : 2).map((name) => ({ name, title: name }));
  const between = names.flatMap((pole, index): Join[] =>
    (middle?.(index) ?? []).map((side) => [`${pole}C`, `${pole}${side}`]),
  );
  return {
    id,
    title,
    // One pole has its lugs in a row; more stand side by side.
    rows:
      poles === 1
        ? [[1, 'C', 2].map((place) => `A${place}`)]
        : [1, 'C', 2].map((place) => names.map((pole) => `${pole}${place}`)),
    positions: [
      { ...first!, joins: at(1) },
      ...(middle ? [{ ...rest[0]!, joins: between }] : []),
      { ...rest.at(-1)!, joins: at(2) },
    ],
  };
}

/** Mini toggles, slides and the switches on pots: usual tables (common practice, no source). */
export const leverTables = [
  lever('dpdt', 'on-on, two poles', 2),
  lever('spdt', 'on-on, one pole', 1),
  lever('dpdt-centre-off', 'on-off-on, two poles', 2, () => []),
  lever('spdt-centre-off', 'on-off-on, one pole', 1, () => []),
  // In the middle one pole has moved and the other has not.
  lever('dpdt-on-on-on', 'on-on-on, two poles', 2, (pole) => (pole === 0 ? [2] : [1])),
  lever('spdt-both', 'on-both-on, one pole', 1, () => [1, 2]),
  lever('tpdt', 'on-on, three poles', 3),
  lever('fpdt', 'on-on, four poles', 4),
  {
    id: 'spst',
    title: 'on-off, two lugs',
    rows: [['1', '2']],
    positions: [
      { name: 'off', title: 'off', joins: [] },
      { name: 'on', title: 'on', joins: [['1', '2']] },
    ],
  },
] as const satisfies readonly ContactTable[];

/** Push-to-make joins its lugs while it is pressed; push-to-break parts them. */
export const buttonTables: readonly ContactTable[] = [
  {
    id: 'make',
    title: 'push-to-make',
    rows: [['1', '2']],
    positions: [
      { name: 'off', title: 'not pressed', joins: [] },
      { name: 'on', title: 'pressed', joins: [['1', '2']] },
    ],
  },
  {
    id: 'break',
    title: 'push-to-break',
    rows: [['1', '2']],
    positions: [
      { name: 'off', title: 'not pressed', joins: [['1', '2']] },
      { name: 'on', title: 'pressed', joins: [] },
    ],
  },
];

/** Rotary switches as they are sold, and lever selectors with a contact of their own in each position. */
export const stepTables: readonly ContactTable[] = [
  throws(2, 4),
  throws(4, 5),
  throws(2, 6),
  throws(1, 12),
  throws(3, 4),
  throws(4, 3),
];
