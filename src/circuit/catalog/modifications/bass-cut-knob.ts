import type { Circuit } from '../../circuit.ts';
import { farads } from '../../units.ts';
import { Draft } from './draft.ts';
import { addKnob, trackChoice } from './knobs.ts';
import { guarded, type Place } from './modification.ts';
import { heldAt, innerFirst, pickupPlaces } from './pickups.ts';

const whole: Place = { id: 'jack', title: 'whole guitar' };
/** Common practice, no source. */
const track = trackChoice(1e6, 500e3);

/** A rheostat across the capacitor: at 10 it shorts it, at 0 all but treble has to pass the capacitor. */
export const bassCutKnob = guarded({
  id: 'bass-cut-knob',
  title: 'Bass knob',
  does: 'Thins the bass as you turn down: a 3.3 nF capacitor in the hot wire with a pot across it.',
  applies: (circuit: Circuit) => [whole, ...pickupPlaces(circuit)],
  choices: () => [track],
  conflict: (circuit, { id }) => (id === whole.id ? null : innerFirst(circuit, id, 'bass knob')),
  apply(circuit, { id, title }, chosen) {
    const draft = new Draft(circuit);
    const hot = id === whole.id ? null : heldAt(circuit, id).hot;
    const out = hot ? hot.to : 'jack.tip';
    const name = hot ? `${id}Bass` : 'bass';
    const knob = addKnob(draft, `${name}Knob`, `bass knob of the ${title}`, chosen, track, {
      taper: 'reverse-audio',
    });
    const near = `${knob.id}.2`;
    if (hot) draft.land(hot.id, near);
    else draft.move('jack.tip', near);
    const { id: cap } = draft.add({
      kind: 'capacitor',
      id: `${name}Cap`,
      title: `bass capacitor of the ${title}`,
      farads: { nominal: farads(3.3e-9), tolerance: 0.1 },
    });
    draft.join(`${cap}NearLeg`, `${cap}.a`, near, 'leg');
    draft.join(`${cap}FarLeg`, `${cap}.b`, `${knob.id}.3`, 'leg');
    draft.join(`${knob.id}Out`, `${knob.id}.3`, out);
    return draft.done();
  },
  named: ({ title }) => `a bass knob of the ${title}`,
});
