import type { NodeName } from '../circuit/edit.ts';
import { nodeAt } from '../circuit/netlist.ts';
import { type Ohms, ohms } from '../circuit/units.ts';
import type { DcSolution } from '../solver/index.ts';
import { bentSlope } from './bend.ts';
import type { Prediction } from './prediction.ts';
import type { Meter } from './reading.ts';
import type { Unknown, Unknowns } from './unknowns.ts';
import type { View } from './view.ts';

/** Digits and contact of a hand-held probe: 0.4 % of the reading and 0.15 ohm, one standard deviation. */
const RELATIVE_NOISE = 0.004;
const ABSOLUTE_NOISE = 0.15;
/**
 * A meter's ranges are each off by their own share, one deviation of which is half its accuracy: readings in two ranges do not share one
 * scale error, so it comes on top of the error that all readings share (conservative where two readings are in one range; common practice,
 * no source).
 */
const rangeError = ({ accuracy }: Meter): number => accuracy / 2;
/** Ohms. */
const LAST_DIGIT = 0.1;

/** A site whose resistance is only known roughly (the size of a fault), as one more unknown after the shared ones. */
export interface Loose {
  readonly site: number;
  /** Whether the site is a bridge, numbered after the layout's own sites. */
  readonly bridge: boolean;
  /** Standard deviation of ln(resistance). */
  readonly deviation: number;
}

export interface Instrument {
  readonly meter: Meter;
  readonly unknowns: Unknowns;
  readonly loose?: Loose;
}

/** Ohms between two points as the meter shows them: circuit plus probe leads. Over-range above the meter's limit. */
export function levelBetween(
  view: View,
  red: NodeName,
  black: NodeName,
  instrument: Instrument,
): Prediction {
  const [a, b] = [nodeAt(view.layout, red), nodeAt(view.layout, black)];
  return levelOf(view.dc, view.dc.resistance(a, b), a, b, instrument);
}

export function levelOf(
  dc: DcSolution,
  resistance: number,
  a: number,
  b: number,
  { meter, unknowns, loose }: Instrument,
): Prediction {
  if (resistance > meter.limit) return { type: 'over' };
  // Leads that were taken off to zero show a zero as well.
  const shown = Math.max(resistance + meter.leads, LAST_DIGIT);
  const slopes = new Float64Array(unknowns.list.length + 1);
  if (resistance > 0) {
    unknowns.list.forEach((unknown, at) => {
      let slope = 0;
      for (const site of unknown.sites) slope += share(dc, a, b, site, shown, unknown);
      slopes[at] = unknown.only === undefined ? slope : bentSlope(slope, unknown.deviation);
    });
    if (loose) slopes[unknowns.list.length] = share(dc, a, b, loose.site, shown);
  }
  slopes[unknowns.gain] = 1;
  slopes[unknowns.leads] = meter.leads / shown;
  return {
    type: 'level',
    mean: Math.log(shown),
    slopes,
    noise: Math.hypot(RELATIVE_NOISE, rangeError(meter), ABSOLUTE_NOISE / shown),
    ohms: ohms(shown),
  };
}

/** d ln(shown) / d ln r of a branch, or of part of its resistance: r i^2 / shown. */
function share(
  dc: DcSolution,
  a: number,
  b: number,
  site: number,
  shown: number,
  { only, allBut = 0 }: Pick<Unknown, 'only' | 'allBut'> = {},
): number {
  const r = dc.network.ohms[site] as number;
  if (r === 0 || r === Number.POSITIVE_INFINITY) return 0;
  const current = dc.transfer(a, b, site);
  return (
    ((only === undefined ? Math.max(0, r - allBut) : Math.min(r, only)) * current * current) / shown
  );
}

/** ln of what the display shows; a zero display counts as its last digit. */
export const logShown = (value: Ohms): number => Math.log(Math.max(value, LAST_DIGIT));
