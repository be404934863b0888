import type { NodeName } from '../circuit/edit.ts';
import type { SeenLead, SeenPickup } from '../circuit/seen-pickup.ts';
import { type Inside, insidesOf, type Role } from './inside.ts';

/** Where one lead starts inside; `lug` is null where it is joined to nothing. */
export interface Placed {
  readonly lead: SeenLead;
  readonly lug: NodeName | null;
  readonly role: Role;
  readonly open: Readonly<Record<'a' | 'b', Role>>;
}

/** One healthy pickup that would look like the one on the mat. */
export interface Assignment {
  readonly inside: Inside;
  /** In the order of the leads. */
  readonly placed: readonly Placed[];
  /** A coil end that is joined to the plate, as in two-conductor cable whose braid is the cold lead. */
  readonly onPlate: NodeName | null;
  /** Relative to the others; sums to 1 over all. */
  readonly prior: number;
}

type Spot = Omit<Placed, 'lead'>;
const metal = (role: 'plate' | 'cover'): Spot => ({
  lug: `${role}.metal`,
  role,
  open: { a: role, b: role },
});
/** A coil end that is joined to the plate is plate alone where its coil is open. */
const onMetal = (cold: Spot): Spot => {
  const left = (role: Role): Role =>
    role.endsWith('.open') || role === 'nothing' ? 'plate' : role;
  return { ...cold, open: { a: left(cold.open.a), b: left(cold.open.b) } };
};
const nothing: Spot = { lug: null, role: 'nothing', open: { a: 'nothing', b: 'nothing' } };

/** Shares below are estimates of ours (common practice, no source): how often a cable has a lead of that use. */
const USE = {
  plateWire: 0.3,
  plateWireBesideBare: 0.1,
  coverWire: 0.3,
  spareWire: 0.02,
  bareCold: 0.4,
  bareSpare: 0.04,
};
/** What is this much rarer than the commonest takes two oddities at once, and is left to what is not modelled. */
const RAREST = 0.03;

/** Every way in which these leads can be joined to coils and metal. */
export function assignmentsOf(seen: SeenPickup): readonly Assignment[] {
  const wires = seen.leads.filter(({ what }) => what !== 'bare');
  const bares = seen.leads.filter(({ what }) => what === 'bare');
  const found: Assignment[] = [];
  for (const inside of insidesOf(seen)) {
    const coilPosts: readonly Spot[] = inside.posts;
    const left = wires.length - coilPosts.length;
    for (const { spots, weight } of left >= 0 ? fillers(seen, left) : []) {
      const ways = orders(wires, [...coilPosts, ...spots], inside);
      for (const bare of bareUses(bares))
        for (const way of ways)
          found.push({
            inside,
            placed: inOrder(seen, [...way.placed, ...bare.placed]),
            onPlate: null,
            prior: (inside.weight * weight * bare.weight * way.weight) / ways.length,
          });
    }
    // The braid is one end of the coil and the plate at once.
    if (left === -1 && bares.length > 0)
      for (const cold of coilPosts.filter(
        ({ role }) => role.endsWith('.start') || role.endsWith('.finish'),
      ))
        for (const bare of bares) {
          const ways = orders(
            wires,
            coilPosts.filter((spot) => spot !== cold),
            inside,
          );
          const rest = bareUses(bares.filter((one) => one !== bare));
          for (const { placed, weight } of rest)
            for (const way of ways)
              found.push({
                inside,
                placed: inOrder(seen, [...way.placed, { lead: bare, ...onMetal(cold) }, ...placed]),
                onPlate: cold.lug,
                prior:
                  (inside.weight * USE.bareCold * weight * way.weight) /
                  (2 * ways.length * bares.length),
              });
        }
  }
  const most = Math.max(...found.map(({ prior }) => prior));
  const kept = found.filter(({ prior }) => prior >= RAREST * most);
  const total = kept.reduce((sum, { prior }) => sum + prior, 0);
  return kept.map((one) => ({ ...one, prior: one.prior / total }));
}

/** What insulated leads may be for that no coil has a place for: the plate, the cover, or nothing. */
function fillers(
  seen: SeenPickup,
  left: number,
): readonly { spots: readonly Spot[]; weight: number }[] {
  const bare = seen.leads.some(({ what }) => what === 'bare');
  const found: { spots: readonly Spot[]; weight: number }[] = [];
  for (const plates of [0, 1])
    for (const covers of seen.cover ? [0, 1] : [0]) {
      const spares = left - plates - covers;
      if (spares < 0) continue;
      found.push({
        spots: [
          ...(plates ? [metal('plate')] : []),
          ...(covers ? [metal('cover')] : []),
          ...Array.from({ length: spares }, () => nothing),
        ],
        weight:
          (bare ? USE.plateWireBesideBare : USE.plateWire) ** plates *
          USE.coverWire ** covers *
          USE.spareWire ** spares,
      });
    }
  return found;
}

function bareUses(
  bares: readonly SeenLead[],
): readonly { placed: readonly Placed[]; weight: number }[] {
  return bares.reduce<readonly { placed: readonly Placed[]; weight: number }[]>(
    (uses, lead) =>
      uses.flatMap(({ placed, weight }) => [
        { placed: [...placed, { lead, ...metal('plate') }], weight: weight * (1 - USE.bareSpare) },
        { placed: [...placed, { lead, ...nothing }], weight: weight * USE.bareSpare },
      ]),
    [{ placed: [], weight: 1 }],
  );
}

/** Wires on spots in every order, alike spots once. A pair that the factory joined is the join of two coils, but for one time in thirty. */
function orders(
  wires: readonly SeenLead[],
  spots: readonly Spot[],
  inside: Inside,
): readonly { placed: readonly Placed[]; weight: number }[] {
  const ways: { placed: readonly Placed[]; weight: number }[] = [];
  const place = (
    at: number,
    left: readonly Spot[],
    placed: readonly Placed[],
    weight: number,
  ): void => {
    const lead = wires[at];
    if (!lead) {
      ways.push({ placed, weight });
      return;
    }
    const tried = new Set<NodeName | null>();
    left.forEach((spot, index) => {
      if (tried.has(spot.lug)) return;
      tried.add(spot.lug);
      const share = lead.what !== 'pair' ? 1 : spot.role === 'link' ? 1 : 0.03;
      place(
        at + 1,
        left.filter((_, other) => other !== index),
        [...placed, { lead, ...spot }],
        weight * share,
      );
    });
  };
  place(0, spots, [], inside.coils.length > 0 ? 1 : 0);
  return ways;
}

const inOrder = (seen: SeenPickup, placed: readonly Placed[]): readonly Placed[] =>
  seen.leads.map((lead) => placed.find((one) => one.lead === lead) as Placed);
