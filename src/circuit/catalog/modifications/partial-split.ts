import { ohms } from '../../units.ts';
import { type Choice, guarded, optionOf } from './modification.ts';
import { linkPlaces, shuntChoices, shuntConflict, shunted } from './shunted-link.ts';

/** Common practice, no source. */
const size: Choice = {
  id: 'ohms',
  title: 'Resistor',
  options: [
    { id: '2200', title: '2.2 kΩ' },
    { id: '1100', title: '1.1 kΩ' },
  ],
};

export const partialSplit = guarded({
  id: 'partial-split',
  title: 'Partial split',
  does: 'Like a coil split, but through a resistor that leaves some of the other coil in: fuller than a split.',
  applies: linkPlaces,
  choices: (circuit, place) => [size, ...shuntChoices(circuit, place)],
  conflict: shuntConflict,
  apply(circuit, place, chosen) {
    return shunted(circuit, place, chosen, 'partial split', (draft, from, to) => {
      const { id } = draft.add({
        kind: 'resistor',
        id: `${place.id}SplitResistor`,
        title: `split resistor of the ${place.title}`,
        ohms: { nominal: ohms(Number(optionOf(size, chosen).id)), tolerance: 0.05 },
      });
      draft.join(`${id}SwitchLeg`, `${id}.a`, from, 'leg');
      draft.join(`${id}FarLeg`, `${id}.b`, to, 'leg');
    });
  },
  named: ({ title }) => `a partial split of the ${title}`,
});
