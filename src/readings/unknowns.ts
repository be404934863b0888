import { COPPER_PER_KELVIN } from '../circuit/in-room.ts';
import type { Layout } from '../circuit/netlist.ts';
import type { Part, PartId } from '../circuit/parts/part.ts';
import { END_OHMS } from '../circuit/parts/pot.ts';
import { expectedValue, relativeDeviation } from '../circuit/parts/value.ts';
import { readingWords } from '../words/en/readings.ts';
import type { Meter } from './reading.ts';

/**
 * What no reading shows alone but all readings share: each part's deviation from its expected value, the temperature of the
 * coils, the meter's scale and the resistance of its leads. Each is a logarithm with mean 0 and its own standard deviation.
 */
export interface Unknown {
  readonly name: string;
  readonly deviation: number;
  /** Sites (by index) whose resistance rises with it. */
  readonly sites: readonly number[];
  /** Of each site only so many ohms rise (the ends of a pot), or all but so many (the rest of its track). */
  readonly only?: number;
  readonly allBut?: number;
  /** The warmth of the copper, which all windings share. */
  readonly warmth?: true;
  readonly part?: PartId;
  readonly nominal?: number;
}

/** An end of a track lies within 1 to 100 ohm: two deviations of ln 10 about the middle. */
const END_DEVIATION = Math.log(10) / 2;

/** A workshop lies within about +-5 K of what a coil was specified at, one deviation. */
const SOME_ROOM = 5 * COPPER_PER_KELVIN;
/** Where the room's warmth is known, a coil just out of a hand or from under a lamp is 1.5 K off (common practice, no source). */
const KNOWN_ROOM = 1.5 * COPPER_PER_KELVIN;

export interface Unknowns {
  readonly list: readonly Unknown[];
  readonly gain: number;
  readonly leads: number;
}

export function unknownsOf(layout: Layout, meter: Meter): Unknowns {
  const list: Unknown[] = [];
  const windings: number[] = [];
  for (const part of layout.circuit.parts) {
    if (part.kind !== 'coil' && part.kind !== 'pot' && part.kind !== 'resistor') continue;
    const sites = layout.sites
      .filter(
        (site) => site.part === part.id && (site.what === 'resistance' || site.what === 'winding'),
      )
      .map((site) => site.index);
    if (part.kind === 'coil') windings.push(...sites);
    list.push({
      ...(part.kind === 'pot' ? { allBut: END_OHMS } : {}),
      name: part.title,
      deviation: hasUnknownWarmth(part, meter)
        ? Math.hypot(relativeDeviation(part.ohms), SOME_ROOM)
        : relativeDeviation(part.ohms),
      sites,
      part: part.id,
      nominal: expectedValue(part.ohms),
    });
    if (part.kind === 'pot')
      list.push({
        name: readingWords().trackEnds(part.title),
        deviation: END_DEVIATION,
        sites,
        only: END_OHMS,
      });
  }
  list.push({
    name: readingWords().temperature,
    deviation: meter.room === undefined ? SOME_ROOM : KNOWN_ROOM,
    sites: windings,
    warmth: true,
  });
  list.push({ name: readingWords().meterScale, deviation: meter.accuracy / 2, sites: [] });
  // Probes, clips and plug contacts: half to double of what touching the tips shows, in two deviations of about 0.5.
  list.push({ name: readingWords().probeLeads, deviation: 0.5, sites: [] });
  return { list, gain: list.length - 2, leads: list.length - 1 };
}

/** A coil measured on some other day, nobody knows how warm, while this room's warmth is known. */
const hasUnknownWarmth = (part: Part, { room }: Meter): boolean =>
  room !== undefined &&
  part.kind === 'coil' &&
  part.ohms.measured !== undefined &&
  part.ohms.measuredAt === undefined;
