import { Draft } from './draft.ts';
import { guarded } from './modification.ts';

export const noLoadTone = guarded({
  id: 'no-load-tone',
  title: 'No-load tone pot',
  does: 'At 10 the tone leaves its track and takes nothing away: as bright as with no tone at all.',
  applies: (circuit) => circuit.parts.filter((part) => part.kind === 'pot' && part.role === 'tone'),
  choices: () => [],
  conflict(circuit, { id }) {
    const pot = circuit.parts.find((part) => part.id === id);
    return pot?.kind === 'pot' && pot.noLoad ? `The ${pot.title} is a no-load pot already.` : null;
  },
  apply(circuit, { id }) {
    const draft = new Draft(circuit);
    draft.change(id, (part) => (part.kind === 'pot' ? { ...part, noLoad: true } : part));
    return draft.done();
  },
  named: ({ title }) => `a no-load ${title}`,
});
