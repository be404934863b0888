import type { NodeName } from '../circuit/edit.ts';
import type { Layout } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { restingSetting } from '../circuit/setting.ts';
import { jackOf } from '../readings/points.ts';
import type { Ask } from '../readings/reading.ts';
import type { Group } from './groups.ts';

/**
 * Each wire and pickup lead of the cavity with one end unsoldered, and the two sides of that joint read by themselves. Solder between
 * two lugs of one part reads as it does between two lugs wired to them, and a path beside a coil as a coil with turns shorted: only
 * where the wire is off do the ohms say on which side it is.
 */
export function liftsOf(layout: Layout): readonly Ask[] {
  const { tip, sleeve } = jackOf(layout);
  const rest = restingSetting(layout.circuit);
  const within = (node: NodeName) => ['outside', 'cavity'].includes(reachOf(layout, node));
  return layout.circuit.leads.flatMap((lead): Ask[] => {
    if (lead.kind !== 'wire' && lead.kind !== 'pickup') return [];
    const end = (['to', 'from'] as const).find(
      (one) => within(lead[one]) && within(`${lead.id}@${one}`),
    );
    if (!end) return [];
    const joint = `${lead.id}@${end}`;
    const setting = { ...rest, lifted: [joint] };
    return [lead[end], joint].map((red): Ask => {
      const black = red === sleeve ? tip : sleeve;
      return { kind: 'ohms', red, black, setting };
    });
  });
}

/** Above this many repairs in reach a look or a reading parts more of them than one wire taken off. */
const FEW = 6;
/** A repair below this is not one of them. */
const LIVE = 0.01;

/** The iron is heated up for the last few repairs, and not to prove a guitar sound. */
export const fewAreLeft = (groups: readonly Group[]): boolean => {
  const live = groups.filter(({ probability }) => probability > LIVE);
  return live.length >= 2 && live.length <= FEW;
};
