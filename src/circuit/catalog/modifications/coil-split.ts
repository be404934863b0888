import { guarded } from './modification.ts';
import { linkPlaces, shuntChoices, shuntConflict, shunted } from './shunted-link.ts';

export const coilSplit = guarded({
  id: 'coil-split',
  title: 'Coil split',
  does: 'Shorts one coil of a humbucker so that the other sounds alone: brighter, softer, and it hums.',
  applies: linkPlaces,
  choices: shuntChoices,
  conflict: shuntConflict,
  apply: (circuit, place, chosen) => shunted(circuit, place, chosen, 'split'),
  named: ({ title }) => `a split of the ${title}`,
});
