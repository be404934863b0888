import type { LugRef } from '../../circuit.ts';
import { Draft } from './draft.ts';
import { addKnob, endChoice, trackChoice } from './knobs.ts';
import { guarded, optionOf } from './modification.ts';
import { heldAt, linkOf } from './pickups.ts';
import { keptChoice, linkPlaces, shuntConflict } from './shunted-link.ts';

/** Against a coil of some kilohms a large track does all in its last degrees; a small one sweeps (common practice, no source). */
const track = trackChoice(500e3, 250e3, 25e3, 10e3);

export const sweptSplit = guarded({
  id: 'swept-split',
  title: 'Split knob',
  does: 'Fades one coil of a humbucker out as you turn down: both coils at 10, the other alone at 0.',
  applies: linkPlaces,
  choices: (circuit, place) => [keptChoice(circuit, place), track, endChoice],
  conflict: shuntConflict,
  apply(circuit, { id, title }, chosen) {
    const { pickup, hot, cold } = heldAt(circuit, id);
    const link = linkOf(circuit, pickup) as LugRef;
    const draft = new Draft(circuit);
    const knob = addKnob(draft, `${id}SplitKnob`, `split knob of the ${title}`, chosen, track, {
      taper: 'linear',
      noLoad: optionOf(endChoice, chosen).id === 'no-load',
    });
    draft.join(`${knob.id}Link`, link, `${knob.id}.2`);
    draft.join(`${knob.id}Shunt`, `${knob.id}.1`, chosen['kept'] === 'cold' ? hot.to : cold.to);
    return draft.done();
  },
  named: ({ title }) => `a split knob for the ${title}`,
});
