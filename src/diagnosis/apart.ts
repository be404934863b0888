import type { Circuit, JointId, LugRef, Setting } from '../circuit/circuit.ts';
import type { NodeName } from '../circuit/edit.ts';
import { coilInRoom, isInLine, partValue } from '../circuit/in-room.ts';
import { type Layout, layoutOf } from '../circuit/netlist.ts';
import type { Part, PartId } from '../circuit/parts/part.ts';
import { restingSetting } from '../circuit/setting.ts';
import { type Celsius, farads, type Ohms, ohms } from '../circuit/units.ts';
import type { Ask, Reading, Seen } from '../readings/reading.ts';

/** What was measured of a part out of circuit, as a reading of that part alone. */
export interface ApartReading {
  readonly part: PartId;
  readonly inLine: boolean;
  readonly reading: Reading;
}

/**
 * Parts measured out of circuit, as readings: the part with everything unsoldered from it. A measured part can so speak for itself:
 * one that measures as printed is no suspect any more, a dead one is. All are taken in one setting with all of them free, so that a
 * suspect's guitar is solved once for them.
 */
export function apartReadings(
  circuit: Circuit,
  room: Celsius | undefined,
): readonly ApartReading[] {
  const layout = layoutOf(circuit);
  const measured = circuit.parts.flatMap((part) => {
    const value = partValue(part);
    const ends = value && (value.measured !== undefined || value.measuredOpen) && endsOf(part);
    return ends ? [{ part, points: ends.map((lug) => freeEnd(layout, lug)) }] : [];
  });
  const lifted = [
    ...new Set(measured.flatMap(({ points }) => points.flatMap((one) => one.lifted))),
  ];
  const setting: Setting = { ...restingSetting(circuit), lifted };
  return measured.map(({ part, points }) => {
    const [black, red] = points.map(({ node }) => node) as [NodeName, NodeName];
    const probes = { red, black, setting };
    const ask: Ask =
      part.kind === 'capacitor'
        ? { kind: 'farads', part: part.id, ...probes }
        : { kind: 'ohms', ...probes };
    const reading = { id: `measured:${part.id}`, ask, seen: seenOf(part, room), at: '', round: 0 };
    return { part: part.id, inLine: isInLine(part, room), reading };
  });
}

function endsOf(part: Part): readonly [LugRef, LugRef] | null {
  switch (part.kind) {
    case 'coil':
      return [`${part.id}.start`, `${part.id}.finish`];
    case 'pot':
      return [`${part.id}.1`, `${part.id}.3`];
    case 'resistor':
    case 'capacitor':
      return [`${part.id}.a`, `${part.id}.b`];
    default:
      return null;
  }
}

/** Where a probe stands on a part that is free: at the end of the lead that comes with it, else on its lug. */
function freeEnd(
  layout: Layout,
  lug: LugRef,
): { readonly node: NodeName; readonly lifted: readonly JointId[] } {
  const own = layout.circuit.leads.find(
    ({ kind, from }) => from === lug && (kind === 'pickup' || kind === 'leg'),
  );
  const joints = layout.jointsAt.get(lug) ?? [];
  if (!own) return { node: lug, lifted: joints };
  const others = joints.filter((joint) => joint !== `${own.id}@from`);
  return { node: `${own.id}@to`, lifted: [`${own.id}@to`, ...others] };
}

function seenOf(part: Part, room: Celsius | undefined): Seen {
  const { measured = 0, measuredAt, measuredOpen } = partValue(part) ?? {};
  if (part.kind === 'capacitor')
    return { kind: 'farads', farads: measuredOpen ? 'open' : farads(measured) };
  if (measuredOpen) return { kind: 'ohms', ohms: 'open' };
  if (part.kind !== 'coil') return { kind: 'ohms', ohms: ohms(measured) };
  return { kind: 'ohms', ohms: coilInRoom(measured as Ohms, measuredAt, room) };
}
