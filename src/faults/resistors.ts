import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';

export const resistors: FaultFamily = {
  name: 'resistors',
  share: 0.02,
  reason:
    'new resistors seldom fail; one ring of the colour code misread is ten times too much or too little',
  list(circuit) {
    return circuit.parts.flatMap((part): Fault[] => {
      if (part.kind !== 'resistor') return [];
      const remedy: Remedy = {
        key: `resistor:${part.id}`,
        title: faultWords().replaceThePart(part.title),
        steps: [faultWords().liftOneLegAndReadItAlone, faultWords().replaceItWithOneOfTheIntended],
        proof: faultWords().withOneLegLiftedItReadsAsMarked(part.title),
      };
      const common = { family: 'resistors', sites: [part.id], remedy };
      return [
        {
          ...common,
          id: `resistor-open:${part.id}`,
          sentence: faultWords().thePartIsOpenInside(part.title),
          weight: 1,
          variants: [{ edits: [{ op: 'open', site: `${part.id}:body` }], share: 1 }],
        },
        {
          ...common,
          id: `resistor-value:${part.id}`,
          sentence: faultWords().thePartHasAnotherValue(part.title),
          weight: 2,
          variants: [0.1, 10].map((factor) => ({
            edits: [{ op: 'scale', part: part.id, factor }],
            share: 1 / 2,
          })),
        },
      ];
    });
  },
};
