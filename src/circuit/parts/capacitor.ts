import type { PartKindSpec } from './kind.ts';
import type { Capacitor } from './part.ts';
import { checkValue, expectedValue } from './value.ts';

/** Polyester film, the usual kind in guitars: about 0.5 % at 1 kHz (from memory). */
const LOSS_TANGENT = 0.005;

/** Open to direct current. */
export const capacitor: PartKindSpec<Capacitor> = {
  lugs: () => ['a', 'b'],
  branches: (part) => [
    {
      name: 'body',
      a: 'a',
      b: 'b',
      what: {
        type: 'capacitance',
        farads: expectedValue(part.farads),
        lossTangent: LOSS_TANGENT,
        value: part.id,
      },
      closed: true,
    },
  ],
  check: (part) => checkValue(part.title, 'farad', part.farads),
};
