import type { Circuit } from '../../circuit.ts';
import { farads, ohms } from '../../units.ts';
import { Draft } from './draft.ts';
import { type Choice, guarded, optionOf } from './modification.ts';
import { netOf } from './nets.ts';

const make: Choice = {
  id: 'make',
  title: 'Made of',
  options: [
    { id: 'parallel', title: '1 nF and 100 kΩ side by side' },
    { id: 'series', title: '1 nF and 100 kΩ one behind the other' },
    { id: 'alone', title: '1 nF alone' },
  ],
};

const volumes = (circuit: Circuit) =>
  circuit.parts.filter((part) => part.kind === 'pot' && part.role === 'volume');

/** 1 nF and 100 k: common practice, no source. */
export const trebleBleed = guarded({
  id: 'treble-bleed',
  title: 'Treble bleed',
  does: 'Keeps the treble when you turn the volume down.',
  applies: volumes,
  choices: () => [make],
  conflict(circuit, { id, title }) {
    const [input, wiper] = [netOf(circuit, `${id}.3`), netOf(circuit, `${id}.2`)];
    const fitted = circuit.parts.find(
      (part) =>
        part.kind === 'capacitor' &&
        [input, wiper].every((net) => net.has(`${part.id}.a`) || net.has(`${part.id}.b`)),
    );
    return fitted ? `The ${fitted.title} is across the ${title} already.` : null;
  },
  apply(circuit, { id, title }, chosen) {
    const draft = new Draft(circuit);
    const { id: made } = optionOf(make, chosen);
    const { id: bleed } = draft.add({
      kind: 'capacitor',
      id: `${id}Bleed`,
      title: `treble bleed capacitor of the ${title}`,
      farads: { nominal: farads(1e-9), tolerance: 0.1 },
    });
    draft.join(`${bleed}InputLeg`, `${bleed}.a`, `${id}.3`, 'leg');
    let far = `${id}.2`;
    if (made !== 'alone') {
      const { id: resistor } = draft.add({
        kind: 'resistor',
        id: `${id}BleedResistor`,
        title: `treble bleed resistor of the ${title}`,
        ohms: { nominal: ohms(100e3), tolerance: 0.05 },
      });
      draft.join(`${resistor}WiperLeg`, `${resistor}.b`, `${id}.2`, 'leg');
      if (made === 'series') {
        const joint = draft.add({
          kind: 'splice',
          id: `${id}BleedJoint`,
          title: `joint of the treble bleed of the ${title}`,
        });
        far = `${joint.id}.joint`;
      }
      draft.join(
        `${resistor}OtherLeg`,
        `${resistor}.a`,
        made === 'series' ? far : `${id}.3`,
        'leg',
      );
    }
    draft.join(`${bleed}OtherLeg`, `${bleed}.b`, far, 'leg');
    return draft.done();
  },
  named: ({ title }) => `a treble bleed on the ${title}`,
});
