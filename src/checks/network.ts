import type { Circuit, LugRef, Setting } from '../circuit/circuit.ts';
import { type Layout, layoutOf, siteValues } from '../circuit/netlist.ts';
import { kindOf } from '../circuit/parts/index.ts';
import type { Part, Switch } from '../circuit/parts/part.ts';
import { END_OHMS } from '../circuit/parts/pot.ts';
import { potsOf, restingSetting, switchesOf, withKnob } from '../circuit/setting.ts';
import { Sets } from '../solver/islands.ts';

/** Something with a value between two points: a coil, a piece of a pot's track, a capacitor, a resistor. */
export interface Edge {
  readonly site: number;
  readonly part: Part;
  /** Points. */
  readonly a: number;
  readonly b: number;
  /** The few ohms that stay at the end of a pot's track: as good as a wire where hot meets ground. */
  readonly slight: boolean;
}

/** Where a no-load pot stands, so that its wiper is on the track and what hangs on it counts. */
const ON_TRACK = 9;

/**
 * A wiring as points and edges, every knob at 10 (a no-load pot's at 9). Points are lugs and lead ends that leads alone make one; what contacts
 * make one on top depends on how the switches stand.
 */
export interface Network {
  readonly layout: Layout;
  readonly switches: readonly Switch[];
  readonly points: number;
  pointOf(lug: LugRef): number;
  readonly edges: readonly Edge[];
  /** Pairs of points, by switch and position. */
  readonly contacts: readonly (readonly (readonly (readonly [number, number])[])[])[];
  /** Null where there is no jack. */
  readonly jack: { readonly tip: number; readonly sleeve: number; readonly id: string } | null;
}

/** `circuit` has passed checkCircuit. */
export function networkOf(circuit: Circuit): Network {
  const layout = layoutOf(circuit);
  const switches = switchesOf(circuit);
  const rest: Setting = potsOf(circuit).reduce(
    (setting, { id, noLoad }) => (noLoad ? withKnob(setting, id, ON_TRACK) : setting),
    restingSetting(circuit),
  );
  const { ohms, farads } = siteValues(layout, rest);
  const moved = new Set(switches.map(({ id }) => id));
  const isContact = (site: number) => moved.has(layout.sites[site]?.part ?? '');
  const sets = new Sets(layout.nodes.length);
  for (const { index, a, b } of layout.sites)
    if (ohms[index] === 0 && !isContact(index)) sets.join(a, b);
  const { of, count } = sets.labels();
  const at = (lug: LugRef): number => of[layout.nodeIndex.get(lug) ?? -1] ?? -1;
  const edges = layout.sites.flatMap(({ index, a, b, part }): Edge[] => {
    const passes = Number.isFinite(ohms[index]) || (farads[index] as number) > 0;
    const owner = part === undefined ? undefined : layout.parts.get(part);
    if (!owner || !passes || ohms[index] === 0 || isContact(index)) return [];
    const slight = owner.kind === 'pot' && (ohms[index] as number) <= END_OHMS;
    return [{ site: index, part: owner, a: of[a] as number, b: of[b] as number, slight }];
  });
  const contacts = switches.map((part) =>
    part.positions.map(({ name }) =>
      kindOf(part)
        .branches(part, { ...rest, positions: { [part.id]: name } })
        .filter(({ closed }) => closed)
        .map(({ a, b }) => [at(`${part.id}.${a}`), at(`${part.id}.${b}`)] as const),
    ),
  );
  const jack = circuit.parts.find(({ kind }) => kind === 'jack');
  return {
    layout,
    switches,
    points: count,
    pointOf: at,
    edges,
    contacts,
    jack: jack ? { tip: at(`${jack.id}.tip`), sleeve: at(`${jack.id}.sleeve`), id: jack.id } : null,
  };
}

/** Points that are one in a stand of the switches, given as a position number a switch; with `slight` also over pot ends. */
export function joinedIn(network: Network, stand: Stand, slight = false): Sets {
  const sets = new Sets(network.points);
  network.contacts.forEach((positions, one) => {
    for (const [a, b] of positions[stand[one] ?? 0] ?? []) sets.join(a, b);
  });
  if (slight) for (const edge of network.edges) if (edge.slight) sets.join(edge.a, edge.b);
  return sets;
}

/** A position number for each switch, in the order of `switches`. */
export type Stand = readonly number[];
