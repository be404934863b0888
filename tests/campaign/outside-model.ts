import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { layoutOf, nodeAt } from '../../src/circuit/netlist.ts';
import { switchSettings } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { wire } from '../../src/circuit/wired.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { solveDc } from '../../src/solver/index.ts';
import { Sets } from '../../src/solver/islands.ts';
import type { Dice } from '../simulated/index.ts';

/**
 * Something that no list of faults has: a part nobody drew, of 1 to 30 kohm, between lugs of two different parts (a resistor of an
 * old modification, a damp patch of flux). Drawn until it joins points that no modelled fault joins, and changes a reading at the
 * jack by a tenth, so that there is something to find. Null where a wiring has no such points: small ones have every pair modelled.
 */
export function strangePart(circuit: Circuit, dice: Dice): readonly Edit[] | null {
  const layout = layoutOf(circuit);
  const settings = switchSettings(circuit);
  const solved = (setting: Setting, edits: readonly Edit[]) => {
    const { nodeCount, a, b, ohms: values } = wire(layout, setting, edits);
    return solveDc({ nodes: nodeCount, a, b, ohms: values });
  };
  const islands = new Sets(layout.nodes.length);
  for (const { a, b, part } of layout.sites) if (part === undefined) islands.join(a, b);
  const isOne = (x: string, y: string) =>
    islands.root(nodeAt(layout, x)) === islands.root(nodeAt(layout, y));
  const modelled = faultsOf(circuit).flatMap(({ variants }) =>
    variants.flatMap(({ edits }) => edits.flatMap((one) => (one.op === 'bridge' ? [one] : []))),
  );
  const isModelled = (a: string, b: string) =>
    modelled.some(
      (one) => (isOne(a, one.a) && isOne(b, one.b)) || (isOne(a, one.b) && isOne(b, one.a)),
    );
  const shows = (edits: readonly Edit[]) =>
    settings.some((setting) => {
      const [tip, sleeve] = [nodeAt(layout, 'jack.tip'), nodeAt(layout, 'jack.sleeve')];
      const [before, after] = [[], edits].map((these) =>
        solved(setting, these).resistance(tip, sleeve),
      ) as [number, number];
      return Math.abs(Math.log(after / before)) > 0.1;
    });
  const lugs = [...layout.nodeIndex.keys()].filter((name) => !/[@:]|inside$/.test(name));
  const partOf = (lug: string) => lug.slice(0, lug.indexOf('.'));
  for (let tries = 0; tries < 500; tries += 1) {
    const [a, b] = [dice.pick(lugs), dice.pick(lugs)];
    if (partOf(a) === partOf(b) || isModelled(a, b)) continue;
    const edits: readonly Edit[] = [{ op: 'bridge', a, b, ohms: ohms(1000 * 30 ** dice.throw()) }];
    if (shows(edits)) return edits;
  }
  return null;
}
