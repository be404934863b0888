import type { Circuit, Pickup } from '../../circuit.ts';
import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import { guarded } from './modification.ts';
import { coilLead, heldAt, innerSwitch, isHumbucker, linkOf, pickupPlaces } from './pickups.ts';

/** The leads of the inner ends, cold coil first, where each reaches the link by itself. */
function innerLeads(circuit: Circuit, pickup: Pickup) {
  const one = coilLead(circuit, `${pickup.coils[0]}.finish`);
  const other = coilLead(circuit, `${pickup.coils.at(-1)}.start`);
  return one && other ? ([one, other] as const) : null;
}

export const seriesParallel = guarded({
  id: 'series-parallel',
  title: 'Series or parallel coils',
  does: 'Puts the two coils of a humbucker side by side instead of one behind the other: brighter, softer, still without hum.',
  applies: (circuit) =>
    pickupPlaces(
      circuit,
      (pickup) => isHumbucker(pickup) && coilLead(circuit, `${pickup.coils[0]}.finish`) !== null,
    ),
  choices: (circuit) => [carrierChoice(circuit)],
  conflict(circuit, { id }) {
    const { pickup } = heldAt(circuit, id);
    const fitted = innerSwitch(circuit, pickup);
    if (fitted) return `The coils of the ${pickup.title} go to the ${fitted} already.`;
    return innerLeads(circuit, pickup) && linkOf(circuit, pickup)
      ? null
      : `The coils of the ${pickup.title} are joined inside it: they can only be in series.`;
  },
  apply(circuit, { id }, chosen) {
    const { pickup, hot, cold, hotCoil } = heldAt(circuit, id);
    const [first, last] = innerLeads(circuit, pickup) as NonNullable<ReturnType<typeof innerLeads>>;
    // In parallel the inner end of the cold coil goes to hot, that of the hot coil to ground.
    const [ofCold, ofHot] = pickup.coils.at(-1) === hotCoil ? [first, last] : [last, first];
    const draft = new Draft(circuit);
    const { lug } = addSwitch(draft, circuit, chosen, {
      id: `${id}Coils`,
      title: `series/parallel switch of the ${pickup.title}`,
      positions: ['coils in series', 'coils in parallel'],
      poles: 2,
    });
    draft.land(ofCold.id, lug('AC'));
    draft.land(ofHot.id, lug('BC'));
    draft.join(`${id}Series`, lug('A1'), lug('B1'));
    draft.join(`${id}ParallelHot`, lug('A2'), hot.to);
    draft.join(`${id}ParallelCold`, lug('B2'), cold.to);
    return draft.done();
  },
  named: ({ title }) => `series/parallel of the ${title}`,
});
