import type { Circuit, JointId, Setting } from '../circuit/circuit.ts';
import type { NodeName } from '../circuit/edit.ts';
import { leadOf, lugOfJoint } from '../circuit/names.ts';
import { layoutOf } from '../circuit/netlist.ts';
import { reachOf } from '../circuit/reach.ts';
import { restingSetting } from '../circuit/setting.ts';
import type { AskOf } from '../readings/reading.ts';

/** What can be read and seen at one joint. */
export interface JointAsks {
  /** Readings in ohms: through the joint itself, and from it to the two lugs where the signal leaves. */
  readonly ohms: readonly {
    readonly to: 'across' | 'sleeve' | 'tip';
    readonly ask: AskOf<'ohms'>;
  }[];
  /** Null where the joint lies inside a part. */
  readonly look: AskOf<'look'> | null;
}

/**
 * The readings at a joint with the controls as they stand; eyes see the same in every setting. The red probe is on the bare end of the lead where there is
 * one in reach, else on the lug. Empty where no probe comes near.
 */
export function asksAtJoint(circuit: Circuit, joint: JointId, setting: Setting): JointAsks {
  const layout = layoutOf(circuit);
  const lead = leadOf(layout, joint.slice(0, joint.indexOf('@')));
  if (!lead) return { ohms: [], look: null };
  const lug = lugOfJoint(layout, joint);
  const red: NodeName | undefined = [joint, lug].find((node) => reachOf(layout, node) !== 'never');
  const jack = circuit.parts.find(({ kind }) => kind === 'jack');
  const seen = lead.kind === 'mount' || lead.kind === 'wire' || joint.endsWith('@to');
  const look: JointAsks['look'] =
    seen && (red !== undefined || lead.kind === 'mount')
      ? { kind: 'look', at: joint, setting: restingSetting(circuit) }
      : null;
  if (red === undefined) return { ohms: [], look };
  const ends = [
    { to: 'across' as const, black: lug },
    ...(jack
      ? [
          { to: 'sleeve' as const, black: `${jack.id}.sleeve` },
          { to: 'tip' as const, black: `${jack.id}.tip` },
        ]
      : []),
  ];
  const within = ends.filter(
    ({ to, black }) =>
      black !== red &&
      reachOf(layout, black) !== 'never' &&
      // On the jack's own lugs the way across is the way to the lug.
      (to === 'across' || black !== lug),
  );
  return {
    ohms: within.map(({ to, black }) => ({ to, ask: { kind: 'ohms', red, black, setting } })),
    look,
  };
}
