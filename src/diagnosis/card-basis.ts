import type { Circuit } from '../circuit/circuit.ts';
import { asItIs } from '../circuit/in-room.ts';
import { layoutOf } from '../circuit/netlist.ts';
import type { Part } from '../circuit/parts/part.ts';
import { expectedValue } from '../circuit/parts/value.ts';
import { ohms } from '../circuit/units.ts';
import { chord, shareOf } from '../readings/bend.ts';
import type { Meter, Reading } from '../readings/reading.ts';
import type { Unknowns } from '../readings/unknowns.ts';
import type { ReadingReport } from './assessment.ts';
import { scoredBy } from './belief.ts';
import { BAND_SIGMA, evenly, type Spread } from './expect.ts';
import { backward, cholesky, forward } from './gauss.ts';
import type { Hypothesis } from './hypothesis.ts';
import { covariance, Learned, type Levels } from './levels.ts';
import { levelsOf } from './likelihood.ts';
import { Predictor, varianceOf } from './predictor.ts';
import { distinct } from './repeats.ts';
import { reportOf } from './report.ts';

/** What the bands of a card rest on. */
export type CardBasis =
  /** Printed and measured values, tolerances, room and meter: no reading of ohms counts yet. */
  | { readonly kind: 'parts' }
  /** The same, tightened by so many readings that all fit the guitar as intended. */
  | { readonly kind: 'readings'; readonly count: number }
  /** As `parts`: these readings do not fit the guitar as intended, so that none can say what its parts are. */
  | { readonly kind: 'contradicted'; readonly reports: readonly ReadingReport[] };

export const healthy: Hypothesis = { index: 0, faults: [], edits: [], logPrior: 0 };

/** Readings that fit one by one and not together happen to a healthy guitar once in a thousand. */
const TOGETHER = 3.09;

/** Times that the guitar is worked out anew at the part values learned: what is left of a bend after two is below the noise. */
const PASSES = 2;

export interface CardGround {
  readonly basis: CardBasis;
  /** Predicts the guitar as it most likely is, to which `spread` belongs. */
  readonly predictor: Predictor;
  readonly spread: Spread;
}

/** What readings taken since the last repair say of the parts of a guitar as intended. */
export function groundOf(circuit: Circuit, meter: Meter, readings: readonly Reading[]): CardGround {
  const predictor = new Predictor(layoutOf(circuit), meter);
  const deviations = predictor.deviations(healthy);
  const fromParts = (basis: CardBasis): CardGround => ({
    basis,
    predictor,
    spread: evenly((level) => ({ shift: 0, variance: varianceOf(level, deviations) })),
  });
  const reports = readings.map((reading) => reportOf(reading, circuit, meter, predictor, false));
  const off = reports.filter(({ fits }) => fits === 'off');
  if (off.length > 0) return fromParts({ kind: 'contradicted', reports: off });
  const counted = distinct(readings);
  const levels = levelsOf(scoredBy(predictor, healthy, counted), deviations);
  const count = levels.noises.length;
  if (count === 0) return fromParts({ kind: 'parts' });
  if (surprise(levels) > chiSquare(count, TOGETHER)) {
    const figures = reports.filter((_, at) => isFigure(readings[at] as Reading));
    return fromParts({ kind: 'contradicted', reports: figures });
  }
  return { basis: { kind: 'readings', count }, ...learnedFrom(predictor, counted) };
}

/**
 * The unknowns given the readings, and the guitar solved at their mean. Ohms bend where parts lie side by side, so the slopes are
 * taken anew at what was learned (iterated linear Gaussian update, textbook).
 */
function learnedFrom(
  stated: Predictor,
  readings: readonly Reading[],
): Pick<CardGround, 'predictor' | 'spread'> {
  const deviations = stated.deviations(healthy);
  let predictor = stated;
  let moved: Float64Array = new Float64Array(deviations.length);
  let learned = learn();
  for (let pass = 0; pass < PASSES; pass += 1) {
    moved = movable(stated, learned.mean);
    const { circuit } = stated.layout;
    predictor = new Predictor(
      layoutOf(asItIs(withValues(circuit, stated, moved))),
      stated.meter,
      stated.unknowns,
    );
    learned = learn();
  }
  return {
    predictor,
    spread(level) {
      const deviation = (way: 1 | -1) =>
        Math.sqrt(
          learned.along(bent(stated.unknowns, level.slopes, way)).variance + level.noise ** 2,
        );
      return {
        shift: learned.along(level.slopes).shift - along(level.slopes),
        above: deviation(1),
        below: deviation(-1),
      };
    },
  };

  function learn(): Learned {
    const levels = levelsOf(scoredBy(predictor, healthy, readings), deviations);
    const residuals = levels.residuals.map((r, at) => r + along(levels.slopes[at] as Float64Array));
    return new Learned({ ...levels, residuals });
  }

  /** How far a figure went with what was moved already. */
  function along(slopes: Float64Array): number {
    return moved.reduce((sum, by, at) => sum + by * (slopes[at] as number), 0);
  }
}

/** The slopes of a figure on the way to two deviations up or down: the ends of a track bend it. */
function bent({ list }: Unknowns, slopes: Float64Array, way: 1 | -1): Float64Array {
  return slopes.map((slope, at) => {
    const one = list[at];
    if (one?.only === undefined) return slope;
    return chord(shareOf(slope, one.deviation), BAND_SIGMA * one.deviation * way);
  });
}

/** Of the unknowns those that are values of parts and their warmth; the rest stays on the straight line. */
const movable = ({ unknowns }: Predictor, mean: Float64Array): Float64Array =>
  mean.map((by, at) => {
    const one = unknowns.list[at];
    return one?.nominal !== undefined || one?.warmth ? by : 0;
  });

function withValues(circuit: Circuit, { unknowns }: Predictor, moved: Float64Array): Circuit {
  const warmth = moved[unknowns.list.findIndex((one) => one.warmth)] ?? 0;
  return {
    ...circuit,
    parts: circuit.parts.map((part): Part => {
      if (part.kind !== 'coil' && part.kind !== 'pot' && part.kind !== 'resistor') return part;
      const at = unknowns.list.findIndex(
        (one) => one.part === part.id && one.nominal !== undefined,
      );
      const by = (moved[at] as number) + (part.kind === 'coil' ? warmth : 0);
      const measured = ohms(expectedValue(part.ohms) * Math.exp(by));
      return { ...part, ohms: { ...part.ohms, measured } };
    }),
  };
}

const isFigure = ({ seen }: Reading): boolean =>
  seen.kind === 'ohms' || seen.kind === 'turn' || seen.kind === 'farads';

/** r' C^-1 r of the residuals: chi-square with as many degrees of freedom where the guitar is as intended. */
function surprise(levels: Levels): number {
  const n = levels.noises.length;
  const l = cholesky(covariance(levels), n);
  if (!l) return Number.POSITIVE_INFINITY;
  const weighed = backward(l, n, forward(l, n, levels.residuals));
  return levels.residuals.reduce((sum, r, at) => sum + r * (weighed[at] as number), 0);
}

/** The quantile of chi-square that lies `z` normal deviations up (Wilson and Hilferty 1931, from memory). */
function chiSquare(freedom: number, z: number): number {
  const ninth = 2 / (9 * freedom);
  return freedom * (1 - ninth + z * Math.sqrt(ninth)) ** 3;
}
