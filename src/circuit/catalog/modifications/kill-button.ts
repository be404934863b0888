import { Draft } from './draft.ts';
import { guarded } from './modification.ts';
import { groundNet, netOf } from './nets.ts';

/** Push-to-make: a push-to-break button has to go in the hot wire, and is the wrong part here. */
export const killButton = guarded({
  id: 'kill-button',
  title: 'Kill button',
  does: 'Silences the guitar while you press it: a push-to-make button across the jack.',
  applies: (circuit) => circuit.parts.filter(({ kind, id }) => kind === 'jack' && id === 'jack'),
  choices: () => [],
  conflict(circuit) {
    const [hot, ground] = [netOf(circuit, 'jack.tip'), groundNet(circuit)];
    const fitted = circuit.parts.find(
      (part) =>
        part.kind === 'switch' &&
        part.style === 'button' &&
        part.rows.flat().some((lug) => hot.has(`${part.id}.${lug}`)) &&
        part.rows.flat().some((lug) => ground.has(`${part.id}.${lug}`)),
    );
    return fitted ? `The ${fitted.title} is across the jack already.` : null;
  },
  apply(circuit) {
    const draft = new Draft(circuit);
    const { id } = draft.add({
      kind: 'switch',
      id: 'killButton',
      title: 'kill button',
      style: 'button',
      rows: [['1', '2']],
      positions: [
        { name: 'off', title: 'not pressed', joins: [] },
        { name: 'on', title: 'pressed', joins: [['1', '2']] },
      ],
      frame: false,
    });
    draft.join('killHot', `${id}.1`, 'jack.tip');
    draft.join('killGround', `${id}.2`, 'jack.sleeve');
    return draft.done();
  },
  named: () => 'a kill button',
});
