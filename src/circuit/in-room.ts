import type { Circuit } from './circuit.ts';
import type { Part, Value } from './parts/part.ts';
import { type Celsius, celsius, type Ohms, ohms } from './units.ts';

/** Copper's ohms rise by this share a kelvin, at 20 C (IEC 60028). */
export const COPPER_PER_KELVIN = 0.00393;
/** What values on paper hold for. */
const PRINTED_AT = celsius(20);

/** A measured value within so many tolerances is a part as printed; further off it is another part, or a broken one. */
const IN_LINE = 1.5;

/** By how much a winding's ohms grow from one warmth to another. */
const warming = (from: Celsius, to: Celsius): number =>
  (1 + COPPER_PER_KELVIN * (to - PRINTED_AT)) / (1 + COPPER_PER_KELVIN * (from - PRINTED_AT));

/** What a coil measured out of circuit would read in a room; one whose warmth nobody noted is taken to have been as warm. */
export const coilInRoom = (measured: Ohms, at: Celsius | undefined, room = PRINTED_AT): Ohms =>
  ohms(measured * warming(at ?? room, room));

/** Whether what was measured out of circuit is such a part as is printed on it. True where nothing was measured. */
export function isInLine(part: Part, room: Celsius = PRINTED_AT): boolean {
  const value = partValue(part);
  if (value === null) return true;
  if (value.measuredOpen) return false;
  if (value.measured === undefined) return true;
  const cold =
    part.kind === 'coil'
      ? coilInRoom(value.measured as Ohms, value.measuredAt ?? room, PRINTED_AT)
      : value.measured;
  return Math.abs(Math.log(cold / value.nominal)) <= IN_LINE * value.tolerance;
}

/** The value a part is sold by, or null for a part that has none. */
export function partValue(part: Part): Value<number> | null {
  if (part.kind === 'coil' || part.kind === 'pot' || part.kind === 'resistor') return part.ohms;
  return part.kind === 'capacitor' ? part.farads : null;
}

const made = new WeakMap<Circuit, Map<number, Circuit>>();
const taken = new WeakSet<Circuit>();

/**
 * The guitar as it should be in a room of this warmth (20 C where it is not known): coils as warm as the room, measured parts at what
 * they measured. What was measured out of line is no property of the guitar as intended, so there the printed value stands again.
 * A circuit that came from here, or from `asItIs`, stays as it is.
 */
export function inRoom(circuit: Circuit, room: Celsius = PRINTED_AT): Circuit {
  if (taken.has(circuit)) return circuit;
  const known = made.get(circuit) ?? new Map<number, Circuit>();
  made.set(circuit, known);
  const found = known.get(room) ?? changed(circuit, room);
  known.set(room, found);
  // One that holds as it is in this room may not in another.
  return found === circuit ? found : asItIs(found);
}

/** Marks values that hold for the room already. */
export function asItIs(circuit: Circuit): Circuit {
  taken.add(circuit);
  return circuit;
}

function changed(circuit: Circuit, room: Celsius): Circuit {
  const parts = circuit.parts.map((part) => partInRoom(part, room));
  return parts.every((part, at) => part === circuit.parts[at]) ? circuit : { ...circuit, parts };
}

function partInRoom(part: Part, room: Celsius): Part {
  const inLine = isInLine(part, room);
  switch (part.kind) {
    case 'coil': {
      const nominal = ohms(part.ohms.nominal * warming(PRINTED_AT, room));
      const { measured, measuredAt = room, tolerance } = part.ohms;
      if (inLine && room === PRINTED_AT && measuredAt === room) return part;
      if (!inLine || measured === undefined) return { ...part, ohms: { nominal, tolerance } };
      const now = coilInRoom(measured, measuredAt, room);
      const noted = part.ohms.measuredAt === undefined ? {} : { measuredAt: room };
      return { ...part, ohms: { nominal, tolerance, measured: now, ...noted } };
    }
    case 'pot':
    case 'resistor':
      return inLine ? part : { ...part, ohms: asPrinted(part.ohms) };
    case 'capacitor':
      return inLine ? part : { ...part, farads: asPrinted(part.farads) };
    default:
      return part;
  }
}

const asPrinted = <Q extends number>({ nominal, tolerance }: Value<Q>): Value<Q> => ({
  nominal,
  tolerance,
});
