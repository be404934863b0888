import type { Circuit, LugRef, Pickup } from '../../circuit.ts';
import { addSwitch, carrierChoice } from './carriers.ts';
import { Draft } from './draft.ts';
import type { Choice, Chosen, Place } from './modification.ts';
import { groundNet, netOf, partOf, tracksIn } from './nets.ts';
import { coilLead, heldAt, innerSwitch, isHumbucker, linkOf, pickupPlaces } from './pickups.ts';

/** Humbuckers whose link can be reached, or could before a switch took its place. */
export const linkPlaces = (circuit: Circuit): readonly Place[] =>
  pickupPlaces(
    circuit,
    (pickup) => isHumbucker(pickup) && coilLead(circuit, `${pickup.coils[0]}.finish`) !== null,
  );

/** Which coil goes on sounding. */
export function keptChoice(circuit: Circuit, place: Place): Choice {
  const { hotCoil, coldCoil } = heldAt(circuit, place.id);
  const option = (id: string, at: 'hot' | 'cold') => {
    const coil = circuit.parts.find((part) => part.id === id);
    const alone = coil?.kind !== 'coil' || coil.place === 'single';
    return { id: at, title: alone ? (coil?.title ?? id) : `${coil.place} coil` };
  };
  const hot = option(hotCoil, 'hot');
  return {
    id: 'kept',
    title: 'Coil kept',
    options: splitBySelector(circuit, place.id) ? [hot] : [hot, option(coldCoil, 'cold')],
  };
}

/** Which coil goes on sounding, and what switches. */
export const shuntChoices = (circuit: Circuit, place: Place): readonly Choice[] => [
  keptChoice(circuit, place),
  carrierChoice(circuit),
];

export function shuntConflict(circuit: Circuit, place: Place): string | null {
  const { pickup } = heldAt(circuit, place.id);
  const link = linkOf(circuit, pickup);
  const fitted = innerSwitch(circuit, pickup);
  if (link === null)
    return fitted
      ? `The coils of the ${pickup.title} go to the ${fitted} already, so there is no series link to split at.`
      : `No lead brings out where the coils of the ${pickup.title} meet: it cannot be split.`;
  const shunt = shuntAt(circuit, link, pickup);
  if (shunt) return `The ${shunt} is there already.`;
  const tap = tapAt(circuit, link);
  return tap
    ? `The ${tap} takes the signal from where the coils of the ${pickup.title} meet: shorted there, the guitar would be silent.`
    : null;
}

/** What each position of each switch joins the link to, beside the tracks of pots. */
const joinedBy = (circuit: Circuit, link: LugRef) =>
  circuit.parts.flatMap((part) =>
    part.kind === 'switch'
      ? part.positions.map(({ joins }) => {
          const contacts = joins.map(([a, b]) => [`${part.id}.${a}`, `${part.id}.${b}`] as const);
          return { part, contacts, net: netOf(circuit, link, contacts) };
        })
      : [],
  );

/** The title of a switch that joins the link to the output in some position, or null. */
function tapAt(circuit: Circuit, link: LugRef): string | null {
  const ground = groundNet(circuit);
  const tap = joinedBy(circuit, link).find(({ contacts }) =>
    netOf(circuit, link, [...contacts, ...tracksIn(circuit)], ground).has('jack.tip'),
  );
  return tap?.part.title ?? null;
}

/** Whether a selector grounds the link in some position: the coil next to the hot lead is the one to keep there. */
export function splitBySelector(circuit: Circuit, id: string): boolean {
  const link = linkOf(circuit, heldAt(circuit, id).pickup);
  return link !== null && joinedBy(circuit, link).some(({ net }) => net.has('jack.sleeve'));
}

/** The title of a pot on the link, or of a switch that joins it to one of the pickup's outer ends, straight or through a resistor. */
function shuntAt(circuit: Circuit, link: LugRef, pickup: Pickup): string | null {
  const net = netOf(circuit, link);
  const { hot, cold } = heldAt(circuit, pickup.id);
  for (const part of circuit.parts) {
    if (part.kind === 'pot' && [...net].some((lug) => partOf(lug) === part.id)) return part.title;
    if (part.kind !== 'switch') continue;
    const joins = part.positions.flatMap((position) => position.joins);
    for (const [a, b] of joins)
      for (const [here, there] of [
        [a, b],
        [b, a],
      ] as const) {
        if (!net.has(`${part.id}.${here}`)) continue;
        const beyond = netOf(circuit, `${part.id}.${there}`);
        const resistor = [...beyond].some(
          (lug) => circuit.parts.find(({ id }) => id === partOf(lug))?.kind === 'resistor',
        );
        if (resistor || beyond.has(hot.to) || beyond.has(cold.to)) return part.title;
      }
  }
  return null;
}

/**
 * A switch that joins the link of the two coils to one outer end of the pickup and so shorts the coil between them:
 * to the cold end to keep the hot coil, to the hot end to keep the cold one. The cold end is ground, or follows a phase switch.
 */
export function shunted(
  circuit: Circuit,
  place: Place,
  chosen: Chosen,
  kind: 'split' | 'partial split',
  /** Puts what stands in the shunt between the switch and the far lug; a wire where it is left out. */
  through: (draft: Draft, from: LugRef, to: LugRef) => void = (draft, from, to) => {
    draft.join(`${place.id}SplitShunt`, from, to);
  },
): Circuit {
  const { pickup, hot, cold, hotCoil, coldCoil } = heldAt(circuit, place.id);
  const link = linkOf(circuit, pickup) as LugRef;
  const keepsHot = (chosen['kept'] ?? 'hot') === 'hot';
  const kept = circuit.parts.find(({ id }) => id === (keepsHot ? hotCoil : coldCoil));
  const draft = new Draft(circuit);
  const { lug } = addSwitch(draft, circuit, chosen, {
    id: `${place.id}Split`,
    title: `${kind} switch of the ${pickup.title}`,
    positions: [
      'both coils',
      kind === 'split' ? `${kept?.title} alone` : `mostly the ${kept?.title}`,
    ],
  });
  draft.join(`${place.id}SplitLink`, link, lug('AC'));
  through(draft, lug('A2'), keepsHot ? cold.to : hot.to);
  return draft.done();
}
