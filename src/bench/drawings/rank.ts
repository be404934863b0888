import type { Circuit, LugRef } from '../../circuit/circuit.ts';
import type { Part } from '../../circuit/parts/part.ts';
import { splitLug } from './names.ts';

/** What is placed as one: a pickup with its coils, or a part with what sits on it. */
interface Stand {
  readonly id: string;
  readonly parts: readonly Part[];
}

/** Lugs joined to the jack's sleeve by leads alone: the ground, which leads everywhere and so ranks nothing. */
export function groundLugs(circuit: Circuit): ReadonlySet<LugRef> {
  const ground = new Set<LugRef>(
    circuit.parts.flatMap((part) => (part.kind === 'jack' ? [`${part.id}.sleeve`] : [])),
  );
  for (let grown = true; grown; ) {
    grown = false;
    for (const { from, to } of circuit.leads)
      if (ground.has(from) !== ground.has(to)) {
        ground.add(from).add(to);
        grown = true;
      }
  }
  return ground;
}

/** Stands joined by a lead that is not at ground. */
function neighboursOf(
  circuit: Circuit,
  stands: readonly Stand[],
): ReadonlyMap<string, readonly string[]> {
  const ground = groundLugs(circuit);
  const homeOf = new Map(
    stands.flatMap((stand) => stand.parts.map((part) => [part.id, stand.id] as const)),
  );
  const found = new Map<string, Set<string>>();
  for (const { from, to } of circuit.leads) {
    if (ground.has(from)) continue;
    const a = homeOf.get(splitLug(from).part);
    const b = homeOf.get(splitLug(to).part);
    if (!a || !b || a === b) continue;
    found.set(a, (found.get(a) ?? new Set()).add(b));
    found.set(b, (found.get(b) ?? new Set()).add(a));
  }
  return new Map([...found].map(([id, set]) => [id, [...set]]));
}

/**
 * Rows of stands from the pickups at the top to the jack at the bottom. A control's row is its distance from the
 * jack along the signal, grounds left out. What hangs off the path (a tone control with its capacitor) shares the
 * row of the part it hangs on; a pickup's own splices stand below it; parts that only ground reaches, beside the jack.
 */
export function rowsOf<S extends Stand>(
  circuit: Circuit,
  stands: readonly S[],
): readonly (readonly S[])[] {
  const neighbours = neighboursOf(circuit, stands);
  const near = (id: string) => neighbours.get(id) ?? [];
  const byId = new Map(stands.map((stand) => [stand.id, stand]));
  const pickups = stands.filter((stand) => stand.parts[0]?.kind === 'coil');
  const isPickup = new Set(pickups.map(({ id }) => id));
  const rank = new Map<string, number>();
  const parent = new Map<string, string>();
  let front = stands.filter((stand) => stand.parts[0]?.kind === 'jack').map(({ id }) => id);
  for (let depth = 0; front.length > 0; depth++) {
    for (const id of front) rank.set(id, depth);
    const next: string[] = [];
    for (const id of front)
      for (const other of near(id)) {
        if (rank.has(other) || isPickup.has(other) || next.includes(other)) continue;
        next.push(other);
        parent.set(other, id);
      }
    front = next;
  }
  const fed = pickups.flatMap(({ id }) => near(id).flatMap((other) => rank.get(other) ?? []));
  const trunk = Math.max(0, ...fed);
  const branches = new Map<string, S[]>();
  for (const [id, depth] of rank) {
    if (depth <= trunk) continue;
    let anchor = id;
    while ((rank.get(anchor) ?? 0) > trunk) anchor = parent.get(anchor)!;
    branches.set(anchor, [...(branches.get(anchor) ?? []), byId.get(id)!]);
  }
  const links = stands.filter(
    ({ id }) => !rank.has(id) && !isPickup.has(id) && near(id).some((other) => isPickup.has(other)),
  );
  const aside = stands.filter(
    (stand) => !rank.has(stand.id) && !isPickup.has(stand.id) && !links.includes(stand),
  );
  const rows: S[][] = [];
  const add = (row: readonly S[]) => {
    if (row.length > 0) rows.push(arrange(row, rows.flat(), near));
  };
  add(pickups);
  add(links);
  for (let depth = trunk; depth >= 0; depth--) {
    const row = stands.filter(({ id }) => rank.get(id) === depth);
    const plain = row.filter(({ id }) => !branches.has(id));
    for (const stand of arrange(row, rows.flat(), near)) {
      const hanging = branches.get(stand.id);
      if (hanging) rows.push([stand, ...hanging]);
    }
    add(depth === 0 ? [...aside, ...plain] : plain);
  }
  return rows;
}

/** Each stand near the mean place of its neighbours in the rows above; the jack last, at the end of the path. */
function arrange<S extends Stand>(
  row: readonly S[],
  above: readonly S[],
  near: (id: string) => readonly string[],
): S[] {
  const place = new Map(above.map((stand, i) => [stand.id, i]));
  const weight = (stand: S): number => {
    if (stand.parts[0]?.kind === 'jack') return Number.POSITIVE_INFINITY;
    const at = near(stand.id).flatMap((id) => place.get(id) ?? []);
    return at.length === 0 ? -1 : at.reduce((a, b) => a + b, 0) / at.length;
  };
  return row
    .map((stand, i) => ({ stand, i, weight: weight(stand) }))
    .sort((a, b) => (a.weight === b.weight ? a.i - b.i : a.weight - b.weight))
    .map(({ stand }) => stand);
}
