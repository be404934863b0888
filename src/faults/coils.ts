import { leadOf, leadTitle } from '../circuit/names.ts';
import { faultWords } from '../words/en/faults.ts';
import { figure } from '../words/figures.ts';
import { eitherWillDo } from './either-will-do.ts';
import type { Fault, FaultFamily, Remedy } from './fault.ts';
import { leaks } from './sizes.ts';

/** Shares of the resistance left. Fewer shorted turns than these hide in the tolerance of the coil: ohms cannot show them. */
const factors = [0.2, 0.35, 0.5, 0.7] as const;

export const coils: FaultFamily = {
  name: 'coils',
  share: 0.2,
  reason:
    'open coils and coil ends are the commonest fault of a part; the break often sits where the fine wire meets the lead',
  list(circuit, layout) {
    const found: Fault[] = [];
    for (const pickup of circuit.pickups) {
      const metal = pickup.plate ?? pickup.cover;
      for (const id of pickup.coils) {
        const coil = layout.parts.get(id);
        if (coil?.kind !== 'coil') continue;
        const winding = `${id}:winding`;
        const inside = circuit.leads
          .filter((lead) => lead.kind === 'pickup' && lead.from.startsWith(`${id}.`))
          .map((lead) => `${lead.id}@from`);
        const kilohms = figure(Math.round(coil.ohms.nominal / 100) / 10);
        const remedy: Remedy = {
          key: `coil:${id}`,
          replaces: true,
          title: faultWords().mendOrReplaceTheCoilCoil(coil.title),
          steps: [
            faultWords().firstReadTheCoilAlone(kilohms),
            faultWords().takeThePickupOutAndFollow,
            faultWords().reheatBrieflyTheJointsWhere,
            faultWords().ifItStillReadsOpenOrToo,
          ],
          proof: faultWords().theCoilReadsAbout(kilohms),
        };
        const common = { family: 'coils', sites: [winding, ...inside], remedy };
        found.push(
          {
            ...common,
            id: `coil-open:${id}`,
            sentence: faultWords().theCoilIsOpenInside(coil.title),
            weight: 4,
            variants: [{ edits: [{ op: 'open', site: winding }], share: 1 }],
          },
          {
            ...common,
            id: `coil-shorted:${id}`,
            sentence: faultWords().turnsOfTheCoilAreShortedTogether(coil.title),
            weight: 1,
            variants: factors.map((factor) => ({
              edits: [{ op: 'scale', part: id, factor }],
              share: 0.25,
              loose: { site: winding, deviation: 0.2 },
            })),
          },
        );
        for (const lead of circuit.leads)
          if (lead.kind === 'pickup' && lead.from.startsWith(`${id}.`))
            found.push({
              ...common,
              id: `broken:${lead.id}`,
              sentence: faultWords().leadIsBrokenInsideItsCover(leadTitle(layout, lead.id)),
              sites: [lead.id],
              weight: 0.4,
              variants: [{ edits: [{ op: 'open', site: lead.id }], share: 1 }],
            });
        for (const site of inside)
          found.push({
            ...common,
            id: `intermittent:${site}`,
            sentence: faultWords().aLeadOfTheCoilMakesAnd(coil.title),
            sites: [site],
            weight: 0.4,
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
          });
        if (
          metal &&
          !circuit.leads.some((lead) => lead.from === `${metal}.metal` && lead.to === `${id}.start`)
        )
          found.push({
            ...common,
            id: `coil-plate:${id}`,
            sentence: faultWords().theCoilTouchesTheMetalOfIts(coil.title),
            weight: 0.5,
            variants: (['finish', 'start'] as const).flatMap((end) =>
              leaks(`${id}.${end}`, `${metal}.metal`, 0.7).map((variant) => ({
                ...variant,
                share: variant.share / 2,
              })),
            ),
          });
        found.push({
          id: `coil-reversed:${id}`,
          family: 'coils',
          sites: [winding],
          weight: 1.6,
          sentence:
            pickup.coils.length > 1
              ? faultWords().theLeadsOfTheCoilAreThe(coil.title)
              : faultWords().thePickupIsWiredTheWrongWay(pickup.title),
          remedy: {
            key: `turn:${id}`,
            title: faultWords().exchangeTheTwoLeadsOfTheCoil(coil.title),
            steps: [
              faultWords().markBothLeadsAndExchangeThem,
              metal ? faultWords().ifItsMetalCoverOrPlateIs : faultWords().nothingElseChanges,
            ],
            proof: faultWords().itsTapSwingsTheSameWayAs,
          },
          variants: [
            { edits: [{ op: 'exchange', lugs: [`${id}.start`, `${id}.finish`] }], share: 1 },
          ],
        });
        found.push({
          id: `magnet:${id}`,
          family: 'coils',
          sites: [id],
          weight: 0.15,
          sentence: faultWords().theMagnetOfTheCoilIsThe(coil.title),
          remedy: {
            key: `magnet:${id}`,
            title: faultWords().turnTheMagnetOfTheCoil(coil.title),
            steps: [
              faultWords().checkItsPoleWithACompassAgainst,
              faultWords().turnTheMagnetOverOrExchange,
            ],
            proof: faultWords().theCompassShowsTheOtherPole,
          },
          variants: [{ edits: [{ op: 'turn-magnet', coil: id }], share: 1 }],
        });
      }
      if (pickup.coils.length > 1) found.push(wholeReversed(pickup));
    }
    return eitherWillDo(circuit, found);

    function wholeReversed(pickup: (typeof circuit.pickups)[number]): Fault {
      const first = pickup.coils[0] as string;
      const last = pickup.coils.at(-1) as string;
      const outer = [
        circuit.leads.find((lead) => lead.kind === 'pickup' && lead.from === `${first}.start`),
        circuit.leads.find((lead) => lead.kind === 'pickup' && lead.from === `${last}.finish`),
      ];
      const [cold, hot] = outer.map((lead) => (lead ? leadOf(layout, lead.id) : undefined));
      return {
        id: `pickup-reversed:${pickup.id}`,
        family: 'coils',
        sites: [pickup.coils[0] as string, last],
        weight: 1.2,
        sentence: faultWords().thePickupIsWiredTheWrongWay2(pickup.title),
        remedy: {
          key: `turn:${pickup.id}`,
          title: faultWords().exchangeTheTwoOuterLeadsOf(pickup.title),
          steps: [faultWords().markTheHotAndTheColdLead, faultWords().leaveTheBareOrShieldOnGround],
          proof: faultWords().itsTapSwingsTheSameWayAs2,
        },
        variants: [
          {
            edits:
              cold && hot
                ? [
                    { op: 'land', joint: `${hot.id}@to`, lug: cold.to },
                    { op: 'land', joint: `${cold.id}@to`, lug: hot.to },
                  ]
                : [],
            share: 1,
          },
        ],
      };
    }
  },
};
