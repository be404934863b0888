import type { Circuit, LugRef } from '../circuit/circuit.ts';
import { lugTitle, partTitle } from '../circuit/names.ts';
import type { Layout } from '../circuit/netlist.ts';
import type { PartId } from '../circuit/parts/part.ts';
import { contacts } from '../circuit/parts/switch.ts';
import { reachOf } from '../circuit/reach.ts';
import { switchesOf } from '../circuit/setting.ts';
import { commonWords } from '../words/en/common.ts';
import { diagnosisWords } from '../words/en/diagnosis.ts';

/** Two points inside the guitar that are worth a line of the card. */
export interface Pair {
  readonly group: 'pickups' | 'pots' | 'switches' | 'grounds';
  readonly title: string;
  readonly red: LugRef;
  readonly black: LugRef;
  /** Parts whose values the line is meant to show: the setting is chosen in which they show most. */
  readonly parts: readonly PartId[];
  /** The pot to turn. */
  readonly turn?: PartId;
  /** The switch whose positions differ in it. */
  readonly contact?: PartId;
}

const part = (lug: LugRef): PartId => lug.slice(0, lug.indexOf('.'));

/** Each pickup's leads and each of its coils, each pot's track and wiper, each contact of each switch. */
export function pairsOf(layout: Layout): readonly Pair[] {
  return [...pickupPairs(layout), ...potPairs(layout), ...contactPairs(layout.circuit)];
}

function pickupPairs(layout: Layout): readonly Pair[] {
  const pairs: Pair[] = [];
  for (const { coils, title } of layout.circuit.pickups) {
    const add = (name: string, from: LugRef, to: LugRef, parts: readonly PartId[]) => {
      const [black, red] = [outletOf(layout, from), outletOf(layout, to)];
      if (black === null || red === null || black === red) return;
      const [minus, plus] = [colourAt(layout, from), colourAt(layout, to)];
      const told = plus && minus ? diagnosisWords().coilByItsLeads(name, plus, minus) : name;
      pairs.push({ group: 'pickups', title: told, red, black, parts });
    };
    const [first, last] = [coils[0], coils.at(-1)];
    if (first !== undefined && last !== undefined)
      add(title, `${first}.start`, `${last}.finish`, coils);
    if (coils.length > 1)
      for (const coil of coils)
        add(partTitle(layout, coil), `${coil}.start`, `${coil}.finish`, [coil]);
  }
  return pairs;
}

/** Colour of the lead that starts at this end of a coil, where it was told. */
const colourAt = (layout: Layout, lug: LugRef): string | undefined =>
  layout.circuit.leads.find(({ kind, from }) => kind === 'pickup' && from === lug)?.colour;

/** The lug where a coil's end comes out: by its own lead, through joints made in the factory; null where it stays inside. */
function outletOf(layout: Layout, lug: LugRef, passed: readonly LugRef[] = []): LugRef | null {
  if (layout.parts.get(part(lug))?.kind !== 'coil') return lug;
  for (const { kind, from, to } of layout.circuit.leads) {
    if (kind !== 'pickup' || (from !== lug && to !== lug)) continue;
    const next = from === lug ? to : from;
    if (passed.includes(next)) continue;
    const outlet = outletOf(layout, next, [...passed, lug]);
    if (outlet !== null) return outlet;
  }
  return reachOf(layout, lug) === 'never' ? null : lug;
}

/** Only lugs that carry something: on a bare one there is nothing to check. */
function potPairs({ circuit, jointsAt }: Layout): readonly Pair[] {
  return circuit.parts.flatMap((pot): readonly Pair[] => {
    if (pot.kind !== 'pot') return [];
    const common = { group: 'pots', parts: [pot.id] } as const;
    const lug = (name: string) => `${pot.id}.${name}`;
    const end = jointsAt.has(lug('1')) || !jointsAt.has(lug('3')) ? '1' : '3';
    return [
      { ...common, title: diagnosisWords().potTrack(pot.title), red: lug('3'), black: lug('1') },
      {
        ...common,
        title: diagnosisWords().potWiper(pot.title),
        red: lug('2'),
        black: lug(end),
        turn: pot.id,
      },
    ];
  });
}

const contactPairs = (circuit: Circuit): readonly Pair[] =>
  switchesOf(circuit).flatMap((one) =>
    contacts(one).map(
      ({ a, b }): Pair => ({
        group: 'switches',
        title: one.title,
        red: `${one.id}.${a}`,
        black: `${one.id}.${b}`,
        parts: [],
        contact: one.id,
      }),
    ),
  );

/** Metal, pot cases and switch frames: what should be on the sleeve if anything joins it there. One point a part. */
export function groundPairs(layout: Layout, sleeve: LugRef): readonly Pair[] {
  return layout.circuit.parts.flatMap((one): readonly Pair[] => {
    const lug =
      one.kind === 'metal'
        ? `${one.id}.metal`
        : one.kind === 'pot'
          ? `${one.id}.case`
          : one.kind === 'switch' && one.frame
            ? `${one.id}.frame`
            : null;
    if (lug === null || !layout.jointsAt.has(lug)) return [];
    const title = commonWords().bare(lugTitle(layout, lug));
    return [{ group: 'grounds', title, red: lug, black: sleeve, parts: [] }];
  });
}
