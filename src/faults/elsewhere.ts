import type { JointId, Lead, LugRef } from '../circuit/circuit.ts';
import { lugOfJoint, lugTitle, shortLeadTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault } from './fault.ts';
import { remakeRemedy } from './joints.ts';
import { pointsOf } from './points.ts';

/**
 * Leads soldered to another part than the one they belong on: every end of a wire and every pickup lead, on every point of the
 * wiring where no modelled slip has it. The act begins at the joint where the lead should be, as for a bad joint there, and shares
 * its key. A hunt weighs them; a list of what to prove shows the joint itself. Weights sum to 1.
 */
export function landedElsewhere(layout: Layout, known: readonly Fault[]): readonly Fault[] {
  const { lugs, of } = pointsOf(layout);
  const seats = lugs.filter((lug) =>
    ['pot', 'switch', 'jack'].includes(layout.parts.get(partOf(lug))?.kind ?? ''),
  );
  const name = (joint: string, lug: string) => `${joint}>${of(lug)}`;
  const modelled = new Set(
    known.flatMap(({ variants }) =>
      variants.flatMap(({ edits }) =>
        edits.flatMap((edit) => (edit.op === 'land' ? [name(edit.joint, edit.lug)] : [])),
      ),
    ),
  );
  const found = seatedEnds(layout).flatMap((end) =>
    seats
      .filter((lug) => of(lug) !== of(end.right) && !modelled.has(name(end.joint, lug)))
      .map((lug) => ({ end, lug })),
  );
  return found.map(({ end, lug }) => landedOn(layout, end, lug, 1 / found.length));
}

/** An end of a lead that may sit on a lug where it does not belong. */
export interface SeatedEnd {
  readonly lead: Lead;
  readonly joint: JointId;
  /** Where it belongs. */
  readonly right: LugRef;
}

/** Every end of a wire, and of a pickup lead the one that leaves the pickup. */
export const seatedEnds = (layout: Layout): readonly SeatedEnd[] =>
  layout.circuit.leads
    .filter(({ kind }) => kind === 'wire' || kind === 'pickup')
    .flatMap((lead) =>
      (lead.kind === 'wire' ? (['from', 'to'] as const) : (['to'] as const)).map((end) => {
        const joint = `${lead.id}@${end}`;
        return { lead, joint, right: lugOfJoint(layout, joint) };
      }),
    );

/** One of them on a lug of another part. */
export function landedOn(
  layout: Layout,
  { lead, joint, right }: SeatedEnd,
  lug: LugRef,
  weight: number,
): Fault {
  const [short, seat] = [shortLeadTitle(layout, lead.id), lugTitle(layout, right)];
  return {
    id: `elsewhere:${joint}>${lug}`,
    family: 'elsewhere',
    sites: [joint],
    weight,
    sentence: faultWords().landedElsewhere(short, lugTitle(layout, lug), seat),
    remedy: {
      ...remakeRemedy(layout, lead),
      title: faultWords().moveShortLeadToLug(short, seat),
      steps: [faultWords().findWhereItSits(short), faultWords().solderItToLug(seat)],
    },
    variants: [{ edits: [{ op: 'land', joint, lug }], share: 1 }],
  };
}

const partOf = (lug: string): string => lug.slice(0, lug.indexOf('.'));
