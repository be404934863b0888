import { askKey } from '../diagnosis/ask-key.ts';
import { observe } from '../readings/index.ts';
import type { Observation, Prediction } from '../readings/prediction.ts';
import type { Reading } from '../readings/reading.ts';
import { ALARM, figureIn } from './apart.ts';
import { type Figure, figureSeen } from './figure.ts';
import type { ClosingBench } from './plan.ts';
import { Joint, Shared } from './shared.ts';

interface ReadFigure {
  readonly reading: Reading;
  readonly key: string;
  readonly figure: Figure;
  readonly seen: number;
}

/** Figures that stand, and which answers do not fit by their figures. */
export interface FigureScore {
  readonly off: ReadonlySet<Reading>;
  /** Figures that fit, oldest first: what later ones are foretold from. */
  readonly standing: readonly ReadFigure[];
}

/**
 * Each figure in the order taken, against what a healthy guitar would show given the figures that stood so far. The deviations are
 * independent standard normals on a healthy guitar, so n figures raise a false alarm with chance 1 - (1 - 2 Q(4))^n: 0.16 % for 25.
 */
export function scoreFigures(
  { predictor, healthy }: Pick<ClosingBench, 'predictor' | 'healthy'>,
  readings: readonly Reading[],
): FigureScore {
  const deviations = predictor.deviations(healthy);
  const off = new Set<Reading>();
  const standing: ReadFigure[] = [];
  const shared = new Shared(deviations);
  for (const reading of readings) {
    const key = askKey(reading.ask);
    const predictions = predictor.foretell(healthy, reading.ask, key).predictions;
    const figure = figureIn(predictions, deviations);
    const observations = observe(reading.seen);
    if (anotherKind(predictions, observations)) {
      off.add(reading);
      continue;
    }
    const level = observations.find((one) => one?.type === 'level');
    if (!figure || level?.type !== 'level') continue;
    // A repeat is held against the others, not against itself.
    const { mean, deviation } = withoutOwn(shared, standing, key, () => shared.foretell(figure));
    const seen = figureSeen(level);
    if (Math.abs(seen - mean) > ALARM * deviation) off.add(reading);
    else {
      standing.push({ reading, key, figure, seen });
      shared.add(figure, seen);
    }
  }
  return { off, standing };
}

/** What `look` finds once `shared` has forgotten the figures that stand for this very reading. */
export function withoutOwn<T>(
  shared: Shared,
  standing: readonly ReadFigure[],
  key: string,
  look: () => T,
): T {
  const own = standing.filter((one) => one.key === key);
  for (const { figure, seen } of own) shared.drop(figure, seen);
  const found = look();
  for (const { figure, seen } of own) shared.add(figure, seen);
  return found;
}

const anotherKind = (
  predictions: readonly Prediction[],
  observations: readonly (Observation | undefined)[],
): boolean =>
  predictions.some((one, at) => {
    const seen = observations[at];
    if (!seen) return false;
    return (
      (one.type === 'over' && seen.type === 'level') ||
      (one.type === 'level' && seen.type === 'over')
    );
  });

/** Once more at the end: each standing figure given all the others, whatever the order they were taken in. */
export function secondLook(
  { predictor, healthy }: Pick<ClosingBench, 'predictor' | 'healthy'>,
  { standing }: FigureScore,
): ReadonlySet<Reading> {
  const last = [...new Map(standing.map((one) => [one.key, one])).values()];
  if (last.length < 2) return new Set();
  const joint = new Joint(
    last.map(({ figure }) => figure),
    predictor.deviations(healthy),
  );
  const left = joint.givenOthers(last.map(({ figure, seen }) => seen - figure.mean));
  return new Set(
    last
      .filter((_, at) => {
        const { shift, deviation } = left[at] as { shift: number; deviation: number };
        return Math.abs(shift) > ALARM * deviation;
      })
      .map(({ reading }) => reading),
  );
}
