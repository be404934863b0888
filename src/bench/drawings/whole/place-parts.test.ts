import { expect, it } from 'vitest';
import { twoHumbuckersFourKnobs } from '../../../circuit/catalog/two-humbuckers-four-knobs.ts';
import type { PartId } from '../../../circuit/parts/part.ts';
import { boxesOverlap } from '../geometry.ts';
import { footprintOf } from './footprint.ts';
import {
  type LeadPath,
  type Place,
  type Places,
  placeParts,
  routeLeads,
  standOf,
  type Turn,
} from './index.ts';
import { standsOf } from './places.ts';

const four = twoHumbuckersFourKnobs();

it('keeps what is drawn as one thing under the name of its first part', () => {
  expect(standOf(four, 'neckScrew')).toBe(standOf(four, 'neckSlug'));
  expect(standOf(four, 'jack')).toBe('jack');
});

it('gives equal places to equal circuits', () => {
  expect(placeParts(structuredClone(four))).toEqual(placeParts(four));
});

it.each<Turn>([0, 90, 180, 270])(
  'leaves kept parts where they are, turned by %d, and lays new ones clear of all',
  (turn) => {
    const kept: Places = new Map<PartId, Place>([
      [standOf(four, 'neckVolume'), { x: 300, y: 240, turn }],
      ['jack', { x: 600, y: 600, turn }],
    ]);
    const places = placeParts(four, kept);
    for (const [id, place] of kept) expect(places.get(id)).toEqual(place);
    const boxes = standsOf(four).map((stand) => {
      const { x, y, turn } = places.get(stand.id)!;
      const { box } = footprintOf(four, stand, turn);
      return { ...box, x: box.x + x, y: box.y + y };
    });
    for (const [i, a] of boxes.entries())
      for (const b of boxes.slice(i + 1)) expect(boxesOverlap(a, b)).toBe(false);
    const paths: readonly LeadPath[] = routeLeads(four, places);
    expect(paths.map(({ lead }) => lead.id)).toEqual(four.leads.map(({ id }) => id));
  },
);

it('lays what is joined to nothing in rows on a sheet of the shape of a page', () => {
  const loose = { ...four, leads: [], parts: four.parts.slice(), pickups: four.pickups };
  // One after the other, as from a tray.
  const places = standsOf(loose).reduce<Places | undefined>((kept, _, at) => {
    const parts = new Set(
      standsOf(loose)
        .slice(0, at + 1)
        .flatMap((stand) => stand.parts.map(({ id }) => id)),
    );
    const some = {
      ...loose,
      parts: loose.parts.filter(({ id }) => parts.has(id)),
      pickups: loose.pickups.filter(({ coils }) => coils.every((id) => parts.has(id))),
    };
    return placeParts(some, kept);
  }, undefined)!;
  const xs = [...places.values()].map(({ x }) => x);
  const ys = [...places.values()].map(({ y }) => y);
  const shape =
    (Math.max(...xs) - Math.min(...xs) + 100) / (Math.max(...ys) - Math.min(...ys) + 100);
  expect(shape).toBeGreaterThan(0.4);
  expect(shape).toBeLessThan(0.9);
});
