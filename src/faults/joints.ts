import type { Lead } from '../circuit/circuit.ts';
import { jointTitle, leadTitle, lugTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import { faultWords } from '../words/en/faults.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';
import { resistances } from './sizes.ts';

/** The act is the same whichever end or strand it was: remake both ends, then replace the lead. */
export function remakeRemedy(layout: Layout, lead: Lead): Remedy {
  const title = leadTitle(layout, lead.id);
  if (lead.kind === 'mount')
    return {
      key: `remake:${lead.id}`,
      title: faultWords().cleanAndTightenTitle(title),
      steps: [
        faultWords().undoTheNutOrScrew,
        faultWords().scrapeBothFacesBright,
        faultWords().tightenItAgain,
        faultWords().ifItWillNotStayGoodRun,
      ],
      proof: faultWords().aBeepAcrossTheContactWith,
    };
  const ends =
    lead.kind === 'wire'
      ? faultWords().bothOfItsEnds
      : faultWords().itsEndOnLug(lugTitle(layout, lead.to));
  return {
    key: `remake:${lead.id}`,
    title: faultWords().remakeTitle(title),
    steps: [
      faultWords().heatEndsWithFreshSolderUntil(ends),
      faultWords().holdItStillUntilItHasSet,
      lead.kind === 'leg'
        ? faultWords().ifTheLegHasSnappedReplace
        : faultWords().ifItStillReadsOpenTheWire,
    ],
    proof: faultWords().below1FromLugToLug2(lugTitle(layout, lead.from), lugTitle(layout, lead.to)),
  };
}

const kindAt = (layout: Layout, lug: string) =>
  layout.parts.get(lug.slice(0, lug.indexOf('.')))?.kind;

/** Ends of a lead where a joint can be bad and be mended from outside the part. */
function mendableEnds(lead: Lead): readonly ('from' | 'to')[] {
  return lead.kind === 'wire' ? ['from', 'to'] : lead.kind === 'mount' ? ['to'] : ['to'];
}

export const joints: FaultFamily = {
  name: 'joints and leads',
  share: 0.34,
  reason:
    'poor joints come second only to wiring slips in repair threads; the jack wires and ground wires are moved most',
  list(circuit, layout) {
    return circuit.leads.flatMap((lead): Fault[] => {
      const remedy = remakeRemedy(layout, lead);
      const strain =
        /jack\./.test(lead.from + lead.to) || lead.kind === 'mount'
          ? 2
          : /strings\./.test(lead.from)
            ? 1.5
            : 1;
      const found = mendableEnds(lead).flatMap((end): Fault[] => {
        const site = `${lead.id}@${end}`;
        const where = jointTitle(layout, site);
        const common = { family: 'joints and leads', sites: [site], remedy };
        return [
          {
            ...common,
            id: `open:${site}`,
            sentence: faultWords().whereIsOpen(where),
            weight: strain,
            variants: [{ edits: [{ op: 'open', site }], share: 1 }],
          },
          {
            ...common,
            id: `high:${site}`,
            sentence: faultWords().whereIsColdItConductsBadly(where),
            weight: 0.7 * strain,
            variants: resistances(site, 1),
          },
          {
            ...common,
            id: `intermittent:${site}`,
            sentence: faultWords().whereMakesAndBreaksAsItIs(where),
            weight: 0.5 * strain,
            variants: [
              { edits: [{ op: 'intermittent', site }], share: 0.5 },
              {
                edits: [
                  { op: 'intermittent', site },
                  { op: 'open', site },
                ],
                share: 0.5,
              },
            ],
          },
        ];
      });
      // A break in a coil's own lead is mended like one inside the pickup: with the coils.
      if (lead.kind === 'wire' || (lead.kind === 'pickup' && kindAt(layout, lead.from) !== 'coil'))
        found.push({
          id: `broken:${lead.id}`,
          family: 'joints and leads',
          sites: [lead.id],
          remedy,
          sentence: faultWords().leadIsBroken(leadTitle(layout, lead.id)),
          weight: 0.5 * strain,
          variants: [{ edits: [{ op: 'open', site: lead.id }], share: 1 }],
        });
      return found;
    });
  },
};
