import type { Circuit, Lead } from '../circuit/circuit.ts';
import type { NodeName } from '../circuit/edit.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import type { Ask } from '../readings/reading.ts';

/** True where following the ask needs the guitar opened: a lug, a joint or a lead that the plug does not reach. */
export function needsOpenGuitar(circuit: Circuit, ask: Ask): boolean {
  if (ask.setting.lifted.length > 0) return true;
  if (ask.kind === 'flex' || ask.kind === 'look') return true;
  if (!('red' in ask)) return false;
  const layout = layoutOf(circuit);
  return [ask.red, ask.black].some((node) => reachOf(layout, node) !== 'outside');
}

/** A wire's end that may have moved while a probe stood near it. */
export interface NearbyJoint {
  readonly site: string;
  readonly lead: Lead;
  readonly end: 'from' | 'to';
}

/** The joints at the two points of an ask: where a reading that jumps about may come from. Empty for asks without probes. */
export function jointsNear(circuit: Circuit, ask: Ask): readonly NearbyJoint[] {
  if (!('red' in ask)) return [];
  const nodes: readonly NodeName[] = [ask.red, ask.black];
  return circuit.leads.flatMap((lead) =>
    (['from', 'to'] as const)
      .map((end): NearbyJoint => ({ site: `${lead.id}@${end}`, lead, end }))
      // The far end of a pickup's own lead or of a leg lies inside the part: nothing to take hold of.
      .filter(({ end }) => end === 'to' || lead.kind === 'wire' || lead.kind === 'mount')
      .filter(({ site, end }) => nodes.includes(site) || nodes.includes(lead[end])),
  );
}
