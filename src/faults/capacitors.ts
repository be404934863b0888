import { ohms } from '../circuit/units.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';

export const capacitors: FaultFamily = {
  name: 'capacitors',
  share: 0.03,
  reason:
    'film and ceramic capacitors seldom fail; a wrong value is read off the wrong code now and then',
  list(circuit) {
    return circuit.parts.flatMap((part): Fault[] => {
      if (part.kind !== 'capacitor') return [];
      const remedy: Remedy = {
        key: `capacitor:${part.id}`,
        title: faultWords().replaceThePart(part.title),
        steps: [faultWords().liftOneLegAndReadItAlone, faultWords().replaceItWithOneOfTheIntended],
        proof: faultWords().openToTheOhmRangeOnceIt,
      };
      const [a, b] = [`${part.id}.a`, `${part.id}.b`];
      const common = { family: 'capacitors', sites: [part.id], remedy };
      return [
        {
          ...common,
          id: `cap-short:${part.id}`,
          sentence: faultWords().thePartIsShorted(part.title),
          weight: 1,
          variants: [
            {
              edits: [{ op: 'bridge', a, b, ohms: ohms(1) }],
              share: 1,
              loose: { site: 'first bridge', deviation: 0.9 },
            },
          ],
        },
        {
          ...common,
          id: `cap-leak:${part.id}`,
          sentence: faultWords().thePartLeaks(part.title),
          weight: 0.7,
          variants: [5e3, 50e3, 500e3].map((size) => ({
            edits: [{ op: 'bridge', a, b, ohms: ohms(size) }],
            share: 1 / 3,
            loose: { site: 'first bridge', deviation: 0.9 },
          })),
        },
        {
          ...common,
          id: `cap-open:${part.id}`,
          sentence: faultWords().thePartIsOpenInside(part.title),
          weight: 1,
          variants: [{ edits: [{ op: 'open', site: `${part.id}:body` }], share: 1 }],
        },
        {
          ...common,
          id: `cap-value:${part.id}`,
          sentence: faultWords().thePartHasAnotherValue(part.title),
          weight: 1,
          variants: [0.01, 0.1, 10].map((factor) => ({
            edits: [{ op: 'scale', part: part.id, factor }],
            share: 1 / 3,
          })),
        },
      ];
    });
  },
};
