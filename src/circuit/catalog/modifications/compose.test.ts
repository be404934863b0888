import { describe, expect, it } from 'vitest';
import { checkCircuit } from '../../check.ts';
import { switchesOf } from '../../setting.ts';
import { twoHumbuckersFourKnobs } from '../two-humbuckers-four-knobs.ts';
import { twoSinglesThreePosition } from '../two-singles-three-position.ts';
import { type Change, compose } from './compose.ts';
import { modifications } from './index.ts';

const base = twoHumbuckersFourKnobs();

function change(id: string, at: string, chosen: Change['chosen'] = {}, on = base): Change {
  const modification = modifications.find((one) => one.id === id)!;
  const place = modification.applies(on).find((one) => one.id === at)!;
  return { modification, place, chosen };
}

const usual = [
  change('coil-split', 'neckPickup', { carrier: 'push-pull:neckTone' }),
  change('coil-split', 'bridgePickup', { carrier: 'push-pull:bridgeTone' }),
  change('phase-of-pickup', 'neckPickup', { carrier: 'mini-toggle' }),
  change('treble-bleed', 'bridgeVolume'),
];

describe('several changes', () => {
  it('are made together, and the title says so', () => {
    const { circuit, refused } = compose(base, usual);
    expect(refused).toEqual([]);
    checkCircuit(circuit);
    expect(switchesOf(circuit).map(({ title, carrier }) => [title, carrier])).toEqual([
      ['selector', undefined],
      ['phase switch of the neck pickup', undefined],
      ['split switch of the neck pickup', 'neckTone'],
      ['split switch of the bridge pickup', 'bridgeTone'],
    ]);
    expect(circuit.title).toBe(
      'two humbuckers, 3-position toggle, two volumes and two tones, with a treble bleed on the bridge volume, a phase switch on the neck pickup, a split of the neck pickup, a split of the bridge pickup',
    );
    expect(circuit.id).toBe(base.id);
  });

  it('are the same guitar in whatever order they are ticked', () => {
    const { circuit } = compose(base, usual);
    const again = compose(base, [usual[2]!, usual[0]!, usual[3]!, usual[1]!]);
    expect(again.circuit).toEqual(circuit);
  });

  it('of none is the starting wiring itself', () => {
    expect(compose(base, []).circuit).toBe(base);
  });

  it('have a title that fits a job file', () => {
    const all = modifications.flatMap((one) =>
      one.applies(base).map((place) => change(one.id, place.id)),
    );
    const { circuit } = compose(base, all);
    expect(circuit.title.length).toBeLessThanOrEqual(200);
    expect(circuit.title).toMatch(/, \d+ more$/);
    checkCircuit(circuit);
  });
});

describe('what does not go together', () => {
  it.each([
    [
      'a split beside series/parallel',
      [change('series-parallel', 'neckPickup'), change('coil-split', 'neckPickup')],
      'The coils of the neck pickup go to the series/parallel switch of the neck pickup already, so there is no series link to split at.',
    ],
    [
      'two splits of one pickup',
      [change('coil-split', 'neckPickup'), change('partial-split', 'neckPickup')],
      'The split switch of the neck pickup is there already.',
    ],
    [
      'a split knob beside a split',
      [change('swept-split', 'neckPickup'), change('coil-split', 'neckPickup')],
      'The split switch of the neck pickup is there already.',
    ],
    [
      'both splits on one switch beside a split knob',
      [change('split-both', 'neckPickup-bridgePickup'), change('swept-split', 'bridgePickup')],
      'The split knob of the bridge pickup is there already.',
    ],
    [
      'a split knob beside series/parallel',
      [change('series-parallel', 'neckPickup'), change('swept-split', 'neckPickup')],
      'The coils of the neck pickup go to the series/parallel switch of the neck pickup already, so there is no series link to split at.',
    ],
    [
      'two switches on one shaft',
      [
        change('coil-split', 'neckPickup', { carrier: 'push-pull:neckTone' }),
        change('add-in', 'neckPickup', { carrier: 'push-pull:neckTone' }),
      ],
      'Coil split, neck pickup: push-pull on the neck tone is taken already.',
    ],
    [
      'the same twice',
      [change('kill-button', 'jack'), change('kill-button', 'jack')],
      'The kill button is across the jack already.',
    ],
    [
      'two treble bleeds on one volume',
      [change('treble-bleed', 'neckVolume'), change('treble-bleed', 'neckVolume')],
      'The treble bleed capacitor of the neck volume is across the neck volume already.',
    ],
  ])('%s', (_what, changes, sentence) => {
    const { circuit, refused } = compose(base, changes);
    expect(refused.map((one) => one.sentence)).toEqual([sentence]);
    checkCircuit(circuit);
  });
});

describe('metal with a ground wire of its own', () => {
  const singles = twoSinglesThreePosition();
  const own = change('own-ground', 'bridgePickup', {}, singles);
  const phase = change('phase-of-pickup', 'bridgePickup', {}, singles);

  it('is what lets its pickup be reversed, whichever is ticked first', () => {
    expect(compose(singles, [phase]).refused).toHaveLength(1);
    expect(compose(singles, [own, phase]).refused).toEqual([]);
    expect(compose(singles, [phase, own]).refused).toEqual([]);
  });

  it('leaves the usual options as the starting wiring has them', () => {
    const series = change('pickups-in-series', 'bridgePickup-neckPickup', {}, singles);
    const { circuit } = compose(singles, [series, own]);
    // Without the wire only the neck pickup can be on top; it stays there.
    expect(circuit.parts.map(({ id }) => id)).toContain('neckPickupSeries');
  });
});

it('a phase switch fitted after a series/parallel switch is refused, not wired wrongly', () => {
  const { circuit } = compose(base, [change('series-parallel', 'neckPickup')]);
  const { modification, place } = change('phase-of-pickup', 'neckPickup');
  expect(() => modification.apply(circuit, place, {})).toThrow(
    'The coils of the neck pickup go to the series/parallel switch of the neck pickup already: fit the phase reversal before it.',
  );
});
