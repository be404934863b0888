import { expect, it } from 'vitest';
import { ohms } from '../circuit/units.ts';
import { ALARM } from './apart.ts';
import { figureOf } from './figure.ts';
import { Shared } from './shared.ts';

it('two ends of tracks read as one figure do not foretell each other, be they sixty times apart', () => {
  // The ends of two pots, each within 1 to 100 ohm: ln 10 / 2 about 10 ohm.
  const wide = Math.log(10) / 2;
  const deviations = Float64Array.from([wide, wide]);
  const level = (middle: number, slopes: readonly number[]) => ({
    type: 'level' as const,
    mean: Math.log(middle),
    ohms: ohms(middle),
    slopes: Float64Array.from(slopes),
    noise: 0.01,
  });
  const [both, one, other] = [
    figureOf(level(20, [0.5, 0.5]), deviations),
    figureOf(level(10, [1, 0]), deviations),
    figureOf(level(10, [0, 1]), deviations),
  ];
  const seen = (value: number) => Math.log(value + 1);
  const shared = new Shared(deviations);
  shared.add(both, seen(76.2));
  shared.add(one, seen(75));
  const { mean, deviation } = shared.foretell(other);
  expect(Math.abs(seen(1.2) - mean)).toBeLessThan(ALARM * deviation);
  // An end read by itself does foretell the same end.
  expect(shared.foretell(one).deviation).toBeLessThan(0.1);
});
