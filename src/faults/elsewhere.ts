import type { JointId, Lead, LugRef } from '../circuit/circuit.ts';
import { leadTitle, lugOfJoint, lugTitle, shortLeadTitle } from '../circuit/names.ts';
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
      title: faultWords().putShortLeadBackOnLug(short, seat),
      steps: [faultWords().findWhereItSits(short), faultWords().solderItToLug(seat)],
    },
    variants: [{ edits: [{ op: 'land', joint, lug }], share: 1 }],
  };
}

/**
 * Two of them, each on the lug where the other belongs: one act mends both, and it shares its key with that of either lead alone.
 */
export function crossed(layout: Layout, one: SeatedEnd, other: SeatedEnd): readonly [Fault, Fault] {
  const [lug, lug2] = [one, other].map(({ right }) => lugTitle(layout, right)) as [string, string];
  const find = ({ lead, right }: SeatedEnd, seat: LugRef) =>
    faultWords().findCrossedEnd(
      leadTitle(layout, lead.id),
      lugTitle(layout, right),
      lugTitle(layout, seat),
    );
  const steps = [
    find(one, other.right),
    find(other, one.right),
    faultWords().unsolderThemAndPutEachOnThe,
  ];
  const onSeatOf = (end: SeatedEnd, { right }: SeatedEnd): Fault => {
    const alone = landedOn(layout, end, right, 1);
    return {
      ...alone,
      sites: [one.joint, other.joint],
      sentence: faultWords().crossedLeads(lug, lug2),
      remedy: {
        ...alone.remedy,
        title: faultWords().exchangeTwoLeads(lug, lug2),
        steps,
        proof: faultWords().theReadingsThatWereOffAre,
      },
    };
  };
  return [onSeatOf(one, other), onSeatOf(other, one)];
}

const partOf = (lug: string): string => lug.slice(0, lug.indexOf('.'));
