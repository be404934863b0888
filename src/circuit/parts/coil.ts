import { circuitWords } from '../../words/en/circuit.ts';
import { CircuitError } from '../errors.ts';
import { ohms } from '../units.ts';
import type { PartKindSpec } from './kind.ts';
import type { Coil } from './part.ts';
import { checkValue, expectedValue } from './value.ts';

/**
 * How sharply a coil resonates with nothing attached: eddy currents in magnets, poles, plates and turns. Free coils lie about 3
 * (covered) to 10 (common practice, no source).
 */
const FREE_Q = 6;

/** Those losses as a resistance across the inductance: Q times the reactance at resonance, sqrt(L / C) (textbook, parallel resonance). */
const coreOhms = ({ henries, selfFarads }: Coil) => ohms(FREE_Q * Math.sqrt(henries / selfFarads));

/** A winding between two ends. Its EMF, when there is one, drives from start to finish. */
export const coil: PartKindSpec<Coil> = {
  lugs: () => ['start', 'finish'],
  branches: (part) => [
    {
      name: 'winding',
      a: 'start',
      b: 'finish',
      what: {
        type: 'winding',
        ohms: expectedValue(part.ohms),
        henries: part.henries,
        selfFarads: part.selfFarads,
        coreOhms: coreOhms(part),
        value: part.id,
      },
      closed: true,
    },
  ],
  check(part) {
    checkValue(part.title, 'ohm', part.ohms);
    for (const [what, value] of [
      ['inductance', part.henries],
      ['self-capacitance', part.selfFarads],
    ] as const)
      if (!(Number.isFinite(value) && value > 0))
        throw new CircuitError(
          'value-out-of-range',
          part.title,
          circuitWords().partWhatShouldBeAbove0Got(part.title, what, String(value)),
        );
    for (const [what, sign] of [
      [circuitWords().windingSense, part.winding],
      [circuitWords().magnetPolarity, part.magnet],
    ] as const)
      if (sign !== 1 && sign !== -1)
        throw new CircuitError(
          'value-out-of-range',
          part.title,
          circuitWords().partWhatShouldBe1Or1(part.title, what, String(sign)),
        );
  },
};
