import { expect, it } from 'vitest';
import { startingWirings } from '../../circuit/catalog/index.ts';
import { tray } from '../../circuit/editing/tray/index.ts';
import { restoredDraft } from '../../notebook/draft.ts';
import { afterSketchAct, drawnFrom, type Sketch, type SketchAct, sketchFrom } from './sketch.ts';

const nothing: Sketch = sketchFrom({
  circuit: { id: 'drawn', title: 'drawn', parts: [], leads: [], pickups: [] },
  places: {},
});
const draftOf = (sketch: Sketch) => ({
  format: 'lugwise-draft',
  id: 'a',
  title: '',
  access: 'open',
  changedAt: '2026-03-01T18:00:00Z',
  start: drawnFrom(nothing),
  done: [],
  undone: [],
  now: drawnFrom(sketch),
});

it('everything from the tray has a place of its own, and comes back from the disk as it was', () => {
  let sketch = nothing;
  for (const item of tray)
    sketch = afterSketchAct(sketch, { do: 'add', ...item.make(sketch.circuit, {}) });
  const places = Object.values(drawnFrom(sketch).places);
  expect(new Set(places.map(({ x, y }) => `${x} ${y}`)).size).toBe(places.length);
  expect(places.length).toBeGreaterThanOrEqual(tray.length);
  const draft = restoredDraft(JSON.parse(JSON.stringify(draftOf(sketch))));
  expect(draft && drawnFrom(sketchFrom(draft.now))).toEqual(drawnFrom(sketch));
});

it('a part that was put somewhere stays there while others come and go', () => {
  const build = startingWirings[0]!.build;
  const place = { x: 900, y: 60, turn: 90 } as const;
  const acts: readonly SketchAct[] = [
    { do: 'place', part: 'jack', place },
    { do: 'add', ...tray[0]!.make(build(), {}) },
    { do: 'remove', part: 'neckTone' },
  ];
  const end = acts.reduce(afterSketchAct, sketchFrom({ circuit: build(), places: {} }));
  expect(end.places.get('jack')).toEqual(place);
  expect(drawnFrom(end).places['neckTone']).toBeUndefined();
  expect(afterSketchAct(end, { do: 'tidy' }).places.get('jack')).not.toEqual(place);
});
