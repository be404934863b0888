import type { Switch, SwitchPosition } from '../parts/part.ts';

/** Each pole of a blade joins the lugs of the chosen pickups to its common. */
const chosen = (name: string, title: string, ...lugs: readonly number[]): SwitchPosition => ({
  name,
  title,
  joins: ['A', 'B'].flatMap((pole) => lugs.map((lug) => [`${pole}${lug}`, `${pole}C`] as const)),
});

/** Two poles on either side of the frame, each with three outer lugs and a common. */
const blade = (positions: readonly SwitchPosition[]): Switch => ({
  kind: 'switch',
  id: 'selector',
  title: 'selector',
  style: 'blade',
  frame: true,
  rows: [
    ['A1', 'A2', 'A3', 'AC'],
    ['BC', 'B3', 'B2', 'B1'],
  ],
  positions,
});

/** Bridge on lug 1, neck on lug 3. */
export const blade3 = blade([
  chosen('bridge', 'bridge', 1),
  chosen('both', 'both pickups', 1, 3),
  chosen('neck', 'neck', 3),
]);

/** Bridge on lug 1, middle on lug 2, neck on lug 3; the in-between positions bridge neighbours. */
export const blade5 = blade([
  chosen('1', 'bridge', 1),
  chosen('2', 'bridge and middle', 1, 2),
  chosen('3', 'middle', 2),
  chosen('4', 'middle and neck', 2, 3),
  chosen('5', 'neck', 3),
]);

/** Two outer lugs, one common: neck on A, bridge on B. */
export const toggle3: Switch = {
  kind: 'switch',
  id: 'selector',
  title: 'selector',
  style: 'toggle',
  rows: [['A', 'C', 'B']],
  frame: true,
  positions: [
    { name: 'neck', title: 'neck', joins: [['A', 'C']] },
    {
      name: 'both',
      title: 'both pickups',
      joins: [
        ['A', 'C'],
        ['B', 'C'],
      ],
    },
    { name: 'bridge', title: 'bridge', joins: [['B', 'C']] },
  ],
};

/** Each pole joins its common to one outer lug of its own in each position: `A1` ... `AC`. */
const steps = (
  style: Switch['style'],
  poles: string,
  titles: readonly string[],
): Pick<Switch, 'kind' | 'id' | 'title' | 'style' | 'rows' | 'positions'> => ({
  kind: 'switch',
  id: 'selector',
  title: 'selector',
  style,
  rows: [...poles].map((pole) => [...titles.map((_, at) => `${pole}${at + 1}`), `${pole}C`]),
  positions: titles.map((title, at) => ({
    name: `${at + 1}`,
    title,
    joins: [...poles].map((pole) => [`${pole}${at + 1}`, `${pole}C`] as const),
  })),
});

/** A rotary selector of two poles; what its positions bring is a matter of jumpers. */
export const rotary6 = (
  titles: readonly [string, string, string, string, string, string],
): Switch => ({
  ...steps('rotary', 'AB', titles),
  frame: false,
});

/** A lever selector with a contact of its own in each position, as are those of four positions and those of many poles: two poles to a wafer, end to end. */
export function steppedBlade(poles: 'AB' | 'ABCD', titles: readonly string[]): Switch {
  const made = steps('blade', poles, titles);
  const [a = [], b = [], c, d] = made.rows;
  const wafer = (one: readonly string[], other: readonly string[]) => [
    ...one.slice(0, -1).reverse(),
    ...one.slice(-1),
    ...other.slice(-1),
    ...other.slice(0, -1),
  ];
  const rows = c && d ? [wafer(a, b), wafer(c, d)] : [a, b];
  return { ...made, rows, frame: true };
}

/** On-on-on, two poles: in the middle pole A has moved and pole B has not. */
export const onOnOn = (
  id: string,
  title: string,
  [up, middle, down]: readonly [string, string, string],
): Switch => ({
  kind: 'switch',
  id,
  title,
  style: 'mini-toggle',
  rows: [
    ['A1', 'B1'],
    ['AC', 'BC'],
    ['A2', 'B2'],
  ],
  positions: [
    {
      name: 'up',
      title: up,
      joins: [
        ['A1', 'AC'],
        ['B1', 'BC'],
      ],
    },
    {
      name: 'middle',
      title: middle,
      joins: [
        ['A2', 'AC'],
        ['B1', 'BC'],
      ],
    },
    {
      name: 'down',
      title: down,
      joins: [
        ['A2', 'AC'],
        ['B2', 'BC'],
      ],
    },
  ],
  frame: false,
});
