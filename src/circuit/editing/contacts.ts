import { MOST } from '../limits.ts';
import type { LugName, Switch, SwitchPosition } from '../parts/part.ts';
import { entitled } from './tray/contact-tables.ts';

/** How many lugs a switch has: `rows` poles, each a row of `columns`. */
export interface LugCount {
  readonly rows: number;
  readonly columns: number;
}

export const lugCount = ({ rows }: Pick<Switch, 'rows'>): LugCount => ({
  rows: rows.length,
  columns: Math.max(1, ...rows.map((row) => row.length)),
});

/** In one position two lugs are joined, or no longer. Two lugs have one contact, whichever is named first. */
export function withJoin(
  part: Switch,
  at: number,
  a: LugName,
  b: LugName,
  joined: boolean,
): Switch {
  const order = part.rows.flat();
  const [first, second] = order.indexOf(a) <= order.indexOf(b) ? [a, b] : [b, a];
  // A contact keeps the way it is named elsewhere in the table: it is one thing that can fail.
  const known = part.positions
    .flatMap(({ joins }) => joins)
    .find(([x, y]) => (x === a && y === b) || (x === b && y === a));
  const join = known ?? ([first, second] as const);
  return changed(part, at, ({ joins, ...rest }) => {
    const others = joins.filter(([x, y]) => x !== join[0] || y !== join[1]);
    return { ...rest, joins: joined && a !== b ? [...others, join] : others };
  });
}

/** One more position at the end, which joins nothing yet. The same switch where there is no room. */
export function withPosition(part: Switch): Switch {
  if (part.positions.length >= MOST.positions) return part;
  const taken = new Set(part.positions.map((position) => position.name));
  const name = numbered('', part.positions.length + 1, taken);
  return {
    ...part,
    positions: [...part.positions, { name, title: entitled(name), joins: [] }],
  };
}

/** Without its last position; a switch keeps one. */
export const withoutLastPosition = (part: Switch): Switch =>
  part.positions.length > 1 ? { ...part, positions: part.positions.slice(0, -1) } : part;

/**
 * Rows of so many lugs. Lugs that there are keep their names and places as far as there is room; what ended on a lug
 * that is gone is joined no more.
 */
export function withLugs(part: Switch, { rows, columns }: LugCount): Switch {
  const taken = new Set(part.rows.flat());
  const fresh = (row: number, column: number): LugName => {
    const name = numbered('ABCDEFGHIJKL'[row] ?? 'L', column + 1, taken);
    taken.add(name);
    return name;
  };
  const next = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => part.rows[row]?.[column] ?? fresh(row, column)),
  );
  const left = new Set(next.flat());
  return {
    ...part,
    rows: next,
    positions: part.positions.map((position) => ({
      ...position,
      joins: position.joins.filter(([a, b]) => left.has(a) && left.has(b)),
    })),
  };
}

/** The first name from this number on that is not taken. */
function numbered(before: string, from: number, taken: ReadonlySet<string>): string {
  let number = from;
  while (taken.has(`${before}${number}`)) number += 1;
  return `${before}${number}`;
}

const changed = (
  part: Switch,
  at: number,
  to: (position: SwitchPosition) => SwitchPosition,
): Switch => ({
  ...part,
  positions: part.positions.map((one, index) => (index === at ? to(one) : one)),
});
