import type { NodeName } from '../circuit/edit.ts';
import type { SeenPickup } from '../circuit/seen-pickup.ts';

/**
 * What a lead turns out to be, as far as readings can tell:
 * - `a.start`, `a.finish`, `b.start`, `b.finish`: the minus and the plus end of the screw or slug coil (steel pulled off); of a
 *   single coil `a`
 * - `pair.start`, `pair.finish`: the ends of two coils joined inside, where nothing tells which coil is next to it
 * - `link`: where two coils are joined inside; `tap`: somewhere along a single coil
 * - `a.open`, `b.open`, `pair.open`: one of the leads of a coil that reads open: the break is in the coil or in one of its leads
 * - `plate`, `cover`: metal; `nothing`: no connection to anything, be it a spare or the broken end of a tapped coil
 */
export type Role =
  | `${'a' | 'b' | 'pair'}.${'start' | 'finish' | 'open'}`
  | 'link'
  | 'tap'
  | 'plate'
  | 'cover'
  | 'nothing';

/** A place inside where a lead can start. */
interface Post {
  readonly lug: NodeName;
  readonly role: Role;
  /** The role when coil a, or coil b, reads open. */
  readonly open: Readonly<Record<'a' | 'b', Role>>;
}

/** One way a pickup may be built inside. */
export interface Inside {
  readonly name:
    | 'separate'
    | 'linked'
    | 'opposed'
    | 'closed'
    | 'closed-opposed'
    | 'single'
    | 'tapped';
  /** Lugs joined inside. */
  readonly joins: readonly (readonly [NodeName, NodeName])[];
  /** Places for insulated leads, all of them used. */
  readonly posts: readonly Post[];
  /** How frequent among pickups of this look with as many leads; ratios count (common practice, no source). */
  readonly weight: number;
  /** Coils that carry signal. */
  readonly coils: readonly ('a' | 'b')[];
}

const post = (lug: NodeName, role: Role, a: Role, b: Role): Post => ({ lug, role, open: { a, b } });
const [aStart, aFinish] = [
  post('a.start', 'a.start', 'a.open', 'a.start'),
  post('a.finish', 'a.finish', 'a.open', 'a.finish'),
];
const [bStart, bFinish] = [
  post('b.start', 'b.start', 'b.start', 'b.open'),
  post('b.finish', 'b.finish', 'b.finish', 'b.open'),
];

const insides: Readonly<Record<SeenPickup['coils'], readonly Inside[]>> = {
  1: [
    { name: 'single', joins: [], posts: [aStart, aFinish], weight: 1, coils: ['a'] },
    {
      name: 'tapped',
      joins: [['a.finish', 'b.start']],
      posts: [
        post('a.start', 'a.start', 'nothing', 'a.start'),
        post('a.finish', 'tap', 'a.start', 'a.finish'),
        post('b.finish', 'a.finish', 'a.finish', 'nothing'),
      ],
      weight: 1,
      coils: ['a', 'b'],
    },
  ],
  2: [
    {
      name: 'separate',
      joins: [],
      posts: [aStart, aFinish, bStart, bFinish],
      weight: 1,
      coils: ['a', 'b'],
    },
    linked('linked', 'a.finish', 'b.start', 0.45),
    linked('linked', 'b.finish', 'a.start', 0.45),
    // Joined so that the signals fight: a coil that went in the wrong way round.
    linked('opposed', 'a.finish', 'b.finish', 0.05),
    linked('opposed', 'a.start', 'b.start', 0.05),
    closed('closed', 'a.finish', 'b.start', 'a.start', 'b.finish', 0.94),
    // Which lead is plus then depends on the coil: the screw coil's end names it.
    closed('closed-opposed', 'a.finish', 'b.finish', 'a.start', 'b.start', 0.06),
  ],
};

/** Two coils in series with a lead at the join. A coil's other end is the one that is not joined. */
function linked(name: 'linked' | 'opposed', x: string, y: string, weight: number): Inside {
  const other = (lug: string) =>
    lug.endsWith('start') ? lug.replace('start', 'finish') : lug.replace('finish', 'start');
  const coilOf = (lug: string) => lug[0] as 'a' | 'b';
  const outer = (lug: string): Post => {
    const coil = coilOf(lug);
    const dead = `${coil}.open` as Role;
    return post(
      lug,
      lug as Role,
      coil === 'a' ? dead : (lug as Role),
      coil === 'b' ? dead : (lug as Role),
    );
  };
  const [a, b] = coilOf(x) === 'a' ? [x, y] : [y, x];
  return {
    name,
    joins: [[x, y]],
    // With one coil open the join is the end of the other one.
    posts: [outer(other(x)), post(x, 'link', b as Role, a as Role), outer(other(y))],
    weight,
    coils: ['a', 'b'],
  };
}

function closed(
  name: 'closed' | 'closed-opposed',
  x: string,
  y: string,
  first: string,
  last: string,
  weight: number,
): Inside {
  const role = (end: 'start' | 'finish'): Role => (name === 'closed' ? `pair.${end}` : `a.${end}`);
  return {
    name,
    joins: [[x, y]],
    posts: [
      post(first, role('start'), 'pair.open', 'pair.open'),
      post(last, role('finish'), 'pair.open', 'pair.open'),
    ],
    weight,
    coils: ['a', 'b'],
  };
}

export const insidesOf = (seen: SeenPickup): readonly Inside[] => insides[seen.coils];
