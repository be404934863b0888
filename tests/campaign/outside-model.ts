import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';
import { lugOfJoint } from '../../src/circuit/names.ts';
import { layoutOf, nodeAt } from '../../src/circuit/netlist.ts';
import { reachOf } from '../../src/circuit/reach.ts';
import { switchSettings } from '../../src/circuit/setting.ts';
import { ohms } from '../../src/circuit/units.ts';
import { wire } from '../../src/circuit/wired.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { solveDc } from '../../src/solver/index.ts';
import { Sets } from '../../src/solver/islands.ts';
import type { Dice } from '../simulated/index.ts';

/**
 * A path that nobody drew, a lead on a lug of another part, and two leads of two parts in each other's place are foreseen as such, and no
 * faults of the list; a path and a lead together are foreseen in no way.
 */
export type Strange = 'path' | 'lead' | 'leads' | 'path and lead';

/**
 * Something that no list of faults has. Either a part nobody drew, of 1 to 30 kohm, between lugs, within a hand's reach, of two different parts that no
 * modelled fault joins (a resistor of an old modification, a damp patch of flux), or a lead soldered to a lug of a part that it has
 * no business at, or two leads in each other's place. Drawn until it changes a reading at the jack by a tenth, so that there is something to find. Null where a wiring
 * has no room for it: in small ones every pair is modelled.
 */
export function strangePart(circuit: Circuit, what: Strange, dice: Dice): readonly Edit[] | null {
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
    variants.flatMap(({ edits }) => edits),
  );
  const isJoined = (a: string, b: string) =>
    modelled.some(
      (one) =>
        one.op === 'bridge' &&
        ((isOne(a, one.a) && isOne(b, one.b)) || (isOne(a, one.b) && isOne(b, one.a))),
    );
  const shows = (edits: readonly Edit[]) =>
    settings.some((setting) => {
      const [tip, sleeve] = [nodeAt(layout, 'jack.tip'), nodeAt(layout, 'jack.sleeve')];
      const [before, after] = [[], edits].map((these) =>
        Math.min(1e8, solved(setting, these).resistance(tip, sleeve)),
      ) as [number, number];
      return Math.abs(Math.log(after / before)) > 0.1;
    });
  const lugs = [...layout.nodeIndex.keys()].filter(
    (name) => !/[@:]|inside$/.test(name) && reachOf(layout, name) !== 'never',
  );
  const partOf = (lug: string) => lug.slice(0, lug.indexOf('.'));
  const joints = circuit.leads
    .filter(({ kind }) => kind === 'wire' || kind === 'pickup')
    .flatMap(({ id, kind }) => (kind === 'wire' ? [`${id}@from`, `${id}@to`] : [`${id}@to`]))
    .filter((joint) => reachOf(layout, joint) === 'cavity');
  const seats = lugs.filter((lug) =>
    ['pot', 'switch'].includes(layout.parts.get(partOf(lug))!.kind),
  );
  const drawPath = (): readonly Edit[] | null => {
    const [a, b] = [dice.pick(lugs), dice.pick(lugs)];
    if (partOf(a) === partOf(b) || isOne(a, b) || isJoined(a, b)) return null;
    return [{ op: 'bridge', a, b, ohms: ohms(1000 * 30 ** dice.throw()) }];
  };
  const drawLead = (): readonly Edit[] | null => {
    if (joints.length === 0 || seats.length === 0) return null;
    const [joint, lug] = [dice.pick(joints), dice.pick(seats)];
    const right = lugOfJoint(layout, joint);
    const isListed = modelled.some(
      (one) => one.op === 'land' && one.joint === joint && isOne(one.lug, lug),
    );
    if (partOf(lug) === partOf(right) || isOne(lug, right) || isListed) return null;
    return [{ op: 'land', joint, lug }];
  };
  const drawLeads = (): readonly Edit[] | null => {
    if (joints.length < 2) return null;
    const [one, other] = [dice.pick(joints), dice.pick(joints)];
    const [a, b] = [lugOfJoint(layout, one), lugOfJoint(layout, other)];
    if (partOf(a) === partOf(b) || isOne(a, b)) return null;
    return [
      { op: 'land', joint: one, lug: b },
      { op: 'land', joint: other, lug: a },
    ];
  };
  const drawBoth = (): readonly Edit[] | null => {
    const [path, lead] = [drawPath(), drawLead()];
    return path && lead && [...path, ...lead];
  };
  const draw = { path: drawPath, lead: drawLead, leads: drawLeads, 'path and lead': drawBoth }[
    what
  ];
  for (let tries = 0; tries < 500; tries += 1) {
    const edits = draw();
    if (edits && shows(edits)) return edits;
  }
  return null;
}
