import type { Circuit, Lead, LugRef } from '../../../circuit/circuit.ts';
import { type Box, type Point, point } from '../geometry.ts';
import { splitLug } from '../names.ts';
import { type Footprint, footprintOf } from './footprint.ts';
import type { End, Errand, Way } from './maze.ts';
import { GRID, type Place, type Places, standsOf } from './places.ts';
import { route } from './route.ts';
import type { Slot } from './slots.ts';

/** One lead as drawn. All points in layout units. */
export interface LeadPath {
  readonly lead: Lead;
  /** Corners from lug to lug, both included; level or upright but for the splay at each lug. Bends are to be rounded. */
  readonly points: readonly Point[];
  /** How many points at each end belong to the way out of the lead's own part. */
  readonly tails: Readonly<Record<'from' | 'to', number>>;
  /** Where the dot of each joint is. */
  readonly dots: Readonly<Record<'from' | 'to', Point>>;
  /** Whether the joint has a blob of solder of its own, on metal. */
  readonly blobs: Readonly<Record<'from' | 'to', boolean>>;
}

/** A footprint where it stands; its points count from `at`. */
export interface Standing {
  readonly at: Point;
  readonly footprint: Footprint;
}

export const snapped = ({ x, y }: Place): Point =>
  point(Math.round(x / GRID) * GRID, Math.round(y / GRID) * GRID);

/** Every stand of the circuit that has a place, where it stands. */
export function standing(circuit: Circuit, places: Places): readonly Standing[] {
  return standsOf(circuit).flatMap((stand) => {
    const place = places.get(stand.id);
    return place
      ? [{ at: snapped(place), footprint: footprintOf(circuit, stand, place.turn) }]
      : [];
  });
}

/** The joints of a lug share its ways out: which lead takes which is left to the router. */
function endOf(all: readonly Standing[], lug: LugRef): EndSlots | null {
  const { part } = splitLug(lug);
  const home = all.find(({ footprint }) => footprint.stand.parts.some(({ id }) => id === part));
  const slots = home?.footprint.slots.get(lug);
  if (!home || !slots || slots.length === 0) return null;
  return {
    at: home.at,
    slots,
    end: slots.map(({ port, side }) => ({
      x: (home.at.x + port.x) / GRID,
      y: (home.at.y + port.y) / GRID,
      side,
    })),
  };
}

interface EndSlots {
  readonly end: End;
  readonly slots: readonly Slot[];
  readonly at: Point;
}

/** What the search for ways is told, as plain data, and what its answer is read with. */
export interface Survey {
  readonly errands: readonly Errand[];
  /** In cells. */
  readonly boxes: readonly Box[];
  readonly ends: readonly { readonly lead: Lead; readonly from: EndSlots; readonly to: EndSlots }[];
}

/** All leads whose two parts have places, and what stands in their way. Leads of which a part has no place are left out. */
export function surveyed(circuit: Circuit, all: readonly Standing[]): Survey {
  const ends = circuit.leads.flatMap((lead) => {
    const from = endOf(all, lead.from);
    const to = endOf(all, lead.to);
    return from && to ? [{ lead, from, to }] : [];
  });
  const errands = ends.map(
    ({ lead, from, to }): Errand => ({ id: lead.id, from: from.end, to: to.end }),
  );
  const boxes = all.map(({ at, footprint: { box } }) => ({
    x: (at.x + box.x) / GRID,
    y: (at.y + box.y) / GRID,
    w: box.w / GRID,
    h: box.h / GRID,
  }));
  return { errands, boxes, ends };
}

/** Ways for all leads of the survey, each on a track of its own. Deterministic. */
export function routeLeads(circuit: Circuit, places: Places): readonly LeadPath[] {
  const survey = surveyed(circuit, standing(circuit, places));
  return pathsOf(survey, route(survey.errands, survey.boxes));
}

export function pathsOf({ ends }: Survey, ways: ReadonlyMap<string, Way>): readonly LeadPath[] {
  return ends.flatMap(({ lead, from, to }): LeadPath[] => {
    const way = ways.get(lead.id);
    if (!way) return [];
    const [a, b] = [from.slots[way.from]!, to.slots[way.to]!];
    const shift = (origin: Point) => (at: Point) => point(origin.x + at.x, origin.y + at.y);
    const head = a.tail.map(shift(from.at));
    const rear = b.tail.map(shift(to.at)).reverse();
    const between = way.corners.slice(1, -1).map(({ x, y }) => point(x * GRID, y * GRID));
    return [
      {
        lead,
        points: [...head, ...between, ...rear],
        tails: { from: head.length, to: rear.length },
        dots: { from: shift(from.at)(a.dot), to: shift(to.at)(b.dot) },
        blobs: { from: a.blob, to: b.blob },
      },
    ];
  });
}
