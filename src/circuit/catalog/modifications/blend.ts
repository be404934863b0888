import { Draft } from './draft.ts';
import { feedAt, feeds } from './feeds.ts';
import { addKnob, endChoice, trackChoice } from './knobs.ts';
import { guarded, optionOf } from './modification.ts';

const track = trackChoice(250e3, 500e3, 1e6);

/** Common practice, no source: a rheostat from the pickup's place on the selector to the selector's output. */
export const blend = guarded({
  id: 'blend',
  title: 'Blend knob',
  does: 'Brings one pickup in on top of whatever the selector has on, as far as you turn down: all of it at 0.',
  applies: (circuit) => feeds(circuit).map(({ id, title }) => ({ id, title })),
  choices: () => [track, endChoice],
  conflict: () => null,
  apply(circuit, { id, title }, chosen) {
    const feed = feedAt(circuit, id);
    const draft = new Draft(circuit);
    const knob = addKnob(draft, `${id}Blend`, `blend knob of the ${title}`, chosen, track, {
      taper: 'linear',
      noLoad: optionOf(endChoice, chosen).id === 'no-load',
    });
    draft.join(`${knob.id}Feed`, feed.lug, `${knob.id}.2`);
    draft.join(`${knob.id}Out`, `${knob.id}.1`, feed.common);
    return draft.done();
  },
  named: ({ title }) => `a blend knob for the ${title}`,
});
