import type { LugRef } from '../circuit/circuit.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import type { PartKind } from '../circuit/parts/part.ts';
import { reachOf } from '../circuit/reach.ts';
import { Sets } from '../solver/islands.ts';

/** What a person looks at first where several lugs are wired together. */
const PLAIN: readonly PartKind[] = [
  'jack',
  'pot',
  'switch',
  'splice',
  'capacitor',
  'resistor',
  'coil',
];

/** The points of a wiring: lugs that leads make one, each named by one of its lugs that the person can see. */
export interface Points {
  readonly lugs: readonly LugRef[];
  /** Equal for nodes of one point. */
  of(node: string): number;
}

export function pointsOf(layout: Layout): Points {
  const joined = new Sets(layout.nodes.length);
  for (const { a, b, part } of layout.sites) if (part === undefined) joined.join(a, b);
  const of = (node: string) => joined.root(nodeAt(layout, node));
  const found = new Map<number, LugRef>();
  for (const kind of PLAIN)
    for (const part of layout.circuit.parts)
      if (part.kind === kind)
        for (const lug of layout.jointsAt.keys())
          if (
            lug.startsWith(`${part.id}.`) &&
            reachOf(layout, lug) !== 'never' &&
            !found.has(of(lug))
          )
            found.set(of(lug), lug);
  return { lugs: [...found.values()], of };
}
