import type { Edit, NodeName } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import type { CoilId, SeenPickup } from '../circuit/seen-pickup.ts';
import { ohms } from '../circuit/units.ts';
import type { Hypothesis } from '../diagnosis/hypothesis.ts';
import { type Assignment, assignmentsOf } from './assignments.ts';
import type { Role } from './inside.ts';

/** What may be wrong with a pickup, or unusual. */
export type Trouble =
  | { readonly is: 'open'; readonly coil: CoilId }
  | { readonly is: 'dead lead'; readonly lead: string }
  | { readonly is: 'touches plate'; readonly coil: CoilId }
  /** Shorted turns, or wound so on purpose: ohms cannot part the two. */
  | { readonly is: 'low'; readonly coil: CoilId };

/** One pickup that the one on the mat may be: an assignment of its leads, with at most one trouble. */
export interface Candidate extends Hypothesis {
  readonly assignment: Assignment;
  /** What each lead is as far as readings can tell, in the order of the leads. */
  readonly roles: readonly Role[];
  readonly trouble: Trouble | null;
  /** Number of these roles: equal for candidates that are one answer. */
  readonly answer: number;
  /** Number of the pickup that is left when it is forgotten which lead is which: candidates of one build differ in `spots` alone. */
  readonly build: number;
  /** Lug from which each lead is reached, in the order of the leads; null for a lead that reaches nothing. */
  readonly spots: readonly (NodeName | null)[];
}

/** Shares before any reading (estimates of ours, common practice, no source). */
export const SHARE = { open: 0.05, deadLead: 0.02, touchesPlate: 0.02, uneven: 0.1 } as const;
/** How much a coil is below the other: shorted turns, or unequal on purpose. */
const FACTORS = [0.3, 0.5, 0.75] as const;
/** Parts of a tapped coil: the second over the first. */
const TAPPED = [0.3, 0.55, 1, 1.8, 3.3] as const;
const SPREAD = 0.17;
/**
 * Ohms where a coil touches the plate, from scraped copper to a scorched lacquer, with the deviation of their logarithm. Several, as a
 * reading through such a place is no straight line in its logarithm.
 */
const TOUCHES = [
  { size: 8, deviation: 1.1 },
  { size: 80, deviation: 0.6 },
  { size: 400, deviation: 0.55 },
] as const;

interface Variant {
  readonly edits: readonly Edit[];
  readonly share: number;
  readonly trouble: Trouble | null;
  readonly roles: readonly Role[];
  readonly loose?: Hypothesis['loose'];
}

export function candidatesOf(seen: SeenPickup, layout: Layout): readonly Candidate[] {
  const found: Candidate[] = [];
  const [builds, answers] = [new Map<string, number>(), new Map<string, number>()];
  const numberOf = (names: Map<string, number>, name: string): number => {
    const number = names.get(name) ?? names.size;
    names.set(name, number);
    return number;
  };
  for (const assignment of assignmentsOf(seen)) {
    const base = editsOf(assignment);
    const { inside, placed, onPlate } = assignment;
    for (const { edits, share, trouble, roles, loose } of variantsOf(assignment, seen, layout)) {
      const broken = trouble?.is === 'dead lead' ? trouble.lead : null;
      const name = JSON.stringify([inside.joins, onPlate, broken === null ? edits : [], loose]);
      found.push({
        index: found.length,
        faults: [],
        edits: [...base, ...edits],
        logPrior: Math.log(0.97 * assignment.prior * share),
        assignment,
        roles,
        trouble,
        answer: numberOf(answers, roles.join()),
        build: numberOf(builds, name),
        spots: placed.map(({ lead, lug }) => (lead.id === broken ? null : lug)),
        ...(loose ? { loose } : {}),
      });
    }
  }
  return found;
}

/** The assignment as edits of the pickup's circuit: each lead lands on its lug, or is open. */
function editsOf({ inside, placed, onPlate }: Assignment): readonly Edit[] {
  const join = (a: string, b: string): Edit => ({ op: 'bridge', a, b, ohms: ohms(0) });
  return [
    ...placed.map(
      ({ lead, lug }): Edit =>
        lug === null
          ? { op: 'open', site: lead.id }
          : { op: 'land', joint: `${lead.id}@from`, lug },
    ),
    ...inside.joins.map(([a, b]) => join(a, b)),
    ...(onPlate ? [join(onPlate, 'plate.metal')] : []),
  ];
}

function variantsOf(assignment: Assignment, seen: SeenPickup, layout: Layout): readonly Variant[] {
  const { inside, placed, onPlate } = assignment;
  const roles = placed.map(({ role }) => role);
  const winding = (coil: CoilId) => layout.siteIndex.get(`${coil}:winding`) as number;
  const loosely = (coil: CoilId, deviation = SPREAD) => ({
    site: winding(coil),
    deviation,
    bridge: false,
  });
  const tapped = inside.name === 'tapped';
  const list: Variant[] = [];
  const add = (variant: Omit<Variant, 'roles'> & { roles?: readonly Role[] }) =>
    list.push({ roles, ...variant });
  // Sizes.
  if (tapped)
    for (const factor of TAPPED)
      add({
        edits: [{ op: 'scale', part: 'b', factor }],
        share: 0.9 / TAPPED.length,
        trouble: null,
        loose: loosely('b', 0.16),
      });
  else {
    add({ edits: [], share: 1 - SHARE.open - SHARE.touchesPlate - SHARE.uneven, trouble: null });
    if (inside.coils.length === 2)
      for (const coil of inside.coils)
        for (const factor of FACTORS)
          add({
            edits: [{ op: 'scale', part: coil, factor }],
            share: SHARE.uneven / (2 * FACTORS.length),
            trouble: { is: 'low', coil },
            loose: loosely(coil),
          });
  }
  // A break in a coil or in one of the leads that only it has: no reading parts the two.
  for (const coil of inside.coils)
    add({
      edits: [{ op: 'open', site: `${coil}:winding` }],
      share: SHARE.open / inside.coils.length,
      trouble: { is: 'open', coil },
      roles: placed.map(({ open }) => open[coil]),
    });
  for (const [at, { lead, role }] of placed.entries())
    if (role === 'link' || role === 'tap' || role === 'plate' || role === 'cover')
      add({
        edits: [{ op: 'open', site: lead.id }],
        share: SHARE.deadLead,
        trouble: { is: 'dead lead', lead: lead.id },
        roles: roles.map((one, other) =>
          other === at ? 'nothing' : role === 'link' ? outer(one, inside.name) : one,
        ),
      });
  if (seen.plate || placed.some(({ role }) => role === 'plate'))
    for (const coil of inside.coils)
      for (const end of ['start', 'finish'] as const)
        if (onPlate === null)
          for (const { size, deviation } of TOUCHES)
            add({
              edits: [{ op: 'bridge', a: `${coil}.${end}`, b: 'plate.metal', ohms: ohms(size) }],
              share: SHARE.touchesPlate / (2 * inside.coils.length * TOUCHES.length),
              trouble: { is: 'touches plate', coil },
              loose: { site: layout.sites.length + inside.joins.length, deviation, bridge: true },
            });
  return list;
}

/** Without the lead at their join two coils in series are one pair. */
function outer(role: Role, name: Assignment['inside']['name']): Role {
  const coil = role[0];
  if (!role.endsWith('.start') && !role.endsWith('.finish')) return role;
  if (name === 'linked') return role.endsWith('.start') ? 'pair.start' : 'pair.finish';
  // Opposed: plus and minus are those of the screw coil.
  if (coil === 'a') return role;
  return role === 'b.finish' ? 'a.start' : role === 'b.start' ? 'a.finish' : role;
}
