import { circuitWords } from '../words/en/circuit.ts';
import type { Setting } from './circuit.ts';
import type { Edit } from './edit.ts';
import { CircuitError } from './errors.ts';
import { type Layout, nodeAt, siteAt, siteValues } from './netlist.ts';
import type { PartId } from './parts/part.ts';
import { scaledTrack } from './parts/pot.ts';

/**
 * One guitar as it really is in one setting: the layout's sites with their ends and values after the edits.
 * Entries past `layout.sites.length` are bridges. Node indices are the layout's.
 */
export interface Wired {
  readonly nodeCount: number;
  readonly a: Int32Array;
  readonly b: Int32Array;
  /** 0 ideal, Infinity open. */
  readonly ohms: Float64Array;
  readonly farads: Float64Array;
  readonly henries: Float64Array;
  /** As in `SiteValues`; no edit changes them. A bridge has neither inductance nor capacitance to lose anything in. */
  readonly coreOhms: Float64Array;
  readonly lossTangent: Float64Array;
  /** +1, or -1 for a coil whose magnet was turned; by site index, 0 for other sites. */
  readonly magnetSign: Int8Array;
}

/** Applies a fault's edits. Edits that only show in motion (`intermittent`, `worn`) change nothing here. */
export function wire(layout: Layout, setting: Setting, edits: readonly Edit[]): Wired {
  let stuck = setting;
  for (const edit of edits)
    if (edit.op === 'stick')
      stuck = { ...stuck, positions: { ...stuck.positions, [edit.part]: edit.position } };
  const values = siteValues(layout, stuck);
  const base = ends(layout);
  // Thousands of guitars differ from the intended one in one place: what an edit cannot change is shared, not copied.
  const has = (...ops: readonly Edit['op'][]) => edits.some(({ op }) => ops.includes(op));
  const bridges = edits.filter(({ op }) => op === 'bridge').length;
  const own = <A extends Int32Array | Float64Array>(from: A, changes: boolean): A =>
    changes || bridges > 0 ? grown(from, bridges) : from;
  const ohms = grown(values.ohms, bridges);
  // Of the same guitar in another setting nothing but ohms is different.
  const before = wiredBefore.get(edits);
  const elsewhere = before?.layout === layout ? before.wired : null;
  const wired: Wired = elsewhere
    ? { ...elsewhere, ohms }
    : {
        nodeCount: layout.nodes.length,
        a: own(base.a, has('land', 'exchange')),
        b: own(base.b, false),
        ohms,
        farads: own(values.farads, has('open', 'scale')),
        henries: own(values.henries, has('open', 'scale')),
        coreOhms: values.coreOhms,
        lossTangent: values.lossTangent,
        magnetSign: has('turn-magnet') ? base.magnetSign.slice() : base.magnetSign,
      };
  if (!elsewhere) wiredBefore.set(edits, { layout, wired });
  const { a, b, magnetSign } = wired;
  let extra = layout.sites.length;
  // Values first: a resistance that stands in series with a part is not scaled with it.
  const factors = new Map<PartId, number>();
  for (const edit of edits)
    if (edit.op === 'scale')
      factors.set(edit.part, (factors.get(edit.part) ?? 1) * positive(edit.factor, edit.part));
  for (const [part, factor] of factors) scale(layout, wired, part, factor, elsewhere === null);
  for (const edit of edits) {
    switch (edit.op) {
      case 'open': {
        const { index } = siteAt(layout, edit.site);
        wired.ohms[index] = Number.POSITIVE_INFINITY;
        if (elsewhere) break;
        // An open winding keeps its self-capacitance: that is the thin treble an open coil still passes.
        if (layout.sites[index]?.what === 'capacitance') wired.farads[index] = 0;
        wired.henries[index] = 0;
        break;
      }
      case 'resist': {
        const { index } = siteAt(layout, edit.site);
        wired.ohms[index] = (wired.ohms[index] as number) + positive(edit.ohms, edit.site);
        break;
      }
      case 'bridge':
        if (!elsewhere) {
          a[extra] = nodeAt(layout, edit.a);
          b[extra] = nodeAt(layout, edit.b);
        }
        wired.ohms[extra] = positive(edit.ohms, `${edit.a} to ${edit.b}`);
        extra += 1;
        break;
      case 'land': {
        if (elsewhere) break;
        const { index } = siteAt(layout, edit.joint);
        a[index] = nodeAt(layout, edit.lug);
        break;
      }
      case 'exchange': {
        if (elsewhere) break;
        const [x, y] = [nodeAt(layout, edit.lugs[0]), nodeAt(layout, edit.lugs[1])];
        for (const site of layout.sites)
          if (site.what === 'joint') {
            if (a[site.index] === x) a[site.index] = y;
            else if (a[site.index] === y) a[site.index] = x;
          }
        break;
      }
      case 'turn-magnet': {
        if (elsewhere) break;
        const { index } = siteAt(layout, `${edit.coil}:winding`);
        magnetSign[index] = -(magnetSign[index] as number);
        break;
      }
      case 'scale':
      case 'stick':
      case 'intermittent':
      case 'worn':
        break;
    }
  }
  return wired;
}

const wiredBefore = new WeakMap<
  readonly Edit[],
  { readonly layout: Layout; readonly wired: Wired }
>();

function scale(layout: Layout, wired: Wired, id: PartId, factor: number, reactive: boolean): void {
  const part = layout.parts.get(id);
  for (const { index, part: owner, what } of layout.sites) {
    const r = wired.ohms[index] as number;
    if (owner !== id) continue;
    if (part?.kind === 'pot' && what === 'resistance')
      wired.ohms[index] = scaledTrack(part, r, factor);
    else wired.ohms[index] = r * factor;
    if (!reactive) continue;
    // A coil's own capacitance does not go with its turns; a capacitor's value is its farads.
    if (what === 'capacitance') wired.farads[index] = (wired.farads[index] as number) * factor;
    wired.henries[index] = (wired.henries[index] as number) * factor;
  }
}

function grown<A extends Int32Array | Float64Array>(from: A, by: number): A {
  if (by === 0) return from.slice() as A;
  const to = new (from.constructor as new (length: number) => A)(from.length + by);
  to.set(from);
  return to;
}

interface Ends {
  readonly a: Int32Array;
  readonly b: Int32Array;
  readonly magnetSign: Int8Array;
}
const endsOf = new WeakMap<Layout, Ends>();

/** Ends of the sites of the intended wiring, once per layout. */
function ends(layout: Layout): Ends {
  const known = endsOf.get(layout);
  if (known) return known;
  const made: Ends = {
    a: Int32Array.from(layout.sites, (site) => site.a),
    b: Int32Array.from(layout.sites, (site) => site.b),
    magnetSign: Int8Array.from(layout.sites, (site) => (site.what === 'winding' ? 1 : 0)),
  };
  endsOf.set(layout, made);
  return made;
}

function positive(value: number, thing: string): number {
  if (!(Number.isFinite(value) && value >= 0))
    throw new CircuitError(
      'value-out-of-range',
      thing,
      circuitWords().thingExpectedAValueOf0Or(thing, String(value)),
    );
  return value;
}
