import { type Ohms, ohms } from '../circuit/units.ts';
import { askKey } from '../diagnosis/ask-key.ts';
import { observe } from '../readings/index.ts';
import type { Ask, Reading } from '../readings/reading.ts';
import { figureIn } from './apart.ts';
import { figureSeen, ohmsAt } from './figure.ts';
import type { ClosingBench } from './plan.ts';

/** A figure that is not what it was at the last check. */
export interface Change {
  readonly ask: Ask;
  readonly before: Ohms;
  readonly now: Ohms;
  /** How much more it reads, as a share; negative where less. */
  readonly share: number;
  /** Kelvin by which its coils would be warmer to explain it; absent where it hangs on no coil, or more than a room could do. */
  readonly warmer?: number;
}

/** Copper, per kelvin at 20 C (IEC 60028). */
const PER_KELVIN = 0.00393;
/** Less than this a meter and a hand do by themselves. */
const LEAST = 0.012;
/** A share of a figure that hangs on copper below which warmth explains nothing. */
const COPPER = 0.6;
/** Warmer or colder than a room gets between two checks. */
const MOST_KELVIN = 20;
/** Below this, leads and contacts decide, ohm. */
const LEAST_OHMS = 100;

/** What reads otherwise than at the last check, the largest change first. Readings of the same ask alone are compared. */
export function changesSince(
  { predictor, healthy }: Pick<ClosingBench, 'predictor' | 'healthy'>,
  before: readonly Reading[],
  now: readonly Reading[],
): readonly Change[] {
  const figures = (readings: readonly Reading[]) =>
    new Map(
      readings.flatMap(({ ask, seen }) => {
        const level = observe(seen).find((one) => one?.type === 'level');
        return level?.type === 'level' ? [[askKey(ask), { ask, seen: figureSeen(level) }]] : [];
      }),
    );
  const old = figures(before);
  const temperature = predictor.unknowns.list.findIndex(({ warmth }) => warmth);
  return [...figures(now)]
    .flatMap(([key, { ask, seen }]): Change[] => {
      const then = old.get(key);
      if (!then) return [];
      const [was, is] = [ohmsAt(then.seen), ohmsAt(seen)];
      const share = is / was - 1;
      if (Math.min(was, is) < LEAST_OHMS || Math.abs(share) < LEAST) return [];
      const figure = figureIn(
        predictor.foretell(healthy, ask, key).predictions,
        predictor.deviations(healthy),
      );
      const copper = figure?.slopes[temperature] ?? 0;
      const warmer = Math.log(is / was) / (PER_KELVIN * copper);
      const explains = copper > COPPER && Math.abs(warmer) <= MOST_KELVIN;
      return [{ ask, before: ohms(was), now: ohms(is), share, ...(explains ? { warmer } : {}) }];
    })
    .sort((x, y) => Math.abs(y.share) - Math.abs(x.share));
}
