import { Draft } from './draft.ts';
import { guarded, type Place } from './modification.ts';
import { inputOf, volumesOf } from './volumes.ts';

const all: Place = { id: 'volumes', title: 'volumes' };

export const independentVolumes = guarded({
  id: 'independent-volumes',
  title: 'Independent volumes',
  does: 'Brings each pickup to the wiper of its volume, so that one at 0 no longer silences both.',
  applies: (circuit) => (volumesOf(circuit).length > 1 ? [all] : []),
  choices: () => [],
  conflict(circuit) {
    const other = volumesOf(circuit).find(({ id }) => inputOf(circuit, id) !== '3');
    if (!other) return null;
    return inputOf(circuit, other.id) === '2'
      ? `A pickup comes to the wiper of the ${other.title} already.`
      : `No pickup comes to lug 3 of the ${other.title} alone.`;
  },
  apply(circuit) {
    const draft = new Draft(circuit);
    for (const { id } of volumesOf(circuit)) draft.exchange(`${id}.2`, `${id}.3`);
    return draft.done();
  },
  named: () => 'independent volumes',
});
