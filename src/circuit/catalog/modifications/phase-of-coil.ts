import type { Circuit, Lead } from '../../circuit.ts';
import { carrierChoice, fixed } from './carriers.ts';
import { guarded } from './modification.ts';
import { partOf } from './nets.ts';
import { reversalNamed, reversed } from './phase-reversal.ts';
import { coilLead, isHumbucker, pickupPlaces } from './pickups.ts';

const coilsOf = (circuit: Circuit) =>
  pickupPlaces(circuit, isHumbucker).flatMap(({ id }) => {
    const coils = circuit.pickups.find((pickup) => pickup.id === id)?.coils ?? [];
    return circuit.parts.filter((part) => coils.includes(part.id));
  });

const leadsOf = (circuit: Circuit, coil: string): readonly (Lead | null)[] =>
  (['finish', 'start'] as const).map((end) => coilLead(circuit, `${coil}.${end}`));

export const phaseOfCoil = guarded({
  id: 'phase-of-coil',
  title: 'Phase of one coil reversed',
  does: 'Turns one coil of a humbucker against the other: very thin, and it hums.',
  applies: (circuit) =>
    coilsOf(circuit).filter(({ id }) => leadsOf(circuit, id).some((lead) => lead !== null)),
  choices: (circuit) => [carrierChoice(circuit, fixed)],
  conflict(circuit, { id, title }) {
    const leads = leadsOf(circuit, id);
    const inside = circuit.leads.some(
      ({ kind, from, to }) =>
        kind === 'pickup' &&
        [`${id}.start`, `${id}.finish`].includes(from) &&
        partOf(to) !== id &&
        circuit.parts.some((part) => part.kind === 'coil' && part.id === partOf(to)),
    );
    return leads.includes(null) || inside || joinedByAnother(circuit, id)
      ? `The ${title} is joined to its neighbour inside the pickup: its two ends cannot be exchanged.`
      : null;
  },
  apply(circuit, { id, title }, chosen) {
    const [finish, start] = leadsOf(circuit, id) as [Lead, Lead];
    return reversed(circuit, [finish, start], chosen, { id, title });
  },
  named: reversalNamed,
});

const joinedByAnother = (circuit: Circuit, coil: string): boolean =>
  circuit.leads.some(({ kind, to }) => kind === 'pickup' && partOf(to) === coil);
