import { metalOf } from '../circuit/metal.ts';
import { type Layout, nodeAt } from '../circuit/netlist.ts';
import { kindOf } from '../circuit/parts/index.ts';
import type { Load } from '../solver/index.ts';
import { jackOf } from './points.ts';

/**
 * The room around a plugged-in guitar: its mains field reaches the player's body and every bare metal and coil through air. All
 * values in farads. The body's 150 pF to earth is that of IEC 61000-4-2; the rest are estimates of ours (common practice, no source).
 */
const BODY_TO_EARTH = 150e-12;
const ROOM_TO_BODY = 2e-12;
/** A hand on or beside the guitar to each end of a bare coil, the strings above to the same, an earthed or floating cover around it. */
const BODY_TO_COIL = 1e-12;
const STRINGS_TO_COIL = 2e-12;
const COVER_TO_COIL = 20e-12;
const PLATE_TO_COIL = 5e-12;
/** What a cover leaves of the first two. */
const THROUGH_COVER = 0.1;
/** The same to a bare lug with its wire, a tenth of a coil's end: an open position hums at full volume, and less under a hand. */
const BODY_TO_LUG = 0.1e-12;
const ROOM_TO_LUG = 0.002e-12;
const ROOM_TO_METAL = 0.1e-12;
const ROOM_TO_COIL = 0.02e-12;
const BODY_TO_METAL = 3e-12;
/** A case, frame or plate to the hot wire that runs past it. */
const METAL_TO_HOT = 2e-12;
/** A dry hand on metal, in ohms: IEC 60479 has 3 k from hand to hand for wet palms; a dry finger some tens more (from memory). */
const SKIN = 100e3;

export interface Strays {
  readonly loads: readonly Load[];
  /** Those of the loads that end in the room, which is a voltage against earth. */
  readonly fromRoom: readonly Load[];
  /** Nodes beyond the layout's: the body. */
  readonly more: number;
}

const known = new WeakMap<Layout, Map<string, Strays>>();

/** Capacitances of the air around a guitar while a hand touches one of its metals, or none. Earth is the amplifier's: the jack's sleeve. */
export function straysOf(layout: Layout, touched: string | null): Strays {
  const perTouch = known.get(layout) ?? new Map<string, Strays>();
  known.set(layout, perTouch);
  const strays = perTouch.get(touched ?? '') ?? madeFor(layout, touched);
  perTouch.set(touched ?? '', strays);
  return strays;
}

function madeFor(layout: Layout, touched: string | null): Strays {
  const { circuit } = layout;
  const { tip, sleeve } = jackOf(layout);
  const earth = nodeAt(layout, sleeve);
  const hot = nodeAt(layout, tip);
  const body = layout.nodes.length;
  const loads: Load[] = [];
  const fromRoom: Load[] = [];
  const air = (from: number, to: number, farads: number): Load => {
    const load = { from, to, ohms: Number.POSITIVE_INFINITY, farads };
    loads.push(load);
    return load;
  };
  const room = (to: number, farads: number): void => {
    fromRoom.push(air(to, earth, farads));
  };
  room(body, ROOM_TO_BODY);
  air(body, earth, BODY_TO_EARTH);
  if (touched !== null)
    loads.push({ from: body, to: nodeAt(layout, touched), ohms: SKIN, farads: 0 });
  for (const lug of metalLugs(layout)) {
    const metal = nodeAt(layout, lug);
    room(metal, ROOM_TO_METAL);
    air(body, metal, BODY_TO_METAL);
    air(metal, hot, METAL_TO_HOT);
  }
  const strings = circuit.parts.find((part) => part.kind === 'metal' && part.role === 'strings');
  for (const part of circuit.parts) {
    if (part.kind !== 'coil') continue;
    const pickup = circuit.pickups.find(({ coils }) => coils.includes(part.id));
    const share = pickup?.cover ? THROUGH_COVER : 1;
    for (const end of ['start', 'finish']) {
      const node = nodeAt(layout, `${part.id}.${end}`);
      room(node, share * ROOM_TO_COIL);
      air(body, node, share * BODY_TO_COIL);
      if (strings) air(nodeAt(layout, `${strings.id}.metal`), node, share * STRINGS_TO_COIL);
      if (pickup?.cover) air(nodeAt(layout, `${pickup.cover}.metal`), node, COVER_TO_COIL);
      if (pickup?.plate) air(nodeAt(layout, `${pickup.plate}.metal`), node, PLATE_TO_COIL);
    }
  }
  for (const lug of bareLugs(layout)) {
    const node = nodeAt(layout, lug);
    room(node, ROOM_TO_LUG);
    air(body, node, BODY_TO_LUG);
  }
  return { loads, fromRoom, more: 1 };
}

/** Lugs of the cavity that a lead is soldered to; the others are left out, because nothing that they catch comes to the jack. */
function bareLugs(layout: Layout): readonly string[] {
  const metal = new Set(metalLugs(layout));
  return layout.circuit.parts
    .filter(({ kind }) => kind === 'pot' || kind === 'switch' || kind === 'jack')
    .flatMap((part) =>
      kindOf(part)
        .lugs(part)
        .map((lug) => `${part.id}.${lug}`),
    )
    .filter((lug) => !metal.has(lug) && layout.jointsAt.has(lug));
}

/** Everything metal that should be grounded. */
const metalLugs = ({ circuit }: Layout): readonly string[] =>
  circuit.parts.flatMap((part) => metalOf(part) ?? []);
