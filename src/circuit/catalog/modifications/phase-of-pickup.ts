import { carrierChoice, fixed } from './carriers.ts';
import { guarded } from './modification.ts';
import { reversalNamed, reversed } from './phase-reversal.ts';
import { heldAt, hotMetal, innerFirst, pickupPlaces } from './pickups.ts';

export const phaseOfPickup = guarded({
  id: 'phase-of-pickup',
  title: 'Phase of a pickup reversed',
  does: 'Turns one pickup against the other, which sounds thin and hollow where both are on.',
  // One pickup alone sounds the same either way round.
  applies: (circuit) => (circuit.pickups.length > 1 ? pickupPlaces(circuit) : []),
  choices: (circuit) => [carrierChoice(circuit, fixed)],
  conflict: (circuit, { id }) => hotMetal(circuit, id) ?? innerFirst(circuit, id, 'phase reversal'),
  apply(circuit, { id }, chosen) {
    const { pickup, hot, cold } = heldAt(circuit, id);
    return reversed(circuit, [hot, cold], chosen, pickup);
  },
  named: reversalNamed,
});
