import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import { feedAt, feeds } from './feeds.ts';
import { guarded } from './modification.ts';

export const addIn = guarded({
  id: 'add-in',
  title: 'Add-in switch',
  does: 'Adds one pickup to whatever the selector has on.',
  applies: (circuit) => feeds(circuit).map(({ id, title }) => ({ id, title })),
  choices: (circuit) => [carrierChoice(circuit)],
  conflict: () => null,
  apply(circuit, { id, title }, chosen) {
    const feed = feedAt(circuit, id);
    const draft = new Draft(circuit);
    const { lug } = addSwitch(draft, circuit, chosen, {
      id: `${id}AddIn`,
      title: `add-in switch of the ${title}`,
      positions: ['as the selector says', `${title} added`],
    });
    draft.join(`${id}AddInFeed`, feed.lug, lug('AC'));
    draft.join(`${id}AddInOut`, lug('A2'), feed.common);
    return draft.done();
  },
  named: ({ title }) => `an add-in switch for the ${title}`,
});
