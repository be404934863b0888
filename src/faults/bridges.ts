import { lugTitle } from '../circuit/names.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily } from './fault.ts';
import { neighbours } from './neighbours.ts';
import { leaks } from './sizes.ts';

export const bridges: FaultFamily = {
  name: 'bridges',
  share: 0.14,
  reason:
    'a strand or blob across neighbouring lugs, or a lug against case, shield or paint, is a frequent slip of the iron',
  list(circuit, layout) {
    const between = circuit.parts.flatMap((part) =>
      neighbours(part).map(([x, y]): Fault => {
        const [a, b] = [`${part.id}.${x}`, `${part.id}.${y}`];
        return {
          id: `bridge:${a}~${b}`,
          family: 'bridges',
          sites: [part.id],
          weight: part.kind === 'jack' ? 2 : 1,
          sentence: faultWords().lugTouchesLug2(lugTitle(layout, a), lugTitle(layout, b)),
          remedy: {
            key: `clear:${a}~${b}`,
            title: faultWords().clearWhatJoinsLugAndLug2(lugTitle(layout, a), lugTitle(layout, b)),
            steps: [
              faultWords().lookForAStrandABlobOr,
              faultWords().cutOrWickItAwayCleanOff,
              faultWords().bendTheLugsApartAndSleeve,
            ],
            proof: faultWords().noBeepBetweenTheTwoThatThe,
          },
          variants: leaks(a, b, 0.75),
        };
      }),
    );
    // Inside a shielded pickup lead the core can touch the braid.
    const inLead = circuit.pickups.flatMap((pickup): Fault[] => {
      const metal = pickup.plate ?? pickup.cover;
      const hot = circuit.leads.find(
        (lead) => lead.kind === 'pickup' && lead.from === `${pickup.coils.at(-1)}.finish`,
      );
      if (!metal || !hot) return [];
      return [
        {
          id: `core:${pickup.id}`,
          family: 'bridges',
          sites: [hot.id],
          weight: 1.5,
          sentence: faultWords().theHotCoreOfThePickupS(pickup.title),
          remedy: {
            key: `core:${pickup.id}`,
            title: faultWords().partTheCoreAndTheShieldOf(pickup.title),
            steps: [faultWords().lookAtTheStrippedEndFirst, faultWords().ifTheShortIsInsideCutThe],
            proof: faultWords().thePickupReadsItsOwnOhmsAgain(pickup.title),
          },
          variants: leaks(`${hot.id}@to`, `${metal}.metal`, 0.75),
        },
      ];
    });
    return [...between, ...inLead];
  },
};
