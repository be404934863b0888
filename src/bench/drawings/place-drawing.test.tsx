import { describe, expect, it } from 'vitest';
import { twoHumbuckersFourKnobs } from '../../circuit/catalog/two-humbuckers-four-knobs.ts';
import { shown } from './markup.ts';
import { PlaceDrawing } from './place-drawing.tsx';
import { placesScene } from './places-scene.ts';

const four = twoHumbuckersFourKnobs();
const marks = (sites: readonly string[]) =>
  placesScene(four, sites).map((row) =>
    row.map(({ key, portrait, marks }) => ({ key, title: portrait.title, marks: marks.length })),
  );

describe('places', () => {
  it('share a panel where they lie on one pickup', () => {
    expect(marks(['neckSlug:winding', 'neckScrew:winding'])).toEqual([
      [{ key: 'neckPickup', title: 'neck pickup', marks: 2 }],
    ]);
  });

  it('stand side by side where they lie on two parts', () => {
    expect(marks(['neckHot@to', 'selector:A-C'])).toEqual([
      [
        { key: 'neckVolume', title: 'neck volume', marks: 1 },
        { key: 'selector', title: 'selector', marks: 1 },
      ],
    ]);
  });

  it('lie under the glass: a joint on its lug, a contact between its lugs', () => {
    const [panel] = placesScene(four, ['neckHot@to'])[0]!;
    expect(panel!.marks[0]!.at).toEqual(panel!.portrait.spots.get('neckVolume.3')!.at);
    const [contact] = placesScene(four, ['selector:A-C'])[0]!;
    const at = (lug: string) => contact!.portrait.spots.get(`selector.${lug}`)!.at;
    expect(contact!.marks[0]!.at.x).toBeCloseTo((at('A').x + at('C').x) / 2, 10);
  });

  it('lie on the track between the lugs it joins, and on the wire off its joint', () => {
    const [track] = placesScene(four, ['neckVolume:lower'])[0]!;
    const at = (lug: string) => track!.portrait.spots.get(`neckVolume.${lug}`)!.at;
    expect(track!.marks[0]!.at.x).toBeCloseTo((at('1').x + at('2').x) / 2, 10);
    const [wire] = placesScene(four, ['neckHot'])[0]!;
    const stub = wire!.stubs.stubs.find(({ joint }) => joint === 'neckHot@to');
    expect(wire!.marks[0]!.at).toEqual(stub!.onWire);
  });

  it('are said in words', () => {
    const [svg] = shown(<PlaceDrawing circuit={four} sites={['neckHot@to', 'selector']} />);
    expect(svg!.props['aria-label']).toBe(
      'A magnifier over the joint on lug 3 of the neck volume and the selector.',
    );
    expect(shown(<PlaceDrawing circuit={four} sites={[]} />)).toEqual([]);
  });
});
