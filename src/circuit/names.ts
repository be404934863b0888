import { placeNames } from '../words/en/places.ts';
import type { JointId, Lead, LugRef } from './circuit.ts';
import type { NodeName, SiteId } from './edit.ts';
import type { Layout } from './netlist.ts';
import type { PartId } from './parts/part.ts';

/** Words for places, so that every screen and verdict calls a thing by one name. All are noun phrases that stand after "at". */

export const partTitle = (layout: Layout, id: PartId): string => layout.parts.get(id)?.title ?? id;

export function lugTitle(layout: Layout, ref: LugRef): string {
  const dot = ref.indexOf('.');
  const [id, lug] = [ref.slice(0, dot), ref.slice(dot + 1)];
  const part = layout.parts.get(id);
  if (!part) return ref;
  switch (part.kind) {
    case 'pot':
      return lug === 'case'
        ? placeNames().caseOfPot(part.title)
        : placeNames().lugOfPart(lug, part.title);
    case 'switch':
      return lug === 'frame'
        ? placeNames().frameOfSwitch(part.title)
        : placeNames().lugOfPart(lug, part.title);
    case 'jack':
      return placeNames().lugOfJack(lug, part.title);
    case 'coil':
      return placeNames().endOfCoil(lug, part.title);
    case 'capacitor':
    case 'resistor':
      return placeNames().leg(lug, part.title);
    case 'metal':
    case 'splice':
      return placeNames().part(part.title);
  }
}

export const leadOf = (layout: Layout, id: string): Lead | undefined =>
  layout.circuit.leads.find((lead) => lead.id === id);

const leadOfJoint = (joint: JointId): string => joint.slice(0, joint.indexOf('@'));

/** "the lead of the bridge pickup on lug 3 of the volume". */
export function leadTitle(layout: Layout, id: string): string {
  const lead = leadOf(layout, id);
  if (!lead) return id;
  const colour = lead.colour ?? '';
  const owner = partTitle(layout, lead.from.slice(0, lead.from.indexOf('.')));
  switch (lead.kind) {
    case 'pickup':
      return placeNames().pickupLead(colour, owner, lugTitle(layout, lead.to));
    case 'leg':
      return placeNames().legOn(owner, lugTitle(layout, lead.to));
    case 'wire':
      return placeNames().wire(colour, lugTitle(layout, lead.from), lugTitle(layout, lead.to));
    case 'mount':
      return placeNames().mount(lugTitle(layout, lead.from), lugTitle(layout, lead.to));
  }
}

export function lugOfJoint(layout: Layout, joint: JointId): LugRef {
  const lead = leadOf(layout, leadOfJoint(joint));
  if (!lead) return joint;
  return joint.endsWith('@from') ? lead.from : lead.to;
}

/** @param naming whether the phrase says that it is a joint */
export const jointTitle = (
  layout: Layout,
  joint: JointId,
  naming: 'joint' | 'jointShort' = 'joint',
): string => {
  const lead = leadOf(layout, leadOfJoint(joint));
  if (lead?.kind === 'mount') return leadTitle(layout, lead.id);
  return placeNames()[naming](
    shortLeadTitle(layout, leadOfJoint(joint)),
    lugTitle(layout, lugOfJoint(layout, joint)),
  );
};

/** The lead without saying where it ends, for sentences that say it anyway. */
export function shortLeadTitle(layout: Layout, id: string): string {
  const lead = leadOf(layout, id);
  if (!lead) return id;
  const colour = lead.colour ?? '';
  const owner = partTitle(layout, lead.from.slice(0, lead.from.indexOf('.')));
  if (lead.kind === 'pickup') return placeNames().shortPickupLead(colour, owner);
  if (lead.kind === 'leg') return placeNames().shortLeg(owner);
  return placeNames().shortWire(colour);
}

/** Where a probe stands, for "R on ...". */
export function pointTitle(layout: Layout, node: NodeName): string {
  if (!node.includes('@')) return lugTitle(layout, node);
  const lead = leadOfJoint(node);
  return placeNames().bareEnd(
    shortLeadTitle(layout, lead),
    lugTitle(layout, lugOfJoint(layout, node)),
  );
}

/** A site in words: joint, lead, contact, track. */
export function siteTitle(layout: Layout, site: SiteId): string {
  if (site.includes('@')) return jointTitle(layout, site);
  if (!site.includes(':'))
    return layout.parts.has(site)
      ? placeNames().part(partTitle(layout, site))
      : leadTitle(layout, site);
  const colon = site.indexOf(':');
  const [id, name] = [site.slice(0, colon), site.slice(colon + 1)];
  const part = layout.parts.get(id);
  if (part?.kind === 'switch') return placeNames().contact(name, part.title);
  if (part?.kind === 'pot')
    return name === 'wiper'
      ? placeNames().wiper(part.title)
      : placeNames().track(part.title, name === 'lower' ? '1' : '3');
  return placeNames().part(part?.title ?? id);
}
