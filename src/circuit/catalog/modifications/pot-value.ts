import type { Circuit } from '../../circuit.ts';
import type { Pot } from '../../parts/part.ts';
import { ohms } from '../../units.ts';
import { Draft } from './draft.ts';
import { tracks } from './knobs.ts';
import { type Choice, guarded, type Option, optionOf } from './modification.ts';

const tapers: readonly Option[] = [
  { id: 'audio', title: 'audio' },
  { id: 'linear', title: 'linear' },
  { id: 'reverse-audio', title: 'reverse audio' },
];

const pots = (circuit: Circuit) => circuit.parts.filter((part) => part.kind === 'pot');

/** The track first offered is another one; the taper first offered is the one it has. */
function choicesFor(pot: Pot): readonly [Choice, Choice] {
  const moved = (options: readonly Option[], own: string, to: 'first' | 'last') => {
    const [same, others] = [true, false].map((is) =>
      options.filter(({ id }) => (id === own) === is),
    ) as [Option[], Option[]];
    return (to === 'first' ? [...same, ...others] : [...others, ...same]) as [Option, ...Option[]];
  };
  return [
    { id: 'track', title: 'Track', options: moved(tracks, String(pot.ohms.nominal), 'last') },
    { id: 'taper', title: 'Taper', options: moved(tapers, pot.taper, 'first') },
  ];
}

export const potValue = guarded({
  id: 'pot-value',
  title: 'Another pot',
  does: 'Another track makes the guitar brighter or darker; another taper moves where the sweep happens.',
  applies: pots,
  choices: (circuit, { id }) =>
    pots(circuit)
      .filter((pot) => pot.id === id)
      .flatMap(choicesFor),
  conflict: () => null,
  apply(circuit, { id }, chosen) {
    const draft = new Draft(circuit);
    draft.change(id, (part) => {
      if (part.kind !== 'pot') return part;
      const [track, taper] = choicesFor(part);
      return {
        ...part,
        // What was measured was the other pot.
        ohms: {
          nominal: ohms(Number(optionOf(track, chosen).id)),
          tolerance: part.ohms.tolerance,
        },
        taper: optionOf(taper, chosen).id as Pot['taper'],
      };
    });
    return draft.done();
  },
  named: ({ title }) => `another ${title} pot`,
});
