import type { Circuit } from '../../circuit/circuit.ts';
import type { PartId } from '../../circuit/parts/part.ts';
import type { Ask } from '../../readings/reading.ts';
import { type Point, point } from './geometry.ts';
import { jointOf, partOf, splitLug } from './names.ts';
import type { Frame, Portrait } from './portrait.ts';
import { BODY_ABOVE_LEGS, coilCentres } from './portraits/index.ts';
import type { Stubs } from './stubs.ts';
import { subjectOf } from './subject.ts';
import { turnedAbout } from './turned.tsx';

/** What else the person does at the part, besides holding probes. */
export type Mark =
  | { readonly kind: 'wiggle'; readonly at: Point; readonly degrees: number }
  | { readonly kind: 'lens'; readonly at: Point; readonly degrees: number }
  | { readonly kind: 'hand'; readonly at: Point }
  | { readonly kind: 'compass'; readonly at: Point }
  | { readonly kind: 'steel'; readonly at: Point };

/** Lugs between which each piece of a pot's track lies. */
const TRACK_LUGS: Readonly<Record<string, readonly string[]>> = {
  lower: ['1', '2'],
  upper: ['2', '3'],
  wiper: ['2'],
};

/** The tools of an ask at their place in one portrait. */
export function marksFor(
  circuit: Circuit,
  ask: Ask,
  portrait: Portrait,
  { stubs, links }: Stubs,
  frame: Frame,
  turned: boolean,
): Mark[] {
  const centre = point(frame.w / 2, frame.h / 2);
  const coilCentre = (id: PartId): Point => {
    const subject = subjectOf(circuit, id);
    const coils = subject.parts.filter((part) => part.kind === 'coil');
    const index = Math.max(
      0,
      coils.findIndex((coil) => coil.id === id),
    );
    const at = coilCentres(coils.length, frame)[index] ?? centre;
    return turned ? turnedAbout(at, frame) : at;
  };
  const siteAt = (site: string): { at: Point; degrees: number } => {
    const stub =
      stubs.find((candidate) => candidate.joint === site) ??
      stubs.find((candidate) => candidate.lead.id === site);
    const joint = jointOf(circuit, site);
    const lug = portrait.spots.get(joint?.lug ?? stub?.lug ?? '');
    if (stub && ask.kind === 'flex') {
      const last = stub.path.at(-1)!;
      const turn = (Math.atan2(last.y - stub.onWire.y, last.x - stub.onWire.x) * 180) / Math.PI;
      return { at: stub.onWire, degrees: turn };
    }
    const link = links.find(({ lead }) => site === lead.id || joint?.lead === lead);
    if (link && ask.kind === 'flex') return { at: link.onWire[joint?.end ?? 'to'], degrees: 90 };
    if (link && !joint) return { at: link.onWire.to, degrees: 0 };
    if (stub && !joint) return { at: stub.onWire, degrees: 0 };
    if (lug) return { at: lug.at, degrees: 0 };
    const [id = site, inside = ''] = site.split(':');
    const part = partOf(circuit, splitLug(id).part);
    if (part?.kind === 'coil') return { at: coilCentre(part.id), degrees: 0 };
    const ofPart = [...portrait.spots].filter(([ref]) => splitLug(ref).part === part?.id);
    const lugs = part?.kind === 'pot' ? TRACK_LUGS[inside] : inside.split('-');
    const near = ofPart.filter(([ref]) => lugs?.includes(splitLug(ref).lug));
    const middle = (near.length > 0 ? near : ofPart).map(([, spot]) => spot.at);
    if (middle.length === 0) return { at: centre, degrees: 0 };
    const sum = middle.reduce((a, b) => point(a.x + b.x, a.y + b.y));
    // The body of a two-legged part lies above its legs.
    const above = part?.kind === 'capacitor' || part?.kind === 'resistor' ? BODY_ABOVE_LEGS : 0;
    const up = turned ? -above : above;
    return {
      at: point(sum.x / middle.length, sum.y / middle.length - up * frame.scale),
      degrees: 0,
    };
  };
  switch (ask.kind) {
    case 'flex':
      return [{ kind: 'wiggle', ...siteAt(ask.site) }];
    case 'look': {
      const { at } = siteAt(ask.at);
      // The handle points to where there is room for it.
      const across = at.x > frame.w * 0.6 ? 145 : 35;
      return [{ kind: 'lens', at, degrees: at.y > frame.h - 48 ? -across : across }];
    }
    case 'touch':
      return [{ kind: 'hand', at: portrait.spots.get(ask.metal)?.at ?? centre }];
    case 'pole':
      return [{ kind: 'compass', at: coilCentre(ask.coil) }];
    case 'tap':
      return [{ kind: 'steel', at: coilCentre(ask.coil) }];
    default:
      return [];
  }
}
