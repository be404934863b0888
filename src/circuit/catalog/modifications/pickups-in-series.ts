import type { Circuit, Pickup } from '../../circuit.ts';
import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import { type Choice, guarded, type Option, optionOf, type Place } from './modification.ts';
import { groundNet } from './nets.ts';
import { endsOf, heldAt, hotMetal, metalOnCoil } from './pickups.ts';

interface Pair extends Place {
  readonly pickups: readonly [Pickup, Pickup];
}

/** Every two single coils. */
function pairs(circuit: Circuit): readonly Pair[] {
  const singles = circuit.pickups.filter(
    (pickup) => pickup.coils.length === 1 && endsOf(circuit, pickup) !== null,
  );
  return singles.flatMap((one, at) =>
    singles.slice(at + 1).map(
      (other): Pair => ({
        id: `${one.id}-${other.id}`,
        title: `${one.title} with the ${other.title}`,
        pickups: [one, other],
      }),
    ),
  );
}

const pairAt = (circuit: Circuit, id: string) =>
  pairs(circuit).find((pair) => pair.id === id) as Pair;

/** Whose place on the selector gets both: one whose cold end can leave ground. The other goes between it and ground. */
function upperChoice(circuit: Circuit, { id }: Place): Choice {
  const { pickups } = pairAt(circuit, id);
  const ground = groundNet(circuit);
  const free = pickups.filter(
    (pickup) =>
      metalOnCoil(circuit, pickup) === null && ground.has(heldAt(circuit, pickup.id).cold.to),
  );
  const options = (free.length > 0 ? free : pickups).map(({ id: one, title }) => ({
    id: one,
    title: `the ${title}`,
  }));
  return { id: 'upper', title: 'Heard where', options: options as [Option, ...Option[]] };
}

export const pickupsInSeries = guarded({
  id: 'pickups-in-series',
  title: 'Two single coils in series',
  does: 'Puts two single coils one behind the other where one of them is selected: louder and fuller; where only the other is selected the guitar is silent.',
  applies: (circuit) => pairs(circuit).map(({ id, title }) => ({ id, title })),
  choices: (circuit, place) => [upperChoice(circuit, place), carrierChoice(circuit)],
  conflict(circuit, place) {
    const { id, title } = upperChoice(circuit, place).options[0];
    const metal = hotMetal(circuit, id);
    if (metal) return metal;
    return groundNet(circuit).has(heldAt(circuit, id).cold.to)
      ? null
      : `The cold end of ${title} goes to a switch already.`;
  },
  apply(circuit, place, chosen) {
    const { pickups, title } = pairAt(circuit, place.id);
    const { id: first } = optionOf(upperChoice(circuit, place), chosen);
    const [one, other] = pickups;
    const [upper, lower] = one.id === first ? [one, other] : [other, one];
    const { cold } = heldAt(circuit, upper.id);
    const { hot } = heldAt(circuit, lower.id);
    const draft = new Draft(circuit);
    const name = `${upper.id}Series`;
    const { lug } = addSwitch(draft, circuit, chosen, {
      id: name,
      title: `series switch of the ${title}`,
      positions: ['each for itself', 'in series'],
      poles: 2,
    });
    draft.join(`${name}Ground`, lug('A1'), cold.to);
    draft.join(`${name}Lower`, lug('B1'), hot.to);
    draft.join(`${name}Link`, lug('A2'), lug('B2'));
    draft.land(cold.id, lug('AC'));
    draft.land(hot.id, lug('BC'));
    return draft.done();
  },
  named: ({ title }) => `the ${title} in series`,
});
