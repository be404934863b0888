import type { Setting } from '../circuit/circuit.ts';
import type { Edit } from '../circuit/edit.ts';
import { type Layout, nodeAt, siteValues } from '../circuit/netlist.ts';
import { Sets } from '../solver/index.ts';
import type { Blocks } from './blocks.ts';
import type { Loose } from './level.ts';

/** Which sites conduct in a setting, whatever the values: all that an outline needs of it. Equal ones share their number. */
export interface Shape {
  readonly id: number;
  /** Ohms before any edit, by site; only whether they are 0, finite or infinite counts. */
  readonly ohms: Float64Array;
}

/** What all guitars of a layout share: shapes by setting, numbers of values and blocks already met, graphs and skeletons by what is in them. */
interface Shared {
  readonly shapes: WeakMap<Setting, Shape>;
  readonly byBits: Map<string, Shape>;
  readonly tags: Map<string, number>;
  readonly numbers: Map<string, number>;
  readonly graphs: Map<string, Blocks>;
  readonly skeletons: Map<string, Skeleton>;
}
const shared = new WeakMap<Layout, Shared>();

export function sharedOf(layout: Layout): Shared {
  const known = shared.get(layout);
  if (known) return known;
  const made: Shared = {
    shapes: new WeakMap(),
    byBits: new Map(),
    tags: new Map(),
    numbers: new Map(),
    graphs: new Map(),
    skeletons: new Map(),
  };
  shared.set(layout, made);
  return made;
}

export function shapeOf(layout: Layout, setting: Setting): Shape {
  const { shapes, byBits } = sharedOf(layout);
  const known = shapes.get(setting);
  if (known) return known;
  const { ohms } = siteValues(layout, setting);
  const bits = ohms.reduce(
    (text, r) => text + (r === 0 ? '0' : r === Number.POSITIVE_INFINITY ? '2' : '1'),
    '',
  );
  const shape = byBits.get(bits) ?? { id: byBits.size, ohms };
  byBits.set(bits, shape);
  shapes.set(setting, shape);
  return shape;
}

/** The number of a text: the same for the same text, over all guitars of the layout. */
export function numberOf(numbers: Map<string, number>, text: string): number {
  const known = numbers.get(text);
  if (known !== undefined) return known;
  numbers.set(text, numbers.size);
  return numbers.size - 1;
}

/** A guitar with its switches taken out: nets of ideal connections, and what lies between them. */
export interface Frame {
  /** Net of each node. */
  readonly netOf: Int32Array;
  /** All that may conduct beside ideal connections, in the order of sites, bridges last. */
  readonly elements: readonly Element[];
  readonly skeleton: Skeleton;
}

/** What frames share whose lugs are joined alike; the lead ends between them may hang elsewhere. */
export interface Skeleton {
  readonly number: number;
  readonly nets: number;
  /** Ideal contacts that a position may close. */
  readonly contacts: readonly Contact[];
  readonly elements: readonly Element[];
}

interface Contact {
  readonly site: number;
  readonly a: number;
  readonly b: number;
}

export interface Element {
  /** Where its values stand in `Wired`: its site, or beyond all sites for a bridge, which always conducts. */
  readonly index: number;
  readonly a: number;
  readonly b: number;
  /** Says which site it is and what the edits make of its value. */
  readonly tag: number;
  /** Whenever its shape is not infinite there (`closed`, as a track or a contact), always, or never. */
  readonly conducts: 'closed' | 'always' | 'never';
}

export function frameOf(
  layout: Layout,
  edits: readonly Edit[],
  loose: Loose | undefined,
  lifted: readonly string[],
): Frame {
  const { sites } = layout;
  const { tags, skeletons } = sharedOf(layout);
  const a = Int32Array.from(sites, (site) => site.a);
  const open = new Set<number>(lifted.map((joint) => layout.siteIndex.get(joint) as number));
  const added = new Map<number, number>();
  const notes = new Map<number, string>();
  const note = (site: number, text: string) => notes.set(site, (notes.get(site) ?? '') + text);
  const bridges: { a: number; b: number; ohms: number }[] = [];
  for (const edit of edits)
    switch (edit.op) {
      case 'open': {
        const site = layout.siteIndex.get(edit.site) as number;
        open.add(site);
        note(site, 'open');
        break;
      }
      case 'resist': {
        const site = layout.siteIndex.get(edit.site) as number;
        added.set(site, (added.get(site) ?? 0) + edit.ohms);
        break;
      }
      case 'bridge':
        bridges.push({ a: nodeAt(layout, edit.a), b: nodeAt(layout, edit.b), ohms: edit.ohms });
        break;
      case 'land':
        a[layout.siteIndex.get(edit.joint) as number] = nodeAt(layout, edit.lug);
        break;
      case 'exchange': {
        const [x, y] = [nodeAt(layout, edit.lugs[0]), nodeAt(layout, edit.lugs[1])];
        for (const { what, index } of sites)
          if (what === 'joint')
            a[index] = a[index] === x ? y : a[index] === y ? x : (a[index] as number);
        break;
      }
      case 'scale':
        for (const { part, index } of sites) if (part === edit.part) note(index, `x${edit.factor}`);
        break;
      case 'turn-magnet':
        note(layout.siteIndex.get(`${edit.coil}:winding`) as number, 'turned');
        break;
      case 'stick':
      case 'intermittent':
      case 'worn':
        break;
    }
  for (const [site, ohms] of added) note(site, `+${ohms}`);
  if (loose && loose.site < sites.length) note(loose.site, `~${loose.deviation}`);
  const merged = new Sets(layout.nodes.length);
  const contacts: { site: number; a: number; b: number }[] = [];
  const elements: Element[] = [];
  for (const { index, b, what } of sites) {
    const from = a[index] as number;
    const resisted = (added.get(index) ?? 0) > 0;
    // Contacts of switches, and the wiper of a pot that may leave its track.
    const switched = what === 'contact';
    const ideal = what === 'joint' || what === 'wire' || what === 'contact';
    if (ideal) {
      if (open.has(index)) continue;
      if (!resisted) {
        if (switched) contacts.push({ site: index, a: from, b });
        else merged.join(from, b);
        continue;
      }
    }
    // A resistance in a joint, wire or contact is that resistance, wherever it stands.
    const own = ideal ? `ohms${notes.get(index)}` : `${index} ${notes.get(index) ?? ''}`;
    elements.push({
      index,
      a: from,
      b,
      tag: numberOf(tags, own),
      conducts: open.has(index) ? 'never' : ideal && !switched ? 'always' : 'closed',
    });
  }
  bridges.forEach((bridge, at) => {
    if (bridge.ohms === 0) {
      merged.join(bridge.a, bridge.b);
      return;
    }
    const own = loose?.site === sites.length + at ? `~${loose.deviation}` : '';
    const tag = numberOf(tags, `ohms+${bridge.ohms}${own}`);
    elements.push({
      index: sites.length + at,
      a: bridge.a,
      b: bridge.b,
      tag,
      conducts: 'always',
    });
  });
  // Labels count from the first node on, and lugs come before lead ends: equal joins of lugs get equal labels.
  const { of: netOf, count: nets } = merged.labels();
  const net = (node: number) => netOf[node] as number;
  const own = elements.map((one) => {
    const [x, y] = [net(one.a), net(one.b)];
    // A mere resistance has no direction.
    return one.conducts === 'always' && y < x ? { ...one, a: y, b: x } : { ...one, a: x, b: y };
  });
  const closing = contacts.map(({ site, a: x, b: y }) => ({ site, a: net(x), b: net(y) }));
  const lugs = layout.nodes.findIndex((name) => name.includes('@'));
  const key = [
    netOf.subarray(0, lugs).join(),
    closing.map(({ site, a: x, b: y }) => `${site}.${x}.${y}`).join(),
    own
      .map(({ index, tag, a: x, b: y, conducts }) =>
        // Whether a contact with a resistance conducts is a matter of its position.
        conducts === 'closed' ? `${index}:${tag}.${x}.${y}` : `${tag}.${x}.${y}`,
      )
      .join(),
  ].join(';');
  const skeleton = skeletons.get(key) ?? {
    number: skeletons.size,
    nets,
    contacts: closing,
    elements: own,
  };
  skeletons.set(key, skeleton);
  return { netOf, elements: own, skeleton };
}
