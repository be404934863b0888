import { Draft } from './draft.ts';
import { guarded } from './modification.ts';
import { hangingOf } from './tones.ts';
import { inputOf } from './volumes.ts';

export const toneSide = guarded({
  id: 'tone-side',
  title: 'Tone on the other side of the volume',
  does: 'Hangs the tone on the output of the volume instead of its input, or the other way round: the treble changes when you turn down.',
  // Where the pickup is on the wiper, lug 3 is shared by all volumes: a tone moved there would leave its pickup.
  applies: (circuit) =>
    circuit.parts.filter((part) => {
      const hanging =
        part.kind === 'pot' && part.role === 'tone' ? hangingOf(circuit, part.id) : null;
      return hanging !== null && inputOf(circuit, hanging.volume) === '3';
    }),
  choices: () => [],
  conflict: () => null,
  apply(circuit, { id }) {
    const hanging = hangingOf(circuit, id);
    if (!hanging) return circuit;
    const draft = new Draft(circuit);
    const other = `${hanging.volume}.${hanging.lug === '2' ? '3' : '2'}`;
    if (hanging.end === 'to') draft.land(hanging.lead.id, other);
    else draft.start(hanging.lead.id, other);
    return draft.done();
  },
  named: ({ title }) => `the ${title} on the other side of its volume`,
});
