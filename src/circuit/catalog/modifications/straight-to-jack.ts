import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import { guarded } from './modification.ts';
import { heldAt, innerFirst, pickupPlaces } from './pickups.ts';

export const straightToJack = guarded({
  id: 'straight-to-jack',
  title: 'Straight to the jack',
  does: 'Takes one pickup past selector, volume and tone to the jack, and everything else off it.',
  applies: (circuit) => pickupPlaces(circuit),
  choices: (circuit) => [carrierChoice(circuit)],
  conflict: (circuit, { id }) => innerFirst(circuit, id, 'bypass'),
  apply(circuit, { id, title }, chosen) {
    const { hot } = heldAt(circuit, id);
    const draft = new Draft(circuit);
    const { lug } = addSwitch(draft, circuit, chosen, {
      id: `${id}Bypass`,
      title: `bypass switch of the ${title}`,
      positions: ['through the controls', `${title} straight to the jack`],
      poles: 2,
    });
    draft.move('jack.tip', lug('B1'));
    draft.join(`${id}BypassJack`, lug('BC'), 'jack.tip');
    draft.join(`${id}BypassControls`, lug('A1'), hot.to);
    draft.join(`${id}BypassLink`, lug('A2'), lug('B2'));
    draft.land(hot.id, lug('AC'));
    return draft.done();
  },
  named: ({ title }) => `the ${title} straight to the jack by a switch`,
});
