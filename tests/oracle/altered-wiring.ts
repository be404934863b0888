import type { Circuit, Setting } from '../../src/circuit/circuit.ts';
import type { Edit } from '../../src/circuit/edit.ts';

/** A promise of the input was broken: an edit or setting names something that is not there. */
export class OracleError extends Error {}

/** The edits sorted by what they do, in a form that writing the netlist can look up. */
export interface AlteredWiring {
  /** Sites where nothing passes: opened by an edit, or lifted on purpose. */
  readonly open: ReadonlySet<string>;
  /** Ohms put in at a site. Two such edits at one site stand in series. */
  readonly added: ReadonlyMap<string, number>;
  readonly bridges: readonly { readonly a: string; readonly b: string; readonly ohms: number }[];
  /** Factor on a part's value. */
  readonly factor: ReadonlyMap<string, number>;
  /** Position a switch is stuck in. */
  readonly stuck: ReadonlyMap<string, string>;
  /** Lug that each lead end is soldered to, by joint. */
  readonly landing: ReadonlyMap<string, string>;
}

/** Edits take effect in the order given, which matters to `land` and `exchange` alone. */
export function alterWiring(
  circuit: Circuit,
  setting: Setting,
  edits: readonly Edit[],
): AlteredWiring {
  const landing = new Map<string, string>();
  for (const lead of circuit.leads) {
    landing.set(`${lead.id}@from`, lead.from);
    landing.set(`${lead.id}@to`, lead.to);
  }
  const open = new Set<string>();
  for (const joint of setting.lifted) {
    if (!landing.has(joint)) throw new OracleError(`lifted joint ${joint}: no lead has this end`);
    open.add(joint);
  }
  const added = new Map<string, number>();
  const bridges: { a: string; b: string; ohms: number }[] = [];
  const factor = new Map<string, number>();
  const stuck = new Map<string, string>();
  for (const edit of edits) {
    switch (edit.op) {
      case 'open':
        open.add(edit.site);
        break;
      case 'resist':
        added.set(edit.site, (added.get(edit.site) ?? 0) + edit.ohms);
        break;
      case 'bridge':
        bridges.push({ a: edit.a, b: edit.b, ohms: edit.ohms });
        break;
      case 'land':
        if (!landing.has(edit.joint))
          throw new OracleError(`land: no lead has the end ${edit.joint}`);
        landing.set(edit.joint, edit.lug);
        break;
      case 'exchange': {
        const [first, second] = edit.lugs;
        for (const [joint, lug] of landing) {
          if (lug === first) landing.set(joint, second);
          else if (lug === second) landing.set(joint, first);
        }
        break;
      }
      case 'scale':
        factor.set(edit.part, (factor.get(edit.part) ?? 1) * edit.factor);
        break;
      case 'stick':
        stuck.set(edit.part, edit.position);
        break;
      // A magnet makes no ohms; what is loose or worn conducts while nothing moves.
      case 'turn-magnet':
      case 'intermittent':
      case 'worn':
        break;
    }
  }
  return { open, added, bridges, factor, stuck, landing };
}
