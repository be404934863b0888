import { circuitWords } from '../words/en/circuit.ts';
import type { Circuit, JointId, LeadId, LugRef, Setting } from './circuit.ts';
import type { NodeName, SiteId } from './edit.ts';
import { CircuitError } from './errors.ts';
import { kindOf } from './parts/index.ts';
import type { BranchWhat } from './parts/kind.ts';
import type { Part, PartId } from './parts/part.ts';
import { settingKey } from './setting.ts';

/** A place where current passes, and where a fault can sit. */
export interface Site {
  readonly id: SiteId;
  readonly index: number;
  /** Indices into `nodes`. */
  readonly a: number;
  readonly b: number;
  /** The part it belongs to, or undefined for a site of a lead. */
  readonly part?: PartId;
  readonly lead?: LeadId;
  readonly what: BranchWhat['type'] | 'joint' | 'wire';
}

/**
 * Points and sites of a circuit, the same in every setting.
 * A lead is three sites in a row: joint, wire, joint; between them lie its two bare ends, where a probe can stand.
 */
export interface Layout {
  readonly circuit: Circuit;
  readonly nodes: readonly NodeName[];
  readonly nodeIndex: ReadonlyMap<NodeName, number>;
  readonly sites: readonly Site[];
  readonly siteIndex: ReadonlyMap<SiteId, number>;
  readonly parts: ReadonlyMap<PartId, Part>;
  /** Joints that sit on a lug. */
  readonly jointsAt: ReadonlyMap<LugRef, readonly JointId[]>;
}

const neutral: Setting = { positions: {}, knobs: {}, plug: 'out', lifted: [] };
const layouts = new WeakMap<Circuit, Layout>();

/** The layout of a checked circuit; computed once per circuit object. */
export function layoutOf(circuit: Circuit): Layout {
  const known = layouts.get(circuit);
  if (known) return known;
  const nodes: NodeName[] = [];
  const nodeIndex = new Map<NodeName, number>();
  const sites: Site[] = [];
  const siteIndex = new Map<SiteId, number>();
  const jointsAt = new Map<LugRef, JointId[]>();
  const parts = new Map(circuit.parts.map((part) => [part.id, part]));
  const node = (name: NodeName): number => {
    const at = nodeIndex.get(name);
    if (at !== undefined) return at;
    nodeIndex.set(name, nodes.length);
    nodes.push(name);
    return nodes.length - 1;
  };
  const site = (id: SiteId, rest: Omit<Site, 'id' | 'index'>): void => {
    siteIndex.set(id, sites.length);
    sites.push({ id, index: sites.length, ...rest });
  };
  for (const part of circuit.parts)
    for (const lug of kindOf(part).lugs(part)) node(`${part.id}.${lug}`);
  for (const part of circuit.parts)
    for (const branch of kindOf(part).branches(part, neutral))
      site(`${part.id}:${branch.name}`, {
        a: node(`${part.id}.${branch.a}`),
        b: node(`${part.id}.${branch.b}`),
        part: part.id,
        what: branch.what.type,
      });
  for (const lead of circuit.leads) {
    const from: JointId = `${lead.id}@from`;
    const to: JointId = `${lead.id}@to`;
    for (const [lug, joint] of [
      [lead.from, from],
      [lead.to, to],
    ] as const) {
      if (!nodeIndex.has(lug))
        throw new CircuitError(
          'unknown-lug',
          lug,
          circuitWords().leadLeadEndsOnLugWhichIs(lead.id, lug),
        );
      jointsAt.set(lug, [...(jointsAt.get(lug) ?? []), joint]);
    }
    site(from, { a: node(lead.from), b: node(from), lead: lead.id, what: 'joint' });
    site(lead.id, { a: node(from), b: node(to), lead: lead.id, what: 'wire' });
    site(to, { a: node(lead.to), b: node(to), lead: lead.id, what: 'joint' });
  }
  const layout: Layout = { circuit, nodes, nodeIndex, sites, siteIndex, parts, jointsAt };
  layouts.set(circuit, layout);
  return layout;
}

export function nodeAt(layout: Layout, name: NodeName): number {
  const at = layout.nodeIndex.get(name);
  if (at === undefined)
    throw new CircuitError('unknown-lug', name, circuitWords().thereIsNoLugOrLeadEnd(name));
  return at;
}

export function siteAt(layout: Layout, id: SiteId): Site {
  const at = layout.siteIndex.get(id);
  const site = at === undefined ? undefined : layout.sites[at];
  if (!site)
    throw new CircuitError('unknown-site', id, circuitWords().thereIsNoJointLeadOrPart(id));
  return site;
}

/** What stands at every site in one setting, before any fault. Typed arrays by site index. */
export interface SiteValues {
  /** 0 for an ideal connection, Infinity for none (capacitors included). */
  readonly ohms: Float64Array;
  readonly farads: Float64Array;
  readonly henries: Float64Array;
  /** Ohms across the inductance; Infinity where there is none or no loss in it. */
  readonly coreOhms: Float64Array;
  /** Loss of the capacitance, as a share of its reactance. */
  readonly lossTangent: Float64Array;
}

const known = new WeakMap<Layout, Map<string, SiteValues>>();

/** Remembered per setting, as every suspect starts from the same values; callers copy before they change them. */
export function siteValues(layout: Layout, setting: Setting): SiteValues {
  const perSetting = known.get(layout) ?? new Map<string, SiteValues>();
  known.set(layout, perSetting);
  const key = settingKey(setting);
  const values = perSetting.get(key) ?? valuesOf(layout, setting);
  perSetting.set(key, values);
  return values;
}

function valuesOf(layout: Layout, setting: Setting): SiteValues {
  const count = layout.sites.length;
  const values: SiteValues = {
    ohms: new Float64Array(count),
    farads: new Float64Array(count),
    henries: new Float64Array(count),
    coreOhms: new Float64Array(count).fill(Number.POSITIVE_INFINITY),
    lossTangent: new Float64Array(count),
  };
  let at = 0;
  for (const part of layout.circuit.parts)
    for (const { what, closed } of kindOf(part).branches(part, setting)) {
      if (!closed || what.type === 'capacitance') values.ohms[at] = Number.POSITIVE_INFINITY;
      if (closed && (what.type === 'resistance' || what.type === 'winding'))
        values.ohms[at] = what.ohms;
      if (what.type === 'capacitance') {
        values.farads[at] = what.farads;
        values.lossTangent[at] = what.lossTangent;
      }
      if (what.type === 'winding') {
        values.farads[at] = what.selfFarads;
        values.henries[at] = what.henries;
        values.coreOhms[at] = what.coreOhms;
      }
      at += 1;
    }
  for (const joint of setting.lifted)
    values.ohms[siteAt(layout, joint).index] = Number.POSITIVE_INFINITY;
  return values;
}
