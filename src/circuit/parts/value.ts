import { circuitWords } from '../../words/en/circuit.ts';
import { CircuitError } from '../errors.ts';
import type { Value } from './part.ts';

/** What the part is taken to be: its measured value where there is one, else the printed one. */
export function expectedValue<Q extends number>(value: Value<Q>): Q {
  return value.measured ?? value.nominal;
}

/** Relative standard deviation of the part around `expectedValue`. A measured part is known to about 1 %. */
export function relativeDeviation(value: Value<number>): number {
  return value.measured === undefined ? value.tolerance / 2 : 0.01;
}

export function checkValue(title: string, unit: string, value: Value<number>): void {
  const bad = (what: string, got: unknown, expected: string): never => {
    throw new CircuitError(
      'value-out-of-range',
      title,
      circuitWords().titleWhatShouldBeExpected(title, what, expected, String(got)),
    );
  };
  if (typeof value !== 'object' || value === null)
    bad(circuitWords().itsValue, value, circuitWords().aValueInUnit(unit));
  const positive = (x: unknown): boolean => typeof x === 'number' && Number.isFinite(x) && x > 0;
  if (!positive(value.nominal))
    bad(circuitWords().thePrintedValue, value.nominal, circuitWords().above0(unit));
  if (value.measured !== undefined && !positive(value.measured))
    bad(circuitWords().theMeasuredValue, value.measured, circuitWords().above0(unit));
  if (value.measuredOpen !== undefined && value.measuredOpen !== true)
    bad(circuitWords().measuredOpen, value.measuredOpen, circuitWords().trueOrNothing);
  const at = value.measuredAt;
  if (at !== undefined && !(typeof at === 'number' && at >= -50 && at <= 100))
    bad(circuitWords().itsWarmthWhenMeasured, at, circuitWords().warmth);
  if (typeof value.tolerance !== 'number' || !(value.tolerance > 0 && value.tolerance <= 1))
    bad(circuitWords().theTolerance, value.tolerance, circuitWords().above0AndAtMost1100);
}
