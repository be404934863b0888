import type { Setting } from '../circuit/circuit.ts';
import type { NodeName } from '../circuit/edit.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { potsOf, withKnob } from '../circuit/setting.ts';
import { jackOf } from '../readings/points.ts';
import type { Ask } from '../readings/reading.ts';
import { View } from '../readings/view.ts';

/** Ohms below which two readings are one and the same. */
const SAME = 0.05;

/**
 * Ends of the wiring that hang on one joint of which the jack's ohms know nothing: the strings, a pickup's base plate, a capacitor's
 * leg. Read from one such end to another, one reading passes both joints, so that a list needs about half as many of them.
 * @param probed nodes that a probe may stand on
 */
export function looseEnds(
  layout: Layout,
  probed: ReadonlySet<NodeName>,
  settings: readonly Setting[],
): readonly NodeName[] {
  const { tip, sleeve } = jackOf(layout);
  const [rest] = settings as readonly [Setting];
  const seen = [
    ...settings,
    ...settings.flatMap((setting) =>
      potsOf(layout.circuit).map(({ id }) => withKnob(setting, id, 0)),
    ),
  ];
  const atJack = (view: View) =>
    seen.map((setting) =>
      view.in(setting).dc.resistance(nodeAt(layout, tip), nodeAt(layout, sleeve)),
    );
  const intended = atJack(new View(layout, rest, []));
  return layout.circuit.leads.flatMap((lead) =>
    (['from', 'to'] as const).flatMap((end): NodeName[] => {
      const joint = `${lead.id}@${end}`;
      const other = lead[end === 'from' ? 'to' : 'from'];
      // Metal outside, as the strings, is probed itself; of any other wire the bare end.
      const bare = reachOf(layout, other) === 'outside' && other.endsWith('.metal');
      const node = bare ? other : joint;
      if (!probed.has(node)) return [];
      const parted = new View(layout, rest, [{ op: 'open', site: joint }]);
      const silent = atJack(parted).every((ohms, at) => {
        const then = intended[at] as number;
        return ohms === then || Math.abs(ohms - then) < SAME;
      });
      const hangs = !(
        parted.dc.resistance(nodeAt(layout, node), nodeAt(layout, sleeve)) <
        Number.POSITIVE_INFINITY
      );
      return silent && hangs ? [node] : [];
    }),
  );
}

/** Ohms from each end to each other one. */
export const betweenEnds = (ends: readonly NodeName[], setting: Setting): readonly Ask[] =>
  [...new Set(ends)].flatMap((red, at, all) =>
    all.slice(at + 1).map((black): Ask => ({ kind: 'ohms', red, black, setting })),
  );
