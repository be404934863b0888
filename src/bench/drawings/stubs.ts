import type { Circuit, JointId, Lead, LugRef } from '../../circuit/circuit.ts';
import { called } from '../../words/called.ts';
import { drawingWords } from '../../words/en/drawings.ts';
import { type Box, outward, type Point, point } from './geometry.ts';
import { BEYOND_JOINT, type Link, linkBetween } from './links.ts';
import { farEndWords } from './names.ts';
import type { Frame, Portrait, Spot } from './portrait.ts';
import { type PlacedLabel, placeLabels } from './stub-labels.ts';

/** The visible piece of a lead at a lug: from its joint to the edge of the picture. */
export interface Stub {
  readonly lead: Lead;
  readonly joint: JointId;
  readonly lug: LugRef;
  readonly lifted: boolean;
  readonly path: readonly Point[];
  /** The bare wire just beyond the joint. */
  readonly onWire: Point;
  readonly label?: { readonly text: string; readonly at: Point; readonly box: Box };
}

const CLEAR_OF_LUG = 27;

export interface Stubs {
  readonly stubs: readonly Stub[];
  readonly links: readonly Link[];
}

/** Leads on the lugs of one portrait. `named` leads say where they go when no colour was entered. */
export function stubsOf(
  circuit: Circuit,
  portrait: Portrait,
  frame: Frame,
  lifted: readonly JointId[],
  named: ReadonlySet<JointId>,
): Stubs {
  const ends = new Map<LugRef, { lead: Lead; end: 'from' | 'to' }[]>();
  const links: Link[] = [];
  for (const lead of circuit.leads) {
    const from = portrait.spots.get(lead.from);
    const to = portrait.spots.get(lead.to);
    if (from?.leadsHidden || to?.leadsHidden || lead.kind === 'mount') continue;
    if (from && to && lead.from !== lead.to) {
      const up = lifted.some((joint) => joint.startsWith(`${lead.id}@`));
      if (!up) {
        links.push(linkBetween(lead, portrait, frame));
        continue;
      }
    }
    for (const end of ['from', 'to'] as const) {
      if (!portrait.spots.has(lead[end])) continue;
      ends.set(lead[end], [...(ends.get(lead[end]) ?? []), { lead, end }]);
    }
  }
  const drafts: Draft[] = [];
  for (const [lug, list] of ends) {
    const spot = portrait.spots.get(lug)!;
    for (const [i, { lead, end }] of list.entries()) {
      const joint = `${lead.id}@${end}`;
      const isLifted = lifted.includes(joint);
      const pitch = Math.min(13, 96 / Math.max(1, list.length - 1));
      const aside = (i - (list.length - 1) / 2) * pitch + (spot.dodge ?? 0);
      const words = lead.colour
        ? called(lead.colour)
        : named.has(joint) || isLifted
          ? farEndWords(circuit, lead, end)
          : '';
      drafts.push({
        lead,
        joint,
        lug,
        spot,
        lifted: isLifted,
        aside,
        text: isLifted
          ? lead.colour
            ? drawingWords().colourLifted(called(lead.colour))
            : drawingWords().lifted
          : words,
      });
    }
  }
  return { stubs: finish(drafts, frame), links };
}

export interface Draft {
  readonly lead: Lead;
  readonly joint: JointId;
  readonly lug: LugRef;
  readonly spot: Spot;
  readonly lifted: boolean;
  readonly aside: number;
  readonly text: string;
}

function finish(drafts: readonly Draft[], frame: Frame): Stub[] {
  const labels = placeLabels(
    drafts.map((draft) => ({ ...draft, x: lineX(draft) })),
    frame,
  );
  return drafts.map((draft, i): Stub => {
    const { spot, aside, lifted } = draft;
    const out = outward[spot.side];
    const across = point(Math.abs(out.y), Math.abs(out.x));
    const at = (distance: number, sideways: number) =>
      point(
        spot.at.x + out.x * distance + across.x * sideways,
        spot.at.y + out.y * distance + across.y * sideways,
      );
    const level = out.y === 0;
    const label = labels[i];
    const edge = level
      ? spot.side === 'left'
        ? spot.at.x - 2
        : frame.w - 2 - spot.at.x
      : ((label?.lineEnd ?? freeEnd(spot, lineX(draft), labels, frame)) - spot.at.y) * out.y;
    const shift = lifted ? aside + Math.sign(aside || 1) * 8 : aside;
    const onWire = at(lifted ? CLEAR_OF_LUG : BEYOND_JOINT, shift);
    const end = at(Math.max(edge, BEYOND_JOINT + 8), shift);
    return {
      lead: draft.lead,
      joint: draft.joint,
      lug: draft.lug,
      lifted,
      path: lifted ? [onWire, end] : [spot.at, at(11, aside * 0.4), onWire, end],
      onWire,
      ...(label && { label }),
    };
  });
}

/** Where a line without a word ends: at the edge, or short of a word that stands in its way. */
function freeEnd(
  spot: Spot,
  x: number,
  labels: readonly (PlacedLabel | undefined)[],
  frame: Frame,
): number {
  const down = spot.side === 'down';
  let end = down ? frame.h : 0;
  for (const label of labels) {
    if (!label || x < label.box.x - 2 || x > label.box.x + label.box.w + 2) continue;
    const below = label.box.y > spot.at.y;
    if (below !== down) continue;
    end = down ? Math.min(end, label.box.y - 2) : Math.max(end, label.box.y + label.box.h + 2);
  }
  return end;
}

const lineX = ({ spot, aside, lifted }: Draft): number => {
  const out = outward[spot.side];
  const shift = lifted ? aside + Math.sign(aside || 1) * 8 : aside;
  return spot.at.x + Math.abs(out.y) * shift;
};
