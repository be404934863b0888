import type { Edit } from '../circuit/edit.ts';
import type { PartOf } from '../circuit/parts/part.ts';
import { contacts } from '../circuit/parts/switch.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';
import { resistances } from './sizes.ts';

/** The switch turned half round: the lug that should be first in a row is last. A single row of three, or rows exchanged end to end. */
function turned(part: PartOf<'switch'>): readonly Edit[] {
  const flat = part.rows.flat();
  return flat.slice(0, Math.floor(flat.length / 2)).map((lug, at) => ({
    op: 'exchange',
    lugs: [`${part.id}.${lug}`, `${part.id}.${flat[flat.length - 1 - at]}`],
  }));
}

export const switches: FaultFamily = {
  name: 'switches',
  share: 0.09,
  reason:
    'oxidised contacts are common in old switches; a switch fitted the wrong way round is a slip',
  list(circuit, layout) {
    return circuit.parts.flatMap((part): Fault[] => {
      if (part.kind !== 'switch') return [];
      const remedy: Remedy = {
        key: `switch:${part.id}`,
        title: faultWords().cleanOrReplaceThePart(part.title),
        steps: [
          faultWords().sprayContactCleanerOnTheContacts,
          faultWords().bendATiredContactBackOrReplace,
        ],
        proof: faultWords().eachPositionBeepsBetweenJust,
      };
      const common = { family: 'switches', remedy };
      return [
        ...contacts(part)
          // A contact between lugs that nothing is soldered to is never missed.
          .filter(({ a, b }) => [a, b].every((lug) => layout.jointsAt.has(`${part.id}.${lug}`)))
          .map((contact): Fault => {
            const site = `${part.id}:${contact.name}`;
            return {
              ...common,
              id: `contact:${site}`,
              sites: [site],
              sentence: faultWords().theContactContactOfThePart(contact.name, part.title),
              weight: 1,
              variants: [
                { edits: [{ op: 'open', site }], share: 0.5 },
                ...resistances(site, 0.35),
                { edits: [{ op: 'intermittent', site }], share: 0.15 },
              ],
            };
          }),
        ...part.positions.map(
          (position): Fault => ({
            ...common,
            id: `stuck:${part.id}:${position.name}`,
            sites: [part.id],
            sentence: faultWords().thePartStaysInItsPosition(part.title, position.title),
            weight: 0.3,
            variants: [
              { edits: [{ op: 'stick', part: part.id, position: position.name }], share: 1 },
            ],
          }),
        ),
        {
          id: `turned:${part.id}`,
          family: 'switches',
          sites: [part.id],
          sentence: faultWords().thePartIsMountedTheWrongWay(part.title),
          weight: 0.8,
          remedy: {
            key: `mount:${part.id}`,
            title: faultWords().turnThePartHalfRound(part.title),
            steps: [faultWords().undoItsScrewsOrNutTurnIt],
            proof: faultWords().eachPositionGivesThePickup,
          },
          variants: [{ edits: turned(part), share: 1 }],
        },
      ];
    });
  },
};
