import { Draft } from './draft.ts';
import { guarded } from './modification.ts';
import { groundNet } from './nets.ts';
import { heldAt, metalLead, metalOnCoil, pickupPlaces } from './pickups.ts';

export const ownGround = guarded({
  id: 'own-ground',
  title: 'Own ground wire for the metal of a pickup',
  does: 'Takes cover or base plate off the cold lead and gives it a ground wire, so that the pickup can be reversed without hot metal.',
  applies: (circuit) => pickupPlaces(circuit, (pickup) => metalOnCoil(circuit, pickup) !== null),
  choices: () => [],
  conflict: () => null,
  apply(circuit, { id }) {
    const { pickup, cold } = heldAt(circuit, id);
    const lead = metalLead(circuit, pickup);
    if (!lead) return circuit;
    const draft = new Draft(circuit);
    // Where the cold lead goes is ground, unless a switch took it away from there.
    draft.land(lead.id, groundNet(circuit).has(cold.to) ? cold.to : 'jack.sleeve');
    return draft.done();
  },
  named: ({ title }) => `a ground wire of its own for the metal of the ${title}`,
});
