import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';
import { resistances } from './sizes.ts';

/** A wrong pot out of the same drawer: half, double, a fifth, four times (250 k, 500 k, 1 M, 100 k; common practice, no source). */
const WRONG = [0.2, 0.5, 2, 4] as const;

export const pots: FaultFamily = {
  name: 'pots',
  share: 0.1,
  reason: 'new parts are bad about one time in twenty; worn tracks come with age',
  list(circuit) {
    return circuit.parts.flatMap((part): Fault[] => {
      if (part.kind !== 'pot') return [];
      const remedy: Remedy = {
        key: `pot:${part.id}`,
        replaces: true,
        title: faultWords().replaceThePartPot(part.title),
        steps: [faultWords().sprayContactCleanerIntoIt, faultWords().ifItReadsTheSameReplaceIt],
        proof: faultWords().acrossItsOuterLugsItReads,
      };
      const common = { family: 'pots', sites: [part.id], remedy };
      return [
        {
          ...common,
          id: `track-lower:${part.id}`,
          sentence: faultWords().theTrackOfThePartIsBroken(part.title),
          weight: 0.8,
          variants: [{ edits: [{ op: 'open', site: `${part.id}:lower` }], share: 1 }],
        },
        {
          ...common,
          id: `track-upper:${part.id}`,
          sentence: faultWords().theTrackOfThePartIsBroken2(part.title),
          weight: 0.8,
          variants: [{ edits: [{ op: 'open', site: `${part.id}:upper` }], share: 1 }],
        },
        {
          ...common,
          id: `wiper:${part.id}`,
          sentence: faultWords().theWiperOfThePartMakesNo(part.title),
          weight: 1.2,
          variants: [
            { edits: [{ op: 'open', site: `${part.id}:wiper` }], share: 0.5 },
            // Less than a kilohm beside a track of hundreds cannot be heard.
            ...resistances(`${part.id}:wiper`, 0.5, 1e3),
          ],
        },
        {
          ...common,
          id: `worn:${part.id}`,
          sentence: faultWords().theTrackOfThePartIsWorn(part.title),
          weight: 1.5,
          variants: [{ edits: [{ op: 'worn', part: part.id }], share: 1 }],
        },
        {
          ...common,
          id: `wrong-pot:${part.id}`,
          sentence: faultWords().thePartIsAPotOfAnother(part.title),
          weight: 1,
          variants: WRONG.map((factor) => ({
            edits: [{ op: 'scale', part: part.id, factor }],
            share: 1 / WRONG.length,
          })),
        },
      ];
    });
  },
};
