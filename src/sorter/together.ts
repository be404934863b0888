import type { CoilId } from '../circuit/seen-pickup.ts';
import type { Seen } from '../readings/reading.ts';
import { humOf, match, type TappedCoil } from './match.ts';

/** One of the pickups that play together, with what was seen of its coils. */
export interface Playing {
  readonly id: string;
  readonly coils: 1 | 2;
  /** In the order in which they were seen. */
  readonly seen: readonly { readonly coil: CoilId; readonly seen: Seen }[];
}

/** What to do next with one coil. */
export interface CoilAsk {
  readonly pickup: string;
  readonly coil: CoilId;
  readonly kind: 'tap' | 'pole';
  /** The same was asked before, and what was seen is not settled. */
  readonly again: boolean;
}

/** A tap is wrong about one time in fourteen (common practice, no source): a sign stands when two taps agree on it. */
const AGREE = 2;
/** After so many taps without two that agree the coil is left out. */
const MOST_TAPS = 5;

const coilIds = ({ coils }: Pick<Playing, 'coils'>): readonly CoilId[] =>
  coils === 2 ? ['a', 'b'] : ['a'];

type Settled<T> = { readonly is: 'open' | 'none' } | { readonly is: 'known'; readonly value: T };

function tapOf({ seen }: Playing, coil: CoilId): Settled<1 | -1> {
  const words = seen.flatMap((one) =>
    one.coil === coil && one.seen.kind === 'tap' ? [one.seen.swing] : [],
  );
  const count = (word: string) => words.filter((one) => one === word).length;
  const [plus, minus, nothing] = ['plus', 'minus', 'nothing'].map(count) as [
    number,
    number,
    number,
  ];
  if (Math.max(plus, minus) >= AGREE && plus !== minus)
    return { is: 'known', value: plus > minus ? 1 : -1 };
  return { is: nothing >= AGREE || words.length >= MOST_TAPS ? 'none' : 'open' };
}

function poleOf({ seen }: Playing, coil: CoilId): Settled<1 | -1> {
  const last = seen.findLast((one) => one.coil === coil && one.seen.kind === 'pole')?.seen;
  if (last?.kind !== 'pole') return { is: 'open' };
  return last.pole === 'none'
    ? { is: 'none' }
    : { is: 'known', value: last.pole === 'north' ? 1 : -1 };
}

/**
 * Pickup by pickup, as each is set once: its taps until two agree, then its poles where there is a compass. Null when all is known
 * that can be.
 */
export function nextCoilAsk(list: readonly Playing[], compass = true): CoilAsk | null {
  for (const playing of list)
    for (const kind of compass ? (['tap', 'pole'] as const) : (['tap'] as const))
      for (const coil of coilIds(playing)) {
        const known = kind === 'tap' ? tapOf(playing, coil) : poleOf(playing, coil);
        if (known.is === 'open')
          return {
            pickup: playing.id,
            coil,
            kind,
            again: playing.seen.some((one) => one.coil === coil && one.seen.kind === kind),
          };
      }
  return null;
}

/** What is known of one pickup: its coils with tap and pole, or what is amiss with it. */
export interface Heard {
  readonly id: string;
  readonly coils: readonly (TappedCoil & { readonly coil: CoilId })[];
  /** Its coils swing against each other, a coil shows no swing, or a pole could not be told. */
  readonly amiss: 'coils fight' | 'no swing' | 'no pole' | null;
}

export function heardOf(playing: Playing): Heard {
  const coils = coilIds(playing).map((coil) => ({
    coil,
    tap: tapOf(playing, coil),
    pole: poleOf(playing, coil),
  }));
  const known = coils.flatMap(({ coil, tap, pole }) =>
    tap.is === 'known'
      ? [{ coil, tap: tap.value, pole: pole.is === 'known' ? pole.value : null }]
      : [],
  );
  const amiss = coils.some(({ tap }) => tap.is !== 'known')
    ? 'no swing'
    : known.some(({ tap }) => tap !== known[0]?.tap)
      ? 'coils fight'
      : coils.some(({ pole }) => pole.is !== 'known')
        ? 'no pole'
        : null;
  return { id: playing.id, coils: known, amiss };
}

/** What is done to one pickup so that it plays with the rest. */
export type Turn = 'none' | 'leads' | 'magnet';

export interface Pair {
  readonly first: string;
  readonly second: string;
  readonly fights: boolean;
  /** Share of one coil's hum that is left per coil when both play, as they are: 0 cancels, 1 adds in full; null where a pole is not known. */
  readonly hum: number | null;
}

export interface Together {
  readonly pairs: readonly Pair[];
  /** The fewest turns after which no pair fights and as many as can be cancel hum. */
  readonly mend: Readonly<Record<string, Turn>>;
  /** The pairs when that is done. */
  readonly mended: readonly Pair[];
}

/**
 * Which pairs fight, and what to turn. Leads and magnet turn the tap either way; only leads turn the winding, and with it the hum
 * (Faraday's law, as in `match`). `fixed` is left as it is. Pickups that show no swing, or fight inside, take no part; one whose pole
 * is not known does, for its phase alone.
 */
export function together(all: readonly Heard[], fixed: string | null = null): Together {
  const list = all.filter(({ amiss }) => amiss === null || amiss === 'no pole');
  const pairs = pairsOf(list);
  let best: { turns: readonly Turn[]; cost: number; after: readonly Pair[] } = {
    turns: list.map((): Turn => 'none'),
    cost: Number.POSITIVE_INFINITY,
    after: pairs,
  };
  const ways: readonly Turn[] = ['none', 'leads', 'magnet'];
  const search = (turns: readonly Turn[]): void => {
    const next = list[turns.length];
    if (next) {
      for (const way of next.id === fixed ? ways.slice(0, 1) : ways) search([...turns, way]);
      return;
    }
    const after = pairsOf(list.map((one, at) => turnedBy(one, turns[at] as Turn)));
    // Fights first, then hum; then the fewest turns, and leads rather than a magnet.
    const cost = after.reduce(
      (sum, { fights, hum }) => sum + (fights ? 1000 : 0) + 10 * (hum ?? 0),
      turns.reduce((sum, turn) => sum + (turn === 'none' ? 0 : turn === 'leads' ? 1 : 1.5), 0),
    );
    if (cost < best.cost) best = { turns, cost, after };
  };
  search([]);
  return {
    pairs,
    mend: Object.fromEntries(list.map(({ id }, at) => [id, best.turns[at] as Turn])),
    mended: best.after,
  };
}

/** A pickup after its leads or its magnet were turned. */
export const turnedBy = (heard: Heard, turn: Turn): Heard =>
  turn === 'none'
    ? heard
    : {
        ...heard,
        coils: heard.coils.map((coil) => ({
          ...coil,
          tap: -coil.tap as 1 | -1,
          pole: turn === 'magnet' && coil.pole !== null ? (-coil.pole as 1 | -1) : coil.pole,
        })),
      };

function pairsOf(list: readonly Heard[]): readonly Pair[] {
  return list.flatMap((first, at) =>
    list.slice(at + 1).map((second): Pair => {
      const { turn } = match(first.coils, second.coils);
      const hum = humOf([...first.coils, ...second.coils]);
      return { first: first.id, second: second.id, fights: turn, hum };
    }),
  );
}
