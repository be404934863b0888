import type { Circuit, LugRef } from '../../circuit.ts';
import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import { type Choice, guarded, type Place } from './modification.ts';
import { heldAt, linkOf } from './pickups.ts';
import { linkPlaces, shuntConflict, splitBySelector } from './shunted-link.ts';

interface Pair extends Place {
  readonly pickups: readonly [Place, Place];
}

const pairs = (circuit: Circuit): readonly Pair[] => {
  const all = linkPlaces(circuit);
  return all.flatMap((one, at) =>
    all.slice(at + 1).map(
      (other): Pair => ({
        id: `${one.id}-${other.id}`,
        title: `${one.title} and the ${other.title}`,
        pickups: [one, other],
      }),
    ),
  );
};
const pairAt = (circuit: Circuit, id: string): Pair =>
  pairs(circuit).find((pair) => pair.id === id) as Pair;

function keptChoice(circuit: Circuit, { id }: Place): Choice {
  const hot = { id: 'hot', title: 'those next to the hot leads' };
  const cold = { id: 'cold', title: 'those next to ground' };
  const hotAlone = pairAt(circuit, id).pickups.some((one) => splitBySelector(circuit, one.id));
  return { id: 'kept', title: 'Coils kept', options: hotAlone ? [hot] : [hot, cold] };
}

/** One pole a pickup. */
export const splitBoth = guarded({
  id: 'split-both',
  title: 'Both splits on one switch',
  does: 'Shorts one coil of each of two humbuckers with one switch.',
  applies: (circuit) => pairs(circuit).map(({ id, title }) => ({ id, title })),
  choices: (circuit, place) => [keptChoice(circuit, place), carrierChoice(circuit)],
  conflict(circuit, { id }) {
    const [one, other] = pairAt(circuit, id).pickups;
    return shuntConflict(circuit, one) ?? shuntConflict(circuit, other);
  },
  apply(circuit, { id, title }, chosen) {
    const { pickups } = pairAt(circuit, id);
    const draft = new Draft(circuit);
    const { lug } = addSwitch(draft, circuit, chosen, {
      id: 'bothSplits',
      title: `split switch of the ${title}`,
      positions: ['both coils', 'one coil of each'],
      poles: 2,
    });
    (['A', 'B'] as const).forEach((pole, at) => {
      const { pickup, hot, cold } = heldAt(circuit, (pickups[at] as Place).id);
      draft.join(`${pickup.id}SplitLink`, linkOf(circuit, pickup) as LugRef, lug(`${pole}C`));
      const far = chosen['kept'] === 'cold' ? hot.to : cold.to;
      draft.join(`${pickup.id}SplitShunt`, lug(`${pole}2`), far);
    });
    return draft.done();
  },
  named: ({ title }) => `a split of the ${title} on one switch`,
});
