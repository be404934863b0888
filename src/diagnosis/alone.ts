import type { Circuit } from '../circuit/circuit.ts';
import type { Part } from '../circuit/parts/part.ts';
import { restingSetting } from '../circuit/setting.ts';
import type { Ask } from '../readings/reading.ts';

/** A capacitor or resistor by itself, one of its own legs unsoldered; null for other parts, and where no leg is its own. */
export function askAlone(circuit: Circuit, part: Part): Ask | null {
  if (part.kind !== 'capacitor' && part.kind !== 'resistor') return null;
  const legOf = (lug: string) =>
    circuit.leads.find(({ kind, from }) => kind === 'leg' && from === lug);
  const lugs = [`${part.id}.a`, `${part.id}.b`] as const;
  const [red, black] = legOf(lugs[0]) ? lugs : [lugs[1], lugs[0]];
  const [own, other] = [legOf(red), legOf(black)];
  if (!own) return null;
  const ends = {
    red: `${own.id}@to`,
    // Where the next part's leg ends on this one's, that is where the probe goes.
    black: other ? `${other.id}@to` : black,
    setting: { ...restingSetting(circuit), lifted: [`${own.id}@to`] },
  };
  return part.kind === 'capacitor'
    ? { kind: 'farads', part: part.id, ...ends }
    : { kind: 'ohms', ...ends };
}
