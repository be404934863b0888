import { layoutOf } from '../../src/circuit/netlist.ts';
import { circuitOf, type SeenLead, type SeenPickup } from '../../src/circuit/seen-pickup.ts';
import { ohms } from '../../src/circuit/units.ts';
import type { Ask } from '../../src/readings/reading.ts';
import { asksOf } from '../../src/sorter/asks.ts';
import { type Candidate, candidatesOf } from '../../src/sorter/candidates.ts';
import { PickupPredictor } from '../../src/sorter/foretelling.ts';
import { worthOf } from '../../src/sorter/question.ts';
import { Dice } from '../simulated/index.ts';

/**
 * Expected number of readings to know which lead does what, when nothing is broken, coils are alike and no reading goes wrong:
 * by the best policy there is (exhaustive search), and by ours (the same rule that chooses a reading in the app).
 */
export interface Optimum {
  readonly leads: number;
  readonly optimum: number;
  readonly ours: number;
  /** How many assignments the search runs over. */
  readonly assignments: number;
}

interface Model {
  readonly candidates: readonly Candidate[];
  readonly weights: readonly number[];
  readonly answers: readonly number[];
  readonly asks: readonly Ask[];
  /** Outcome by ask and candidate. */
  readonly outcomes: readonly (readonly number[])[];
  readonly predictor: PickupPredictor;
  /** Renamings of leads, coils and ends that leave the model as it is, as permutations of candidates. */
  readonly symmetries: readonly (readonly number[])[];
}

/** Two coils on `count` insulated leads: 3 with a lead at the join, 4, and 5 with one on the plate. */
export function optimumFor(count: 3 | 4 | 5): Optimum {
  const model = modelOf(count);
  const all = model.candidates.map((_, at) => at);
  return {
    leads: count,
    optimum: best(model, all, knownOf(model)),
    ours: ours(model, all, new Map()),
    assignments: all.length,
  };
}

function modelOf(count: number): Model {
  const leads = Array.from(
    { length: count },
    (_, at): SeenLead => ({ id: `lead${at}`, colour: `${at}`, what: 'wire' }),
  );
  const seen: SeenPickup = { coils: 2, leads, plate: count === 5, cover: false };
  const layout = layoutOf(circuitOf(seen));
  const predictor = new PickupPredictor(layout, {
    accuracy: 0.01,
    leads: ohms(0.3),
    limit: ohms(20e6),
  });
  const names = count === 3 ? ['linked', 'opposed'] : ['separate'];
  const candidates = candidatesOf(seen, layout).filter(
    ({ trouble, roles, assignment }) =>
      trouble === null &&
      !roles.includes('nothing') &&
      names.includes(assignment.inside.name) &&
      (count === 5) === roles.includes('plate'),
  );
  // Of an ask and the same with the probes exchanged, one is enough where nothing goes wrong.
  const asks = asksOf(seen).filter((ask) => !('red' in ask) || ask.red < ask.black);
  const outcomes = asks.map((ask) => {
    const ids = new Map<string, number>();
    return candidates.map((candidate) => {
      const [one] = predictor.predict(candidate, ask);
      const name =
        one?.type === 'level'
          ? `${Math.round(one.mean * 20)}`
          : one?.type === 'threshold'
            ? `${one.ohms < 60}`
            : one?.type === 'choice'
              ? Object.entries(one.chances).reduce((x, y) => (y[1] > x[1] ? y : x))[0]
              : 'over';
      const id = ids.get(name) ?? ids.size;
      ids.set(name, id);
      return id;
    });
  });
  const keys = candidates.map(({ roles }) => roles.join());
  const total = candidates.reduce((sum, { logPrior }) => sum + Math.exp(logPrior), 0);
  return {
    candidates,
    weights: candidates.map(({ logPrior }) => Math.exp(logPrior) / total),
    answers: keys.map((key) => keys.indexOf(key)),
    asks,
    outcomes,
    predictor,
    symmetries: symmetriesOf(candidates, count),
  };
}

/** Renaming that maps the list of candidates onto itself with equal priors; any other is left out. */
function symmetriesOf(candidates: readonly Candidate[], count: number): number[][] {
  const place = new Map(candidates.map(({ roles }, at) => [roles.join(), at]));
  const flip = (coil: string) => (role: string) =>
    role === `${coil}.start`
      ? `${coil}.finish`
      : role === `${coil}.finish`
        ? `${coil}.start`
        : role;
  const exchange = (role: string) =>
    role.startsWith('a.')
      ? `b${role.slice(1)}`
      : role.startsWith('b.')
        ? `a${role.slice(1)}`
        : role;
  const renamings = [false, true].flatMap((x) =>
    [false, true].flatMap((a) =>
      [false, true].map((b) => (role: string) => {
        const flipped = (b ? flip('b') : String)((a ? flip('a') : String)(role));
        return x ? exchange(flipped) : flipped;
      }),
    ),
  );
  const orders = permutations(Array.from({ length: count }, (_, at) => at));
  return orders.flatMap((order) =>
    renamings.flatMap((rename) => {
      const map = candidates.map(({ roles, logPrior }) => {
        const to = place.get(order.map((at) => rename(roles[at] as string)).join());
        return to !== undefined && Math.abs((candidates[to]?.logPrior ?? 0) - logPrior) < 1e-9
          ? to
          : -1;
      });
      return map.includes(-1) ? [] : [map];
    }),
  );
}

function permutations(list: readonly number[]): number[][] {
  if (list.length === 0) return [[]];
  return list.flatMap((first) =>
    permutations(list.filter((one) => one !== first)).map((rest) => [first, ...rest]),
  );
}

const settled = ({ answers }: Model, set: readonly number[]): boolean =>
  set.every((at) => answers[at] === answers[set[0] as number]);

const massOf = ({ weights }: Model, set: readonly number[]): number =>
  set.reduce((sum, at) => sum + (weights[at] as number), 0);

function split({ outcomes }: Model, ask: number, set: readonly number[]): number[][] {
  const parts: number[][] = [];
  for (const at of set) {
    const outcome = outcomes[ask]?.[at] as number;
    let part = parts[outcome];
    if (!part) {
      part = [];
      parts[outcome] = part;
    }
    part.push(at);
  }
  return parts.filter((part) => part !== undefined);
}

/** No policy needs fewer: every reading has at most `MOST` outcomes, and answers are the leaves of its tree (Huffman). */
const MOST = 3;
function bound(model: Model, set: readonly number[]): number {
  const mass = new Map<number, number>();
  for (const at of set) {
    const answer = model.answers[at] as number;
    mass.set(answer, (mass.get(answer) ?? 0) + (model.weights[at] as number));
  }
  const total = massOf(model, set);
  let list = [...mass.values()].map((one) => one / total);
  while (list.length > 1 && (list.length - 1) % (MOST - 1) !== 0) list.push(0);
  let depth = 0;
  while (list.length > 1) {
    list.sort((x, y) => x - y);
    const joined = list.slice(0, MOST).reduce((sum, one) => sum + one, 0);
    depth += joined;
    list = [...list.slice(MOST), joined];
  }
  return depth;
}

/** Least expected number of readings from here, by exhaustive search. Sets that a renaming maps onto each other are one. */
function best(model: Model, set: readonly number[], known: Known): number {
  if (settled(model, set)) return 0;
  const key = known.nameOf(set);
  const before = known.values.get(key);
  if (before !== undefined) return before;
  const total = massOf(model, set);
  const seen = new Set<string>();
  const options = model.asks
    .map((_, ask) => split(model, ask, set))
    .filter((parts) => parts.length > 1)
    .filter((parts) => {
      const name = parts.map(known.nameOf).sort().join('|');
      return !seen.has(name) && seen.add(name);
    })
    .map((parts) => ({
      parts,
      shares: parts.map((part) => massOf(model, part) / total),
      bounds: parts.map((part) => known.values.get(known.nameOf(part)) ?? bound(model, part)),
    }))
    .map((one) => ({
      ...one,
      least: 1 + one.shares.reduce((sum, share, at) => sum + share * (one.bounds[at] as number), 0),
    }))
    .sort((x, y) => x.least - y.least);
  let found = Number.POSITIVE_INFINITY;
  for (const { parts, shares, bounds, least } of options) {
    if (least >= found - 1e-12) break;
    let value = least;
    for (const [at, part] of parts.entries()) {
      value += (shares[at] as number) * (best(model, part, known) - (bounds[at] as number));
      if (value >= found - 1e-12) break;
    }
    found = Math.min(found, value);
  }
  known.values.set(key, found);
  return found;
}

/** What was searched already, by a name that is the same for all sets that a renaming maps onto each other. */
interface Known {
  readonly values: Map<string, number>;
  nameOf(set: readonly number[]): string;
}

/**
 * A set's name is the sum of a hash over all its images: no order of the images or of the members changes it. Two 52-bit sums
 * make a clash among some hundred thousand sets less likely than one in 10^18.
 */
function knownOf({ symmetries, candidates }: Model): Known {
  const dice = new Dice('names of sets');
  const random = () => Float64Array.from(candidates, () => dice.throw());
  const tables = [random(), random()].map((weights) =>
    symmetries.map((map) => Float64Array.from(map, (to) => weights[to] as number)),
  );
  const names = new Map<string, string>();
  return {
    values: new Map(),
    nameOf(set) {
      const own = String.fromCharCode(...set);
      const before = names.get(own);
      if (before !== undefined) return before;
      const sums = tables.map((maps) => {
        let total = 0;
        for (const map of maps) {
          let sum = 0;
          for (const at of set) sum += map[at] as number;
          total += Math.sin(sum * 1e3);
        }
        return total.toFixed(7);
      });
      const name = `${set.length} ${sums.join(' ')}`;
      names.set(own, name);
      return name;
    },
  };
}

/** Expected number of readings by our rule. */
function ours(model: Model, set: readonly number[], known: Map<string, number>): number {
  if (settled(model, set)) return 0;
  const key = set.join();
  const before = known.get(key);
  if (before !== undefined) return before;
  const total = massOf(model, set);
  const telling = model.asks.filter((_, ask) => split(model, ask, set).length > 1);
  const standings = set.map((at) => ({
    candidate: model.candidates[at] as Candidate,
    probability: (model.weights[at] as number) / total,
    answer: model.answers[at] as number,
  }));
  const [first] = worthOf(model.predictor, standings, telling, []);
  const parts = split(model, model.asks.indexOf(first?.ask as Ask), set);
  const value =
    1 +
    parts.reduce((sum, part) => sum + (massOf(model, part) / total) * ours(model, part, known), 0);
  known.set(key, value);
  return value;
}
