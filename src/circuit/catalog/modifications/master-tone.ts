import type { Circuit } from '../../circuit.ts';
import { capacitor } from '../build.ts';
import { Draft } from './draft.ts';
import { addKnob, trackChoice } from './knobs.ts';
import { type Choice, guarded, type Option, optionOf, type Place } from './modification.ts';
import { netOf, partOf } from './nets.ts';
import { hangingOf } from './tones.ts';

const all: Place = { id: 'jack', title: 'whole guitar' };
const track = trackChoice(500e3, 250e3);

const tonesOf = (circuit: Circuit) =>
  circuit.parts.filter((part) => part.kind === 'pot' && part.role === 'tone');

/** A pot of its own, or one of the tones that hang on a volume. */
const madeOf = (circuit: Circuit): Choice => ({
  id: 'made',
  title: 'Made of',
  options: [
    { id: 'new', title: 'a pot of its own' },
    ...tonesOf(circuit)
      .filter(({ id }) => hangingOf(circuit, id) !== null)
      .map(({ id, title }) => ({ id, title: `the ${title}, moved` })),
  ] as [Option, ...Option[]],
});

export const masterTone = guarded({
  id: 'master-tone',
  title: 'Master tone',
  does: 'One tone for the whole guitar, across the jack.',
  // Where there is one tone it is shared already.
  applies: (circuit) => (tonesOf(circuit).length === 1 ? [] : [all]),
  choices: (circuit) => [madeOf(circuit), track],
  conflict(circuit) {
    const out = [...netOf(circuit, 'jack.tip')].map(partOf);
    const capacitors = circuit.parts.filter(
      ({ kind, id }) => kind === 'capacitor' && out.includes(id),
    );
    const reached = capacitors.flatMap(({ id }) =>
      ['a', 'b'].flatMap((leg) => [...netOf(circuit, `${id}.${leg}`)].map(partOf)),
    );
    const there = tonesOf(circuit).find(({ id }) => out.includes(id) || reached.includes(id));
    return there ? `The ${there.title} is across the jack already.` : null;
  },
  apply(circuit, _place, chosen) {
    const draft = new Draft(circuit);
    const { id: made } = optionOf(madeOf(circuit), chosen);
    const moved = made === 'new' ? null : hangingOf(circuit, made);
    if (moved) {
      if (moved.end === 'to') draft.land(moved.lead.id, 'jack.tip');
      else draft.start(moved.lead.id, 'jack.tip');
      return draft.done();
    }
    const { id } = addKnob(draft, 'masterTone', 'master tone', chosen, track, { role: 'tone' });
    const { id: cap } = draft.add(
      capacitor('masterToneCap', 'capacitor of the master tone', 22e-9),
    );
    draft.join(`${cap}HotLeg`, `${cap}.a`, 'jack.tip', 'leg');
    draft.join(`${cap}ToneLeg`, `${cap}.b`, `${id}.2`, 'leg');
    draft.join(`${id}Ground`, `${id}.1`, `${id}.case`);
    return draft.done();
  },
  named: () => 'a master tone',
});
