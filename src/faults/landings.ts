import { lugOfJoint, lugTitle, shortLeadTitle } from '../circuit/names.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily } from './fault.ts';
import { slips } from './neighbours.ts';

export const landings: FaultFamily = {
  name: 'wrong lugs',
  share: 0.13,
  reason:
    'about half of the faults in repair threads are wiring slips; one lug off and two leads exchanged are the usual ones',
  list(circuit, layout) {
    return circuit.leads
      .filter((lead) => lead.kind !== 'mount')
      .flatMap((lead) =>
        (lead.kind === 'wire' ? (['from', 'to'] as const) : (['to'] as const)).map((end) => ({
          lead,
          joint: `${lead.id}@${end}`,
        })),
      )
      .flatMap(({ lead, joint }) => {
        const right = lugOfJoint(layout, joint);
        const dot = right.indexOf('.');
        const part = layout.parts.get(right.slice(0, dot));
        if (!part) return [];
        return slips(part, right.slice(dot + 1)).map((lug): Fault => {
          const wrong = `${part.id}.${lug}`;
          return {
            id: `land:${joint}>${wrong}`,
            family: 'wrong lugs',
            sites: [joint],
            weight: 1,
            sentence: faultWords().shortLeadSitsOnLugInstead(
              shortLeadTitle(layout, lead.id),
              lugTitle(layout, wrong),
              lugTitle(layout, right),
            ),
            remedy: {
              key: `place:${joint}`,
              title: faultWords().putShortLeadBackOnLug(
                shortLeadTitle(layout, lead.id),
                lugTitle(layout, right),
              ),
              steps: [
                faultWords().findWhichLugOfThePartIt(part.title),
                faultWords().solderItToLug(lugTitle(layout, right)),
              ],
              proof: faultWords().below1FromLugToLug22(
                lugTitle(layout, lead.from),
                lugTitle(layout, lead.to),
              ),
            },
            variants: [{ edits: [{ op: 'land', joint, lug: wrong }], share: 1 }],
          };
        });
      });
  },
};
