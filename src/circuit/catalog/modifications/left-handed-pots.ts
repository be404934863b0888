import type { Circuit } from '../../circuit.ts';
import type { Pot } from '../../parts/part.ts';
import { Draft } from './draft.ts';
import { guarded } from './modification.ts';

const potsOf = (circuit: Circuit): readonly Pot[] =>
  circuit.parts.filter((part) => part.kind === 'pot');

/** The same sweep seen from the other end of the track. */
const mirrored: Readonly<Record<Pot['taper'], Pot['taper']>> = {
  linear: 'linear',
  audio: 'reverse-audio',
  'reverse-audio': 'audio',
};

/** Outer lugs exchanged and the taper reversed (common practice, no source): at each figure of a knob the guitar is the same. */
export const leftHandedPots = guarded({
  id: 'left-handed-pots',
  title: 'Left-handed pots',
  does: 'Every knob counts the other way: 10 is fully counter-clockwise, with lugs 1 and 3 exchanged and the taper reversed.',
  applies: (circuit) => (potsOf(circuit).length > 0 ? [{ id: 'pots', title: 'every pot' }] : []),
  choices: () => [],
  conflict: (circuit) =>
    potsOf(circuit).some(({ leftHanded }) => leftHanded)
      ? 'A pot of this guitar is left-handed already.'
      : null,
  apply(circuit) {
    const draft = new Draft(circuit);
    for (const { id } of potsOf(circuit)) {
      draft.exchange(`${id}.1`, `${id}.3`);
      draft.change(id, (part) =>
        part.kind === 'pot' ? { ...part, taper: mirrored[part.taper], leftHanded: true } : part,
      );
    }
    return draft.done();
  },
  named: () => 'left-handed pots',
});
