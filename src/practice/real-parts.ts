import type { Circuit } from '../circuit/circuit.ts';
import type { Part, Value } from '../circuit/parts/part.ts';
import { farads, henries, type Ohms, ohms } from '../circuit/units.ts';
import type { Dice } from './dice.ts';

/** Copper's change of resistance per kelvin at 20 C. Source: IEC 60028 (0.00393). */
export const copperPerKelvin = 0.00393;

/** Room temperatures a bench sees, in C. */
export const benchCelsius = [12, 30] as const;

/**
 * The circuit with the values its parts really have, as `measured`. A value that the owner measured already is the
 * real one within half a per cent; otherwise the spread is that of the part's kind (common practice, no source):
 * pots within 20 %, more often low than high; coils within 8 % at 20 C (the wire's diameter alone gives +8.5/-7.5 %),
 * then copper at the bench's temperature; capacitors within 10 %, resistors within 5 %.
 */
export function realCircuit(circuit: Circuit, celsius: number, dice: Dice): Circuit {
  return { ...circuit, parts: circuit.parts.map((part) => realPart(part, celsius, dice)) };
}

function realPart(part: Part, celsius: number, dice: Dice): Part {
  switch (part.kind) {
    case 'coil': {
      const cold = part.ohms.nominal * (1 + dice.normalWithin(0, 0.04, 0.08));
      const warm = cold * (1 + copperPerKelvin * (celsius - 20));
      const real = part.ohms.measured === undefined ? warm : known(part.ohms.measured, dice);
      return {
        ...part,
        ohms: { ...part.ohms, measured: ohms(real) },
        henries: henries(part.henries * (1 + dice.normalWithin(0, 0.04, 0.1))),
        selfFarads: farads(part.selfFarads * (1 + dice.normalWithin(0, 0.08, 0.2))),
      };
    }
    case 'pot': {
      const midShare = part.midShare * (1 + dice.normalWithin(0, 0.1, 0.25));
      return { ...part, midShare, ohms: { ...part.ohms, measured: trackOhms(part.ohms, dice) } };
    }
    case 'capacitor': {
      const { nominal, measured } = part.farads;
      const real =
        measured === undefined
          ? nominal * (1 + dice.normalWithin(0, 0.05, 0.1))
          : known(measured, dice);
      return { ...part, farads: { ...part.farads, measured: farads(real) } };
    }
    case 'resistor': {
      const { nominal, measured } = part.ohms;
      const real =
        measured === undefined
          ? nominal * (1 + dice.normalWithin(0, 0.02, 0.05))
          : known(measured, dice);
      return { ...part, ohms: { ...part.ohms, measured: ohms(real) } };
    }
    default:
      return part;
  }
}

/** A measured value is off by what the meter was off. */
function known(measured: number, dice: Dice): number {
  return measured * (1 + dice.normalWithin(0, 0.0025, 0.005));
}

/** Two half normals that meet 2 % below the printed value, the lower one wider, cut at +-20 %. */
function trackOhms({ nominal, measured }: Value<Ohms>, dice: Dice): Ohms {
  if (measured !== undefined) return ohms(known(measured, dice));
  for (;;) {
    const normal = dice.normal();
    const deviation = -0.02 + normal * (normal < 0 ? 0.1 : 0.07);
    if (Math.abs(deviation) <= 0.2) return ohms(nominal * (1 + deviation));
  }
}
