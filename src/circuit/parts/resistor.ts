import type { PartKindSpec } from './kind.ts';
import type { Resistor } from './part.ts';
import { checkValue, expectedValue } from './value.ts';

export const resistor: PartKindSpec<Resistor> = {
  lugs: () => ['a', 'b'],
  branches: (part) => [
    {
      name: 'body',
      a: 'a',
      b: 'b',
      what: { type: 'resistance', ohms: expectedValue(part.ohms), value: part.id },
      closed: true,
    },
  ],
  check: (part) => checkValue(part.title, 'ohm', part.ohms),
};
