import type { Circuit } from '../../circuit.ts';
import { farads } from '../../units.ts';
import { addSwitch, carrierChoice, fixed, isFixed } from './carriers.ts';
import { Draft } from './draft.ts';
import { guarded, type Place } from './modification.ts';
import { heldAt, innerFirst, pickupPlaces } from './pickups.ts';

const whole: Place = { id: 'jack', title: 'whole guitar' };

/** 3.3 nF: common practice, no source. Behind a fixed one the meter reads open: no direct current passes. */
export const bassCut = guarded({
  id: 'bass-cut',
  title: 'Bass cut',
  does: 'Thins the bass with a 3.3 nF capacitor in the hot wire.',
  applies: (circuit: Circuit) => [whole, ...pickupPlaces(circuit)],
  choices: (circuit) => [carrierChoice(circuit, fixed)],
  conflict: (circuit, { id }) => (id === whole.id ? null : innerFirst(circuit, id, 'bass cut')),
  apply(circuit, { id, title }, chosen) {
    const draft = new Draft(circuit);
    const isWhole = id === whole.id;
    const hot = isWhole ? null : heldAt(circuit, id).hot;
    const out = hot ? hot.to : 'jack.tip';
    const name = isWhole ? 'bassCut' : `${id}BassCut`;
    const lugs = isFixed(chosen)
      ? null
      : addSwitch(draft, circuit, chosen, {
          id: `${name}Switch`,
          title: `bass cut switch of the ${title}`,
          positions: ['full bass', 'bass cut'],
        });
    // What came to the old lug comes to the near side of the capacitor; the far side goes on to the old lug.
    const near = lugs
      ? lugs.lug('AC')
      : `${draft.add({ kind: 'splice', id: `${name}Joint`, title: `joint before the bass cut of the ${title}` }).id}.joint`;
    if (hot) draft.land(hot.id, near);
    else draft.move('jack.tip', near);
    const { id: cap } = draft.add({
      kind: 'capacitor',
      id: name,
      title: `bass cut capacitor of the ${title}`,
      farads: { nominal: farads(3.3e-9), tolerance: 0.1 },
    });
    draft.join(`${name}NearLeg`, `${cap}.a`, near, 'leg');
    if (lugs) {
      draft.join(`${name}FarLeg`, `${cap}.b`, lugs.lug('A1'), 'leg');
      draft.join(`${name}Out`, lugs.lug('A1'), out);
    } else draft.join(`${name}FarLeg`, `${cap}.b`, out, 'leg');
    return draft.done();
  },
  named: ({ title }) => `a bass cut of the ${title}`,
});
