import type { Circuit } from '../../circuit.ts';
import { Draft } from './draft.ts';
import { addKnob, trackChoice } from './knobs.ts';
import { guarded, type Place } from './modification.ts';
import { netOf } from './nets.ts';
import { volumesOf } from './volumes.ts';

const all: Place = { id: 'jack', title: 'whole guitar' };
const track = trackChoice(500e3, 250e3, 1e6);

export const masterVolume = guarded({
  id: 'master-volume',
  title: 'Master volume',
  does: 'One more volume for the whole guitar, last before the jack.',
  // Where there is one volume it is the master already.
  applies: (circuit: Circuit) => (volumesOf(circuit).length === 1 ? [] : [all]),
  choices: () => [track],
  conflict(circuit) {
    const out = netOf(circuit, 'jack.tip');
    const last = volumesOf(circuit).find(({ id }) => out.has(`${id}.2`));
    return last ? `The ${last.title} comes last before the jack already.` : null;
  },
  apply(circuit, _place, chosen) {
    const draft = new Draft(circuit);
    const { id } = addKnob(draft, 'masterVolume', 'master volume', chosen, track, {
      role: 'volume',
    });
    draft.move('jack.tip', `${id}.3`);
    draft.join(`${id}Ground`, `${id}.1`, `${id}.case`);
    draft.join(`${id}Out`, `${id}.2`, 'jack.tip');
    return draft.done();
  },
  named: () => 'a master volume',
});
