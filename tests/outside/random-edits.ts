import type { Circuit } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { ohms } from '../../src/circuit/units.ts';
import { bareEndsOf, lugsOf } from '../oracle/index.ts';
import type { Dice } from '../simulated/dice.ts';

export const editKinds = [
  'open',
  'resist',
  'bridge',
  'land',
  'exchange',
  'scale',
  'stick',
] as const;

/** Every place that can be opened or made resistive. */
export function sitesOf(circuit: Circuit): string[] {
  const ofParts = circuit.parts.flatMap((part): string[] => {
    switch (part.kind) {
      case 'coil':
        return [`${part.id}:winding`];
      case 'pot':
        return ['lower', 'upper', 'wiper'].map((site) => `${part.id}:${site}`);
      case 'switch':
        return [
          ...new Set(
            part.positions.flatMap(({ joins }) => joins.map(([a, b]) => `${part.id}:${a}-${b}`)),
          ),
        ];
      case 'capacitor':
      case 'resistor':
        return [`${part.id}:body`];
      default:
        return [];
    }
  });
  return [...ofParts, ...circuit.leads.map(({ id }) => id), ...bareEndsOf(circuit)];
}

/** One edit of the given kind at a random place, or undefined where the circuit has no such place. */
export function randomEdit(
  circuit: Circuit,
  kind: (typeof editKinds)[number],
  dice: Dice,
): Edit | undefined {
  const lugs = lugsOf(circuit);
  const joints = bareEndsOf(circuit);
  const site = dice.pick(sitesOf(circuit));
  switch (kind) {
    case 'open':
      return { op: 'open', site };
    case 'resist':
      return { op: 'resist', site, ohms: ohms(10 ** dice.between(0, 6)) };
    case 'bridge': {
      const [a, b] = [dice.pick([...lugs, ...joints]), dice.pick([...lugs, ...joints])];
      return a === b ? undefined : { op: 'bridge', a, b, ohms: ohms(10 ** dice.between(-1, 6)) };
    }
    case 'land':
      return { op: 'land', joint: dice.pick(joints), lug: dice.pick(lugs) };
    case 'exchange': {
      const [a, b] = [dice.pick(lugs), dice.pick(lugs)];
      return a === b ? undefined : { op: 'exchange', lugs: [a, b] };
    }
    case 'scale': {
      const part = dice.pick(
        circuit.parts.filter(({ kind: one }) => /coil|pot|resistor/.test(one)),
      );
      return { op: 'scale', part: part.id, factor: dice.between(0.3, 2) };
    }
    case 'stick': {
      const switches = circuit.parts.filter((part) => part.kind === 'switch');
      if (switches.length === 0) return undefined;
      const part = dice.pick(switches);
      return { op: 'stick', part: part.id, position: dice.pick(part.positions).name };
    }
  }
}
